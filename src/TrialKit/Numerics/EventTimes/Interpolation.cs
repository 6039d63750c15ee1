using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>How a count was reached.</summary>
internal enum CountReached
{
    /// <summary>Not by the last visit.</summary>
    Never,

    /// <summary>At a visit, or between two visits.</summary>
    Between,

    /// <summary>Already passed at the first visit, with no visit before it at which nothing was up.</summary>
    OnOrBeforeFirst,
}

/// <summary>The time at which a count was reached.</summary>
/// <param name="Time">The interpolated time; null unless reached between visits.</param>
/// <param name="Reached">How it was reached.</param>
internal readonly record struct TimeToCount(double? Time, CountReached Reached);

/// <summary>Times to counts by straight lines between visits.</summary>
internal static class Interpolation
{
    /// <summary>The first time a cumulative count reaches a target: t_i + (target - N_i)(t_j - t_i) / (N_j - N_i) with N_i below and N_j at or above the target.</summary>
    /// <remarks>A target met exactly at a visit gives that visit, on a flat run its first; nothing is carried beyond the last visit or before the first.</remarks>
    /// <param name="times">Times of the visits, rising.</param>
    /// <param name="cumulative">Cumulative counts, never falling.</param>
    /// <param name="target">The count to reach, above 0.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a time, a count or the target is impossible.</exception>
    public static TimeToCount TimeToCount(ReadOnlySpan<double> times, ReadOnlySpan<double> cumulative, double target)
    {
        VisitTimes.Check(times, cumulative);
        if (!(target > 0.0) || double.IsPositiveInfinity(target))
        {
            throw new ArgumentOutOfRangeException(nameof(target), target, "Found a target that is not a finite count above 0.");
        }

        for (var j = 1; j < cumulative.Length; j++)
        {
            if (cumulative[j] < cumulative[j - 1])
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {cumulative[j]} up at visit {j + 1} after {cumulative[j - 1]}; expected cumulative counts that never fall (take the running maximum)."), nameof(cumulative));
            }
        }

        for (var j = 0; j < cumulative.Length; j++)
        {
            if (cumulative[j] < target)
            {
                continue;
            }

            if (cumulative[j] == target)
            {
                return new TimeToCount(times[j], CountReached.Between);
            }

            return j == 0
                ? new TimeToCount(null, CountReached.OnOrBeforeFirst)
                : new TimeToCount(times[j - 1] + ((target - cumulative[j - 1]) * (times[j] - times[j - 1]) / (cumulative[j] - cumulative[j - 1])), CountReached.Between);
        }

        return new TimeToCount(null, CountReached.Never);
    }
}
