using System.Collections.Immutable;
using TrialKit.Emergence;
using TrialKit.Money;
using TrialKit.Results;
using TrialKit.Stand;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>What each strip's records came to, table by table; a strip without a record is not listed.</summary>
/// <param name="Stands">From counts of standing plants.</param>
/// <param name="Emergence">From visits.</param>
/// <param name="Spacings">From positions on the tape.</param>
/// <param name="Depths">From plants dug.</param>
/// <param name="Yields">From weights.</param>
/// <param name="Evenness">From the plants' dates, or counts at visits.</param>
/// <param name="Stages">From leaf collars.</param>
public sealed record StripSummaries(
    ImmutableArray<StripStand> Stands,
    ImmutableArray<StripEmergence> Emergence,
    ImmutableArray<StripSpacing> Spacings,
    ImmutableArray<StripDepth> Depths,
    ImmutableArray<StripYield> Yields,
    ImmutableArray<StripEvenness> Evenness,
    ImmutableArray<StripStage> Stages)
{
    /// <summary>The findings about single strips, table by table; what is said alike of every strip is said once.</summary>
    public IEnumerable<Finding> Findings =>
        Stands.SelectMany(strip => strip.Findings)
            .Concat(Emergence.SelectMany(strip => strip.Findings))
            .Concat(Spacings.SelectMany(strip => strip.Findings))
            .Concat(Depths.SelectMany(strip => strip.Findings))
            .Concat(Yields.SelectMany(strip => strip.Findings))
            .Concat(Evenness.SelectMany(strip => strip.Findings))
            .Distinct();

    /// <summary>Summarises a trial's strips.</summary>
    internal static StripSummaries Of(StripTrial trial)
    {
        ImmutableArray<StripStand> stands = [];
        ImmutableArray<StripEmergence> emergence = [];
        ImmutableArray<StripSpacing> spacings = [];
        ImmutableArray<StripDepth> depths = [];
        ImmutableArray<StripYield> yields = [];
        ImmutableArray<StripEvenness> evenness = [];
        Concurrently.Run(
            () => emergence = EmergenceTiming.Of(trial),
            () => evenness = PlantEvenness.Of(trial),
            () => spacings = InRowSpacing.Of(trial),
            () => depths = SeedDepth.Of(trial),
            () => stands = StandCounts.Of(trial),
            () => yields = StripYields.Of(trial));
        return new(stands, emergence, spacings, depths, yields, evenness, LeafStage.Of(trial, emergence));
    }
}
