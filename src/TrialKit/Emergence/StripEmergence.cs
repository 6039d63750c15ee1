using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.EventTimes;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>When and how evenly one strip came up, from its flagged spots together.</summary>
public sealed record StripEmergence
{
    /// <summary>The strip; one that is left out of the analysis is summarised all the same.</summary>
    public required Strip Strip { get; init; }

    /// <summary>Its spots, in the order they were written down.</summary>
    public required ImmutableArray<string> Spots { get; init; }

    /// <summary>Seeds sown at the spots, as known or by row length and seeding rate; null when unknown at any of them.</summary>
    public required double? SeedsSown { get; init; }

    /// <summary>Plants up in the end: the sum of the highest count of each spot.</summary>
    public required int PlantsUp { get; init; }

    /// <summary>Plants up as percent of the seeds sown, never clipped; null when the seeds are unknown.</summary>
    public double? FinalPercent => SeedsSown > 0 ? 100 * PlantsUp / SeedsSown : null;

    /// <summary>Wilson's interval of <see cref="FinalPercent"/> (Wilson 1927, J. Am. Stat. Assoc. 22:209-212); null where seeds are unknown or fewer than the plants. It is of this strip and takes its seeds as independent, which makes it too narrow.</summary>
    /// <param name="level">The level.</param>
    public Interval? FinalIntervalAt(ConfidenceLevel level)
    {
        if (SeedsSown is not { } seeds || seeds <= 0 || PlantsUp > seeds)
        {
            return null;
        }

        var (low, high) = WilsonInterval.Of(PlantsUp, seeds, Normal.UpperQuantile(level.Alpha / 2));
        return new(100 * low, 100 * high, level);
    }

    /// <summary>The last visit to any spot, in days after planting.</summary>
    public required double LastVisit { get; init; }

    /// <summary>The fitted curve.</summary>
    public required EventTimeEstimate Fit { get; init; }

    /// <summary>Time to 10 % of the plants that come up; null when the counts do not tell it.</summary>
    public required EmergenceTime? T10 { get; init; }

    /// <summary>Time to 50 % of the plants that come up; null when the counts do not tell it.</summary>
    public required EmergenceTime? T50 { get; init; }

    /// <summary>Time to 90 % of the plants that come up; null when the counts do not tell it.</summary>
    public required EmergenceTime? T90 { get; init; }

    /// <summary>Time to 10 % of the seeds sown; null when so many never come up or the counts do not tell it.</summary>
    public required EmergenceTime? T10OfSown { get; init; }

    /// <summary>Time to 50 % of the seeds sown; null when so many never come up or the counts do not tell it.</summary>
    public required EmergenceTime? T50OfSown { get; init; }

    /// <summary>Time to 90 % of the seeds sown; null when so many never come up or the counts do not tell it.</summary>
    public required EmergenceTime? T90OfSown { get; init; }

    /// <summary>T90 less T10; null when the counts do not tell it.</summary>
    public required EmergenceSpread? Spread { get; init; }

    /// <summary>How heat is counted in the figures; the trial's own method.</summary>
    public required HeatMethod HeatMethod { get; init; }

    /// <summary>Percent of the plants up in the end that were up within 24 h of the first one seen at their spot; null where the visits do not tell it.</summary>
    public required double? PercentWithin24Hours { get; init; }

    /// <summary>Percent of the plants up in the end that were up within 48 h of the first one seen at their spot; null where the visits do not tell it.</summary>
    public required double? PercentWithin48Hours { get; init; }

    /// <summary>The share up at each visit, without any curve; where spots were visited at different times, at the visits for which their counts together fix it.</summary>
    public required ImmutableArray<ShareUp> Curve { get; init; }

    /// <summary>Timing indices under their authors' names, for the appendix; empty when the spots were not visited at the same times.</summary>
    public required ImmutableArray<TimingIndex> Indices { get; init; }

    /// <summary>The fits behind it, one per shape, the one used first.</summary>
    internal ImmutableArray<EventTimeFit> Fits { get; init; } = [];

    /// <summary>Whether the seeds sown are known at every spot, so that the share that comes up is estimated.</summary>
    internal bool SeedsAreKnown => SeedsSown is not null;

    /// <summary>What a reader should know of it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
