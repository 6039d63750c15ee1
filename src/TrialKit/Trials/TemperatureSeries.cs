using System.Collections.Immutable;

namespace TrialKit.Trials;

/// <summary>Daily temperatures in the order of their dates; a day that is missing is missing, never zero.</summary>
/// <remarks>Hourly records come in as the extremes of each day that has all its hours.</remarks>
public sealed class TemperatureSeries
{
    private TemperatureSeries(string source, ImmutableArray<DailyTemperature> days) => (Source, Days) = (source, days);

    /// <summary>The file the series came from.</summary>
    public string Source { get; }

    /// <summary>The days on record, each once, in order.</summary>
    public ImmutableArray<DailyTemperature> Days { get; }

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
