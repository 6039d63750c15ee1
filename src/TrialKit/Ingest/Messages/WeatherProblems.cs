using System.Globalization;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong with temperatures: codes TK401 to TK499.</summary>
internal static class WeatherProblems
{
    private const int MostListed = 20;

    public static Problem MaximumBelowMinimum(ProblemLocation at, string maximum, string minimum) => Error("TK401", at,
        $"the maximum {maximum} lies below the minimum {minimum}", "a maximum no lower than the minimum was expected");

    public static Problem Outlandish(ProblemLocation at, string column, string text, double celsius) => Error("TK402", at,
        string.Create(CultureInfo.InvariantCulture, $"column {Wording.Quote(column)} holds {Wording.Quote(text)}, which is {celsius:0.#} C"), "a temperature from -60 to 60 C was expected");

    public static Problem DayAgain(ProblemLocation at, DateOnly day) => Error("TK403", at,
        $"{Wording.Date(day)} stands here a second time", "each day once was expected");

    public static Problem DayOutOfOrder(ProblemLocation at, DateOnly day, DateOnly before) => Error("TK404", at,
        $"{Wording.Date(day)} follows {Wording.Date(before)}", "days in the order of time were expected");

    public static Problem NotRecorded(ProblemLocation at, string column, DateOnly day) => Warning("TK405", at,
        $"column {Wording.Quote(column)} is not recorded, so {Wording.Date(day)} counts as missing", "a temperature was expected");

    public static Problem HoursMissing(ProblemLocation at, DateOnly day, int hours) => Warning("TK406", at,
        string.Create(CultureInfo.InvariantCulture, $"{Wording.Date(day)} has temperatures in {hours} of its 24 hours, so it counts as missing"), "one in every hour was expected");

    public static Problem TimeAgain(ProblemLocation at, DateTime time, DateTime before) => Error("TK407", at,
        $"{Wording.Time(time)} follows {Wording.Time(before)}", "times that go forward were expected");

    public static Problem NoTemperatures(ProblemLocation at) => Error("TK408", at,
        "the table has neither the columns 'tmax' and 'tmin' nor a column 'temperature'", "daily extremes or temperatures of every hour were expected");

    public static Problem FailedCheck(ProblemLocation at, string column, DateOnly day, string flag) => Warning("TK409", at,
        $"{Wording.Quote(column)} of {Wording.Date(day)} failed the station's quality check {Wording.Quote(flag)}, so the day counts as missing", "a value that passed was expected");

    public static Problem SeveralStations(ProblemLocation at, IReadOnlyList<string> stations, string key, string section) => Error("TK410", at,
        $"a second station begins here; the file holds {Stations(stations)}", $"one of them was expected to be chosen, such as {key} = \"{Wording.OneLine(stations[0])}\" under [{section}]");

    public static Problem NotStationLine(ProblemLocation at, string text) => Error("TK411", at,
        $"{Wording.Quote(text)} does not fit a station's file", "a station, a date, an element and its values in tenths of a degree Celsius were expected");

    public static Problem NoSuchDay(ProblemLocation at, string text) => Error("TK412", at,
        $"{Wording.Quote(text)} is no day of a year", "a year with a month and day, or a year with a day from 1 to 366, was expected");

    public static Problem NoSuchStation(ProblemLocation at, string station, IReadOnlyList<string> stations) => Error("TK413", at,
        $"the file does not hold the station {Wording.Quote(station)}", $"one of its stations was expected: {Stations(stations)}");

    public static Problem NoValues(ProblemLocation at, string station, string elements) => Error("TK414", at,
        $"the file holds no temperature of the station {Wording.Quote(station)}", $"values of {elements} were expected");

    public static Problem Filled(ProblemLocation at, IReadOnlyList<DateOnly> days) => Warning("TK415", at,
        $"{Wording.Count(days.Count, "day")} that {(days.Count == 1 ? "is" : "are")} not on record {(days.Count == 1 ? "is" : "are")} filled by interpolation, the first {Wording.Date(days[0])}", "a record without gaps was expected");

    public static Problem NoSoilElements(ProblemLocation at, string form) => Error("TK416", at,
        $"soil temperatures are asked of a {form}, which holds those of the air or does not say which", "a station's file with the elements SX and SN was expected, or soil-temperature.csv in a trial folder");

    public static Problem ClockBack(ProblemLocation at, DateTime time, DateTime before) => Warning("TK417", at,
        $"{Wording.Time(time)} follows {Wording.Time(before)}, which is taken for the clock put back in autumn: the hour that stands twice counts once, with the mean of its readings", "standard time all year was expected");

    public static Problem ClockForward(ProblemLocation at, DateOnly day, int hour) => Warning("TK418", at,
        string.Create(CultureInfo.InvariantCulture, $"{Wording.Date(day)} has no hour {hour}, which is taken for the clock put forward in spring: the day is whole with 23 hours"), "standard time all year was expected");

    public static Problem PaddedTenths(ProblemLocation at, string unit) => Warning("TK419", at,
        $"temperatures are padded with blanks inside their quotes, as in files whose unit is 0.1 C, and are read in {unit} as was asked", "the unit of the file was expected");

    public static Problem OneExtremeAlone(ProblemLocation at, DateOnly first, int days) => Warning("TK420", at,
        $"{Wording.Count(days, "day")} {(days == 1 ? "has" : "have")} a maximum or a minimum alone and {(days == 1 ? "counts" : "count")} as missing, the first {Wording.Date(first)}", "both of each day were expected");

    private static string Stations(IReadOnlyList<string> stations) =>
        stations.Count <= MostListed
            ? string.Join(", ", stations.Select(Wording.Quote))
            : $"{string.Join(", ", stations.Take(MostListed).Select(Wording.Quote))} and {Wording.Count(stations.Count - MostListed, "other")}";

    private static Problem Error(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Error, at, found, expected);

    private static Problem Warning(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Warning, at, found, expected);
}
