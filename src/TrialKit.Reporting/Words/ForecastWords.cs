using System.Globalization;
using TrialKit.Heat;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Words;

/// <summary>How a forecast of emergence is spoken of.</summary>
public static class ForecastWords
{
    private const int MostDecimals = 6;

    /// <summary>A foretold date and what its own day rests on, or why there is none.</summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="date">One of its dates.</param>
    public static string When(EmergenceForecast forecast, ForecastDate? date)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return date is not null ? $"{Day(date.Date)} {Kind(date.Kind)}"
            : forecast.Clock.Gap is not null || forecast.LastDay is null ? "unknown"
            : "not reached";
    }

    /// <summary>The days up to a date that were not observed, such as <c>2 filled, 7 forecast</c>; null when all were.</summary>
    public static string? RestsOn(ForecastDate? date)
    {
        if (date?.RestsOn is not { Uncertain: > 0 } days)
        {
            return null;
        }

        (int Days, DayKind Kind)[] kinds = [(days.Filled, DayKind.Filled), (days.Forecast, DayKind.Forecast), (days.Normal, DayKind.Normal)];
        return string.Join(", ", kinds.Where(each => each.Days > 0).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Days} {Kind(each.Kind)}")));
    }

    /// <summary>What a day rests on.</summary>
    public static string Kind(DayKind kind) => kind switch
    {
        DayKind.Observed => "observed",
        DayKind.Filled => "filled",
        DayKind.Forecast => "forecast",
        DayKind.Normal => "normal",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "An unknown kind of day was found."),
    };

    /// <summary>What the numbers of days beside the dates mean; null when every day was observed.</summary>
    public static string? Key(IEnumerable<EmergenceForecast> forecasts) =>
        forecasts.SelectMany(each => new[] { each.Low, each.Mid, each.High }).Any(date => RestsOn(date) is not null)
            ? "Beside a date stands what that day itself rests on, then how many of the days up to it were not observed."
            : null;

    /// <summary>Whose temperatures they are, from which files, and how many years are behind a normal day.</summary>
    public static IEnumerable<string> Sources(ForecastDays days)
    {
        ArgumentNullException.ThrowIfNull(days);
        yield return $"Temperatures of the {(days.IsSoil ? "soil" : "air")}: {days.Series.Source}.";
        if (days.FirstAirForSoil is { } first)
        {
            yield return $"From {Day(first)} on days are of the air's temperature, which tells of the soil only roughly.";
        }

        if (days.ForecastSource is { } ahead)
        {
            yield return $"Forecast days: {ahead}.";
        }

        if (days.NormalYears is var (fewest, most))
        {
            var years = fewest == most ? Years(most) : string.Create(CultureInfo.InvariantCulture, $"{fewest} to {most} years");
            yield return $"Normal days: the mean heat of the same day in {years} of {days.NormalsSource}.";
        }
    }

    /// <summary>The heat needed, by which method, from where, each adjustment, and what it was not adjusted for.</summary>
    public static IEnumerable<string> Need(HeatNeed need, bool countsPlantingDay)
    {
        ArgumentNullException.ThrowIfNull(need);
        var range = need.Range;
        yield return range.Low == range.High
            ? string.Create(CultureInfo.InvariantCulture, $"Heat needed: {range.Mid.FahrenheitDays:0.#} F-days by {need.Method.Name} ({need.Source}); planting day {(countsPlantingDay ? "" : "not ")}counted.")
            : string.Create(CultureInfo.InvariantCulture, $"Heat needed: {range.Low.FahrenheitDays:0.#}, {range.Mid.FahrenheitDays:0.#} or {range.High.FahrenheitDays:0.#} F-days by {need.Method.Name} ({need.Source}); planting day {(countsPlantingDay ? "" : "not ")}counted.");
        foreach (var each in need.Adjustments)
        {
            yield return each.LowFahrenheitDays == each.HighFahrenheitDays
                ? string.Create(CultureInfo.InvariantCulture, $"Adjusted by {each.LowFahrenheitDays:+0.##;-0.##} F-days for {each.Condition} ({each.Source}).")
                : string.Create(CultureInfo.InvariantCulture, $"Adjusted by {each.LowFahrenheitDays:+0.##;-0.##} to {each.HighFahrenheitDays:+0.##;-0.##} F-days for {each.Condition} ({each.Source}).");
        }

        if (need.Adjustments.Length > 1)
        {
            yield return "The source gives the adjustments one by one; that they add up is taken here, not printed there.";
        }

        if (!need.Unused.IsEmpty)
        {
            yield return $"Not adjusted for {string.Join("; ", need.Unused)}: {(need.IsGiven ? "the heat needed was given" : "no adjustment is printed with this need")}.";
        }
    }

    /// <summary>Why dates are wanting, planting dates of one reason together.</summary>
    /// <param name="forecasts">Forecasts in the order of their planting dates.</param>
    /// <param name="days">The days they rest on.</param>
    public static IEnumerable<string> Short(IEnumerable<EmergenceForecast> forecasts, ForecastDays days)
    {
        ArgumentNullException.ThrowIfNull(days);
        foreach (var alike in forecasts.Where(each => each.High is null).GroupBy(each => (each.Clock.Gap is { } gap && (each.LastDay is not null || gap >= days.Series.Days[0].Date) ? gap : (DateOnly?)null, each.LastDay is null)))
        {
            EmergenceForecast[] group = [.. alike];
            var planted = group is [var one] ? Day(one.Planted) : string.Create(CultureInfo.InvariantCulture, $"{Day(group[0].Planted)} to {Day(group[^1].Planted)} ({group.Length} dates)");
            var sums = group.Select(each => each.Gathered.FahrenheitDays).ToArray();
            var gathered = NumberText.Number(sums.Min(), 1) == NumberText.Number(sums.Max(), 1) ? NumberText.Number(sums.Max(), 1) : $"{NumberText.Number(sums.Min(), 1)} to {NumberText.Number(sums.Max(), 1)}";
            yield return alike.Key switch
            {
                ({ } gap, _) => $"Planted {planted}: at least {gathered} F-days, incomplete, since {Day(gap)} {(gap < days.LastObserved ? "is missing from the record" : "is covered by no record, forecast or normal")}.",
                (_, true) => $"Planted {planted}: no temperatures on hand from planting on; those on hand are of {Day(days.Series.Days[0].Date)} to {Day(days.Series.Days[^1].Date)}.",
                _ => $"Planted {planted}: not reached by {Day(group[0].LastDay!.Value)}, the last day on hand; {gathered} F-days gathered.",
            };
        }
    }

    /// <summary>A double form that counted its last day singly; null when no date rests on one.</summary>
    public static string? BySingle(IEnumerable<EmergenceForecast> forecasts)
    {
        var days = forecasts.SelectMany(each => each.Clock.BySingle.Where(day => !(day > each.High?.Date)), (each, day) => (each.Need.Method.Name, Day: day)).Distinct().ToArray();
        return days.Length == 0 ? null : $"{days[0].Name}: counted by the single form on {Day(days[0].Day)}, since the next day's minimum is not on record.";
    }

    /// <summary>A class of planting conditions for cotton, its sum, and the days of the six that were not observed.</summary>
    public static string Cotton(CottonOutlook? outlook)
    {
        if (outlook is null)
        {
            return "unknown";
        }

        var rests = RestsOn(new(outlook.Planted, 0, DayKind.Observed, outlook.RestsOn)) is { } uncertain ? $"; {uncertain}" : "";
        return $"{Name(outlook.Class)} ({CottonSum(outlook.Sum)} DD60{(outlook.IsLowered ? ", one class down" : "")}{rests})";
    }

    // A sum just above a class's limit must not be printed as the limit.
    private static string CottonSum(double sum)
    {
        var decimals = Enumerable.Range(1, MostDecimals).First(digits => digits == MostDecimals || CottonOutlook.ClassOf(Math.Round(sum, digits)) == CottonOutlook.ClassOf(sum));
        return sum.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private static string Name(CottonClass outlook) => outlook switch
    {
        CottonClass.VeryPoor => "very poor",
        CottonClass.Marginal => "marginal",
        CottonClass.Adequate => "adequate",
        CottonClass.Good => "good",
        CottonClass.VeryGood => "very good",
        _ => "excellent",
    };

    private static string Years(int years) => years == 1 ? "1 year" : string.Create(CultureInfo.InvariantCulture, $"{years} years");

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
