using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>What belongs to a comparison of pairs alone.</summary>
/// <param name="Pairs">The pairs that have both strips, in the order of the field where it is known.</param>
public sealed record PairTests(ImmutableArray<PairDifference> Pairs)
{
    /// <summary>Fisher's randomisation test within pairs; null without a pair.</summary>
    public ExactP? SignFlips { get; init; }

    /// <summary>Wilcoxon's signed-rank test, zero differences left out before ranking; null when every difference is zero or there is no pair.</summary>
    public ExactP? SignedRank { get; init; }

    /// <summary>The same with zero differences ranked and then left out; null where <see cref="SignedRank"/> is.</summary>
    public ExactP? SignedRankPratt { get; init; }

    /// <summary>The sign test; null without a pair.</summary>
    public SignCount? Signs { get; init; }

    /// <summary>The Hodges-Lehmann estimate; null without a pair.</summary>
    public MedianDifference? Median { get; init; }
}
