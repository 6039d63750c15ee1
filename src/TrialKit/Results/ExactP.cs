using TrialKit.Quantities;

namespace TrialKit.Results;

/// <summary>The outcome of an exact test: how many of the equally likely arrangements are at least as extreme.</summary>
/// <param name="P">Two-sided.</param>
/// <param name="SmallestPossible">The smallest two-sided p that this number of replicates can give.</param>
/// <param name="Replicates">Pairs or blocks that the test used.</param>
/// <param name="Method">The procedure.</param>
public sealed record ExactP(Probability P, Probability SmallestPossible, int Replicates, Method Method);
