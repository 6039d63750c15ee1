using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Heat;

/// <summary>When a crop planted on a day emerges: the first day by which the heat gathered is what it needs.</summary>
/// <param name="Planted">The planting day.</param>
/// <param name="Need">The heat needed.</param>
/// <param name="Clock">The heat gathered.</param>
/// <param name="Low">When the least of the need is met; null when it is not within the days on hand.</param>
/// <param name="Mid">When the middle of the need is met; null likewise.</param>
/// <param name="High">When the most of the need is met; null likewise.</param>
public sealed record EmergenceForecast(DateOnly Planted, HeatNeed Need, HeatClock Clock, ForecastDate? Low, ForecastDate? Mid, ForecastDate? High)
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Emergence date from heat after planting",
        "Nielsen 2020, Purdue University; Lauer 2003, University of Wisconsin",
        "docs/methods/emergence-forecast.md");

    /// <summary>The last day counted; null when none is. A sum that is not met by it is not extrapolated.</summary>
    public DateOnly? LastDay => Clock.Days.IsEmpty ? null : Clock.Days[^1].Date;

    /// <summary>The heat gathered by then; with a <see cref="HeatClock.Gap"/> it is the least that can have gathered.</summary>
    public HeatSum Gathered => Clock.Days.IsEmpty ? default : Clock.Days[^1].Sum;

    /// <summary>Foretells emergence.</summary>
    /// <param name="days">The days on hand.</param>
    /// <param name="need">The heat needed.</param>
    /// <param name="planted">The planting day.</param>
    /// <param name="countPlantingDay">Whether the planting day's heat is counted.</param>
    public static EmergenceForecast Of(ForecastDays days, HeatNeed need, DateOnly planted, bool countPlantingDay)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(need);
        return Of(days, days.Gains(need.Method), need, planted, countPlantingDay);
    }

    /// <summary>Foretells emergence for each planting day of a window.</summary>
    /// <param name="days">The days on hand.</param>
    /// <param name="need">The heat needed.</param>
    /// <param name="first">The first planting day.</param>
    /// <param name="last">The last planting day, not before the first, within a year.</param>
    /// <param name="countPlantingDay">Whether the planting day's heat is counted.</param>
    /// <exception cref="ArgumentException">The window ends before it begins, or is longer than a year.</exception>
    public static IReadOnlyList<EmergenceForecast> OfWindow(ForecastDays days, HeatNeed need, DateOnly first, DateOnly last, bool countPlantingDay)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(need);
        var gains = days.Gains(need.Method);
        var span = last.DayNumber - first.DayNumber;
        return span is >= 0 and <= 366
            ? [.. Enumerable.Range(0, span + 1).Select(day => Of(days, gains, need, first.AddDays(day), countPlantingDay))]
            : throw new ArgumentException(FormattableString.Invariant($"A window from {first:yyyy-MM-dd} to {last:yyyy-MM-dd} was found; one that ends on or after its first day, within a year, was expected."), nameof(last));
    }

    private static EmergenceForecast Of(ForecastDays days, ImmutableArray<DayGain?> gains, HeatNeed need, DateOnly planted, bool countPlantingDay)
    {
        var clock = HeatClock.Start(days.Series, index => gains[index], need.Method, planted, countPlantingDay);
        return new(planted, need, clock, When(need.Range.Low), When(need.Range.Mid), When(need.Range.High));

        ForecastDate? When(HeatSum sum)
        {
            if (clock.DaysAt(sum) is not { } moment)
            {
                return null;
            }

            // A sum met at the very end of a day belongs to that day.
            var date = planted.AddDays(Math.Max(0, (int)Math.Ceiling(moment) - 1));
            return new(date, moment, days.KindOf(date) ?? DayKind.Observed, days.Count(clock.Days.IsEmpty ? date : clock.Days[0].Date, date));
        }
    }
}
