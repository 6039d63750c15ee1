using TrialKit.Quantities;

namespace TrialKit.Results;

/// <summary>The outcome of a randomisation test: how many of the equally likely arrangements are at least as extreme.</summary>
/// <param name="P">Two-sided.</param>
/// <param name="SmallestPossible">The smallest p that this number of replicates can give.</param>
/// <param name="Replicates">Pairs or blocks that the test used.</param>
/// <param name="Method">The procedure.</param>
public sealed record ExactP(Probability P, Probability SmallestPossible, int Replicates, Method Method)
{
    /// <summary>How many arrangements were drawn at random because there were too many to count; null when all were counted.</summary>
    public int? Draws { get; init; }

    /// <summary>The seed of the draws; null when all arrangements were counted.</summary>
    public ulong? Seed { get; init; }
}
