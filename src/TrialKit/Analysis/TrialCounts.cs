using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>The measures that rest on counted plants, as counts.</summary>
internal static class TrialCounts
{
    /// <summary>The comparison of counts beside each such measure, in the order of the measures.</summary>
    public static ImmutableArray<CountComparison> Of(StripTrial trial, StripSummaries strips, ImmutableArray<MeasureComparison> measures) =>
        [.. measures
            .Select(measure => measure.Measure)
            .Select(measure => measure.Id switch
            {
                "stand" => new StripCounts(measure, IsShare: false, [.. strips.Stands.Select(stand => new StripCount(stand.Strip, stand.Spots.Sum(spot => spot.Plants), stand.Spots.Sum(spot => spot.Row.Meters)))]),
                "stand-share" => new StripCounts(measure, IsShare: true, [.. Stood(trial, strips)]),
                "emergence-share" => new StripCounts(measure, IsShare: true, [.. Emerged(strips)]),
                _ => null,
            })
            .OfType<StripCounts>()
            .Select(counts => CountComparison.Of(counts, trial))
            .OfType<CountComparison>()];

    private static IEnumerable<StripCount> Stood(StripTrial trial, StripSummaries strips) =>
        from stand in strips.Stands
        let dropped = stand.Spots.Sum(spot => trial.Planting.Seeds?.SeedsAlong(spot.Row, trial.Planting.RowSpacing)) ?? 0
        where dropped > 0
        select new StripCount(stand.Strip, stand.Spots.Sum(spot => spot.Plants), dropped);

    private static IEnumerable<StripCount> Emerged(StripSummaries strips) =>
        from strip in strips.Emergence
        let sown = strip.SeedsSown ?? 0
        where sown > 0
        select new StripCount(strip.Strip, strip.PlantsUp, sown);
}
