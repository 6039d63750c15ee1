using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Results;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Analysis;

/// <summary>The measures that were taken at several spots of a strip, spot by spot, under the ids and units of <see cref="TrialMeasures"/>.</summary>
internal static class TrialSpots
{
    /// <summary>The variation of each such measure, in the order of the measures.</summary>
    public static ImmutableArray<SpotVariation> Of(StripTrial trial, StripSummaries strips, ImmutableArray<MeasureComparison> measures)
    {
        var byId = measures.ToDictionary(measure => measure.Measure.Id, StringComparer.Ordinal);
        return [.. Stand(trial, strips).Concat(Emergence(trial)).Concat(Own(trial, measures))
            .Where(entry => byId.ContainsKey(entry.Id))
            .GroupBy(entry => entry.Id, entry => entry.Value, StringComparer.Ordinal)
            .Select(group => SpotVariation.Of(new SpotMeasure(byId[group.Key].Measure, [.. group]), byId[group.Key], trial))
            .OfType<SpotVariation>()];
    }

    private static IEnumerable<(string Id, SpotValue Value)> Stand(StripTrial trial, StripSummaries strips) =>
        from stand in strips.Stands
        where stand.Strip.IsAnalysed
        from spot in stand.Spots
        select ("stand", new SpotValue(stand.Strip, spot.Spot, trial.Units == UnitSystem.Us ? spot.Density.PerAcre : spot.Density.PerHectare));

    private static IEnumerable<(string Id, SpotValue Value)> Emergence(StripTrial trial) =>
        from spot in trial.Emergence
        where spot.Strip.IsAnalysed && spot.IsTimed
        let sown = spot.Seeds ?? (spot.Row is { } row ? trial.Planting.Seeds?.SeedsAlong(row, trial.Planting.RowSpacing) : null)
        where sown > 0
        select ("emergence-share", new SpotValue(spot.Strip, spot.Spot, 100 * spot.Visits.Max(visit => visit.Plants) / sown.Value));

    // Two names may give one slug, so a measure of the trial's own is found by its name, not by its id.
    private static IEnumerable<(string Id, SpotValue Value)> Own(StripTrial trial, ImmutableArray<MeasureComparison> measures) =>
        from value in trial.Measurements
        where value.Strip.IsAnalysed
        from measure in measures
        where measure.Measure.Kind == MeasureKind.Other && Identifier.Same(measure.Measure.Label, value.Measure)
        select (measure.Measure.Id, new SpotValue(value.Strip, value.Spot, value.Value));
}
