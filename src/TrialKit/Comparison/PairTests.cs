using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>What belongs to a comparison of pairs alone.</summary>
/// <param name="Pairs">The pairs that have both strips, in the order of the field where it is known.</param>
/// <param name="SignFlips">Fisher's randomisation test within pairs; null without a pair.</param>
/// <param name="SignedRank">Wilcoxon's signed-rank test; null when every difference is zero or there is no pair.</param>
public sealed record PairTests(ImmutableArray<PairDifference> Pairs, ExactP? SignFlips, ExactP? SignedRank);
