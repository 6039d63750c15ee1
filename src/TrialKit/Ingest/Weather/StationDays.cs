using System.Text;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Gathers a station's maxima and minima, which stand apart in its file, into days. Values are tenths of a degree Celsius.</summary>
/// <param name="text">The file.</param>
/// <param name="planted">The planting date: days long before or after it are not read; null reads all.</param>
/// <param name="soilDepth">The depth code of the soil temperatures to read; null reads those of the air.</param>
/// <param name="choice">Which station is read.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class StationDays(Utf8Text text, DateOnly? planted, char? soilDepth, StationChoice choice, ProblemList problems)
{
    /// <summary>What stands for a value that was not recorded.</summary>
    public const int Missing = -9999;

    private const int DaysBefore = 31;
    private const int DaysAfter = 400;

    private readonly Dictionary<int, Extremes> _days = [];
    private readonly HashSet<int> _failed = [];
    private byte[] _lastStation = [];
    private bool _readsLast;
    private char? _cover;
    private bool _hasValues;

    /// <summary>Whether the rows of a station are read.</summary>
    public bool IsRead(ReadOnlySpan<byte> station, int place)
    {
        // Rows of a station stand together: one comparison tells most of them.
        if (!station.SequenceEqual(_lastStation))
        {
            _lastStation = station.ToArray();
            _readsLast = choice.IsRead(Encoding.UTF8.GetString(station), () => text.Locate(place));
        }

        return _readsLast;
    }

    /// <summary>Which extreme an element is: true for the maximum, false for the minimum, null for neither.</summary>
    /// <remarks>Soil elements are SX and SN with a code of the ground's cover and one of the depth; of several covers the first is read.</remarks>
    public bool? IsMaximum(ReadOnlySpan<byte> element)
    {
        if (soilDepth is not { } depth)
        {
            return element.SequenceEqual("TMAX"u8) ? true : element.SequenceEqual("TMIN"u8) ? false : null;
        }

        if (element.Length != 4 || element[0] != 'S' || element[1] is not ((byte)'X' or (byte)'N') || element[3] != depth)
        {
            return null;
        }

        _cover ??= (char)element[2];
        return _cover == (char)element[2] ? element[1] == 'X' : null;
    }

    /// <summary>Adds a value.</summary>
    /// <param name="isMaximum">Whether it is the day's maximum.</param>
    /// <param name="day">The day.</param>
    /// <param name="tenths">Tenths of a degree Celsius; -9999 is a missing value.</param>
    /// <param name="quality">The flag of a failed check; blank when none failed.</param>
    /// <param name="place">The byte at which the value stands.</param>
    /// <returns>What became of it; all but one that is passed over is in use or listed by a problem.</returns>
    public RowUse Add(bool isMaximum, DateOnly day, int tenths, char quality, int place)
    {
        _hasValues |= tenths != Missing;
        if (tenths == Missing || (planted is { } date && (day < date.AddDays(-DaysBefore) || day > date.AddDays(DaysAfter))))
        {
            return RowUse.PassedOver;
        }

        var element = (isMaximum, soilDepth is null) switch
        {
            (true, true) => "TMAX",
            (false, true) => "TMIN",
            (true, false) => "soil maximum",
            _ => "soil minimum",
        };
        if (quality != ' ')
        {
            problems.Add(WeatherProblems.FailedCheck(text.Locate(place), element, day, quality.ToString()));
            _failed.Add(day.DayNumber);
            return RowUse.LeftOut;
        }

        if (tenths is < (int)(10 * TemperatureLimits.LowestCelsius) or > (int)(10 * TemperatureLimits.HighestCelsius))
        {
            problems.Add(WeatherProblems.Outlandish(text.Locate(place), element, Wording.Number(tenths), tenths / 10.0));
            return RowUse.Faulty;
        }

        var extremes = _days.GetValueOrDefault(day.DayNumber);
        if ((isMaximum ? extremes.Maximum : extremes.Minimum) is not null)
        {
            problems.Add(WeatherProblems.DayAgain(text.Locate(place), day));
            return RowUse.Faulty;
        }

        _days[day.DayNumber] = isMaximum ? new(tenths, extremes.Minimum, place) : new(extremes.Maximum, tenths, extremes.Maximum is null ? place : extremes.Place);
        return RowUse.Used;
    }

    /// <summary>The days that have both extremes; that others have one alone is said once.</summary>
    /// <param name="uses">What became of the rows.</param>
    public DayRecords Build(RowUses uses)
    {
        var isSettled = choice.Finish(ProblemLocation.StartOf(text.File));
        if (!_hasValues && choice.Station is not null)
        {
            problems.Add(WeatherProblems.NoValues(ProblemLocation.StartOf(text.File), choice.Station, soilDepth is null ? "TMAX and TMIN" : $"SX and SN with the depth code {soilDepth}"));
        }

        var days = new List<DailyTemperature>(_days.Count);
        var halves = new List<(DateOnly Day, int Place)>();
        foreach (var (number, extremes) in _days.OrderBy(entry => entry.Key))
        {
            if (extremes is not { Maximum: { } high, Minimum: { } low })
            {
                if (!_failed.Contains(number))
                {
                    halves.Add((DateOnly.FromDayNumber(number), extremes.Place));
                }

                continue;
            }

            if (high < low)
            {
                problems.Add(WeatherProblems.MaximumBelowMinimum(text.Locate(extremes.Place), $"{Wording.Number(high / 10.0)} C", $"{Wording.Number(low / 10.0)} C"));
                continue;
            }

            days.Add(new DailyTemperature(DateOnly.FromDayNumber(number), Temperature.FromDegreesCelsius(high / 10.0), Temperature.FromDegreesCelsius(low / 10.0)));
        }

        if (halves.Count > 0 && isSettled)
        {
            problems.Add(WeatherProblems.OneExtremeAlone(text.Locate(halves[0].Place), halves[0].Day, halves.Count));
        }

        return new DayRecords([.. days], uses.Used, uses.LeftOut) { PassedOver = uses.PassedOver };
    }

    private readonly record struct Extremes(int? Maximum, int? Minimum, int Place);
}
