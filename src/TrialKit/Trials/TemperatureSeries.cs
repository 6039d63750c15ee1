using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>Daily temperatures in the order of their dates; a day that is missing is missing, never zero.</summary>
/// <remarks>Hourly records come in as the extremes of each day that has all its hours, with the mean of each hour beside them.</remarks>
public sealed class TemperatureSeries
{
    /// <summary>The longest gap that may be filled, in days.</summary>
    public const int LongestFill = 3;

    private TemperatureSeries(string source, ImmutableArray<DailyTemperature> days) => (Source, Days) = (source, days);

    /// <summary>The file the series came from.</summary>
    public string Source { get; }

    /// <summary>The days on record, each once, in order.</summary>
    public ImmutableArray<DailyTemperature> Days { get; }

    /// <summary>Days that were not recorded and stand here by interpolation; empty unless that was asked for.</summary>
    public ImmutableArray<DateOnly> Filled { get; private init; } = [];

    /// <summary>The temperatures of the 24 hours of each day that was recorded hour by hour.</summary>
    public ImmutableDictionary<DateOnly, ImmutableArray<Temperature>> Hours { get; private init; } = ImmutableDictionary<DateOnly, ImmutableArray<Temperature>>.Empty;

    /// <summary>The series with the temperatures of each hour of its days.</summary>
    /// <param name="hours">For each day its 24 temperatures.</param>
    public TemperatureSeries WithHours(IEnumerable<KeyValuePair<DateOnly, ImmutableArray<Temperature>>> hours) =>
        new(Source, Days) { Filled = Filled, Hours = hours.ToImmutableDictionary() };

    /// <summary>The series with short gaps filled by straight lines from the day before to the day after, for maxima and minima alike.</summary>
    /// <param name="longest">The longest gap to fill, 1 to 3 days; longer ones stay as they are.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another length.</exception>
    public TemperatureSeries FillGaps(int longest)
    {
        if (longest is < 1 or > LongestFill)
        {
            throw new ArgumentOutOfRangeException(nameof(longest), longest, "Gaps of 1 to 3 days can be filled.");
        }

        var days = ImmutableArray.CreateBuilder<DailyTemperature>();
        var filled = ImmutableArray.CreateBuilder<DateOnly>();
        for (var i = 0; i < Days.Length; i++)
        {
            var gap = i == 0 ? 0 : Days[i].Date.DayNumber - Days[i - 1].Date.DayNumber - 1;
            for (var missing = 1; gap <= longest && missing <= gap; missing++)
            {
                var share = missing / (gap + 1.0);
                var date = Days[i - 1].Date.AddDays(missing);
                filled.Add(date);
                days.Add(new(date, Between(Days[i - 1].Maximum, Days[i].Maximum, share), Between(Days[i - 1].Minimum, Days[i].Minimum, share)));
            }

            days.Add(Days[i]);
        }

        return new(Source, days.ToImmutable()) { Filled = [.. Filled.Concat(filled).Order()], Hours = Hours };
    }

    /// <summary>A series of days.</summary>
    /// <param name="source">The file the series came from.</param>
    /// <param name="days">Days in increasing order, each once, maximum never below minimum.</param>
    /// <exception cref="ArgumentException">A day out of order, or a maximum below its minimum.</exception>
    public static TemperatureSeries Of(string source, ImmutableArray<DailyTemperature> days)
    {
        for (var i = 0; i < days.Length; i++)
        {
            if (i > 0 && days[i].Date <= days[i - 1].Date)
            {
                throw new ArgumentException($"{days[i].Date:yyyy-MM-dd} follows {days[i - 1].Date:yyyy-MM-dd}; increasing dates were expected.", nameof(days));
            }

            if (!(days[i].Maximum.DegreesCelsius >= days[i].Minimum.DegreesCelsius))
            {
                throw new ArgumentException($"The maximum of {days[i].Date:yyyy-MM-dd} is below its minimum, or is not a number.", nameof(days));
            }
        }

        return new(source, days);
    }

    // In the scale of the record, so that a round number stays one.
    private static Temperature Between(Temperature before, Temperature after, double share) =>
        new(before.Value + (share * (after.As(before.Unit) - before.Value)), before.Unit);

    /// <summary>The days from one date to another, both included, that are not on record.</summary>
    public IEnumerable<DateOnly> MissingDays(DateOnly first, DateOnly last)
    {
        var known = Days.Select(day => day.Date).ToHashSet();
        for (var day = first; day <= last; day = day.AddDays(1))
        {
            if (!known.Contains(day))
            {
                yield return day;
            }
        }
    }
}
