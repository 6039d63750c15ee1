using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>One treatment against another on one measure at several sites.</summary>
/// <param name="Measure">What was measured, in the unit of all sites.</param>
/// <param name="Pair">The two treatments.</param>
/// <param name="Sites">The sites that gave a difference with an error, two or more.</param>
/// <param name="Common">One difference common to all sites.</param>
/// <param name="Moments">Differences that vary between sites, their variance by moments.</param>
/// <param name="Reml">The same, their variance by restricted maximum likelihood; interval and verdict are this one's.</param>
/// <param name="Heterogeneity">Cochran's Q: do sites differ by more than their errors?</param>
/// <param name="Inconsistency">The share of the spread of the estimates that lies between sites, 0 to 1.</param>
/// <param name="Mixed">The mixed model of all strips; null where it cannot be set up.</param>
/// <param name="Level">The level of intervals and verdict.</param>
/// <param name="Findings">What to doubt.</param>
public sealed record PooledComparison(
    Measure Measure,
    ComparedPair Pair,
    ImmutableArray<SiteEstimate> Sites,
    PooledEstimate Common,
    PooledEstimate Moments,
    PooledEstimate Reml,
    FTest Heterogeneity,
    double Inconsistency,
    MixedEstimate? Mixed,
    ConfidenceLevel Level,
    ImmutableArray<Finding> Findings)
{
    /// <summary>How many comparisons of the measure were pooled: p, intervals and verdict hold for all of them together.</summary>
    public int Comparisons { get; init; } = 1;

    /// <summary>The p of the verdict.</summary>
    public Probability P => PFor(Reml);

    /// <summary>What the sites together showed.</summary>
    public Verdict Verdict => P.Value < Level.Alpha ? Verdict.Shown : Verdict.NotShown;

    /// <summary>The interval of the verdict.</summary>
    public Interval Interval => IntervalFor(Reml);

    /// <summary>The two-sided p of one way of weighing the sites, adjusted for all comparisons of the measure by Bonferroni's inequality.</summary>
    public Probability PFor(PooledEstimate pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        return Probability.Of(Math.Min(1, Comparisons * pooled.Estimate.PTwoSided.Value));
    }

    /// <summary>The interval that belongs to that p.</summary>
    public Interval IntervalFor(PooledEstimate pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        return pooled.Estimate.IntervalAt(ConfidenceLevel.FromAlpha(Level.Alpha / Comparisons)) with { Level = Level };
    }
}
