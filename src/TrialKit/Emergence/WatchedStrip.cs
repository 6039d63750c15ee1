using System.Collections.Immutable;
using TrialKit.Numerics.EventTimes;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>A strip's flagged spots together: the seeds, the counts between visits, and a fit of each shape.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Spots">Its spots.</param>
/// <param name="Seeds">Seeds sown at all of them; null when unknown at any.</param>
/// <param name="Counts">The intervals of all spots.</param>
/// <param name="Fits">One fit per shape, in the order of <see cref="CurveChoice.Shapes"/>.</param>
internal sealed record WatchedStrip(Strip Strip, ImmutableArray<WatchedSpot> Spots, double? Seeds, IntervalCounts Counts, ImmutableArray<EventTimeFit> Fits)
{
    /// <summary>Pools and fits the spots of a strip.</summary>
    public static WatchedStrip Of(Strip strip, ImmutableArray<WatchedSpot> spots)
    {
        var notUp = SeedsNotUp.Of(spots);
        var counts = IntervalCounts.Merge(spots.Select((spot, i) => spot.Intervals(notUp?[i] ?? 0)));
        return new(
            strip,
            spots,
            notUp is null ? null : spots.Sum(spot => spot.Seeds),
            counts,
            [.. CurveChoice.Shapes.Select(shape => notUp is null ? EventTimeFit.FitOfEmerged(counts, shape) : EventTimeFit.Fit(counts, shape))]);
    }
}
