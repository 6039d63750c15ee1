using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Gathers a station's maxima and minima, which stand apart in its file, into days. Values are tenths of a degree Celsius.</summary>
/// <param name="text">The file.</param>
/// <param name="planted">The planting date: days long before or after it are not read; null reads all.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class StationDays(Utf8Text text, DateOnly? planted, ProblemList problems)
{
    private const int DaysBefore = 31;
    private const int DaysAfter = 400;
    private const int Missing = -9999;
    private const double LowestCelsius = -60;
    private const double HighestCelsius = 60;

    private readonly SortedDictionary<DateOnly, Extremes> _days = [];
    private string? _station;

    /// <summary>Values that failed a check of the station's quality control; each is listed by a warning.</summary>
    public int Failed { get; private set; }

    /// <summary>Whether the row is of the one station that the file may hold.</summary>
    public bool IsSameStation(string station, int place)
    {
        _station ??= station;
        if (_station == station)
        {
            return true;
        }

        problems.Add(WeatherProblems.OtherStation(text.Locate(place), station, _station));
        return false;
    }

    /// <summary>Adds a value of the element <c>TMAX</c> or <c>TMIN</c>; others are passed over.</summary>
    /// <param name="element">The element.</param>
    /// <param name="day">The day.</param>
    /// <param name="tenths">Tenths of a degree Celsius; -9999 is a missing value.</param>
    /// <param name="quality">The flag of a failed check; blank when none failed.</param>
    /// <param name="place">The byte at which the value stands.</param>
    public void Add(string element, DateOnly day, int tenths, char quality, int place)
    {
        if (element is not ("TMAX" or "TMIN") || tenths == Missing || (planted is { } date && (day < date.AddDays(-DaysBefore) || day > date.AddDays(DaysAfter))))
        {
            return;
        }

        if (quality != ' ')
        {
            problems.Add(WeatherProblems.FailedCheck(text.Locate(place), element, day, quality.ToString()));
            Failed++;
            return;
        }

        if (tenths is < (int)(10 * LowestCelsius) or > (int)(10 * HighestCelsius))
        {
            problems.Add(WeatherProblems.Outlandish(text.Locate(place), element, Wording.Number(tenths), tenths / 10.0));
            return;
        }

        var extremes = _days.GetValueOrDefault(day);
        if ((element == "TMAX" ? extremes.Maximum : extremes.Minimum) is not null)
        {
            problems.Add(WeatherProblems.DayAgain(text.Locate(place), day));
            return;
        }

        _days[day] = element == "TMAX" ? extremes with { Maximum = tenths, Place = place } : extremes with { Minimum = tenths };
    }

    /// <summary>The days that have both extremes.</summary>
    /// <param name="rows">Rows that were read.</param>
    public DayRecords Build(int rows)
    {
        var days = new List<DailyTemperature>();
        foreach (var (day, extremes) in _days)
        {
            if (extremes is not { Maximum: { } high, Minimum: { } low })
            {
                continue;
            }

            if (high < low)
            {
                problems.Add(WeatherProblems.MaximumBelowMinimum(text.Locate(extremes.Place), $"{Wording.Number(high / 10.0)} C", $"{Wording.Number(low / 10.0)} C"));
                continue;
            }

            days.Add(new DailyTemperature(day, Temperature.FromDegreesCelsius(high / 10.0), Temperature.FromDegreesCelsius(low / 10.0)));
        }

        return new DayRecords([.. days], rows, Failed);
    }

    private readonly record struct Extremes(int? Maximum, int? Minimum, int Place);
}
