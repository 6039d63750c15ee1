using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>What belongs to a comparison of pairs alone.</summary>
/// <param name="Pairs">The pairs that have both strips, in the order of the field where it is known.</param>
public sealed record PairTests(ImmutableArray<PairDifference> Pairs)
{
    /// <summary>Fisher's randomisation test within pairs; null with fewer than two pairs, as the others here are.</summary>
    public ExactP? SignFlips { get; init; }

    /// <summary>Wilcoxon's signed-rank test, zero differences left out before ranking; null when every difference is zero.</summary>
    public ExactP? SignedRank { get; init; }

    /// <summary>The same with zero differences ranked and then left out; null where <see cref="SignedRank"/> is.</summary>
    public ExactP? SignedRankPratt { get; init; }

    /// <summary>The sign test.</summary>
    public SignCount? Signs { get; init; }

    /// <summary>The Hodges-Lehmann estimate.</summary>
    public MedianDifference? Median { get; init; }

    /// <summary>The mixed model of all strips where some lost the other strip of their pair; null where each has it, and where the model cannot be fitted.</summary>
    public AllStripsEstimate? AllStrips { get; init; }
}
