using TrialKit.Numerics.Linear;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The tests of blocks that need no bell shape: rearrangements within blocks, and ranks.</summary>
internal static class BlockRankTests
{
    /// <summary>Arrangements drawn when there are too many to walk through.</summary>
    public const int Draws = 19_999;

    /// <summary>The seed of the draws: the result is the same on every run.</summary>
    public const ulong Seed = 20_240_501;

    // A trial has some twenty measures: a walk must not take longer than the draws.
    private const long LargestWalk = 20_000;

    private const int FewestTreatmentsToRank = 3;

    /// <summary>Responses rearranged within blocks; null without variation.</summary>
    public static ExactP? Randomization(BlockAnova anova, double[] values)
    {
        if (anova.Error.Status is FStatus.NoVariation or FStatus.NoErrorDegrees)
        {
            return null;
        }

        var design = anova.Design;
        var test = BlockRandomization.Of(values, design.Block, design.Treatment, Draws, Seed, LargestWalk);
        return new(Probability.Of(test.P), Probability.Of(Smallest(test, design)), design.Blocks, Methods.BlockRandomization)
        {
            Draws = test.IsExact ? null : Draws,
            Seed = test.Seed,
        };
    }

    /// <summary>Friedman's test; null where it cannot be made.</summary>
    public static FTest? Friedman(BlockAnova anova, double[] values)
    {
        var design = anova.Design;
        if (!design.IsComplete || design.Treatments < FewestTreatmentsToRank)
        {
            return null;
        }

        var test = Numerics.Linear.Friedman.Of(values, design.Block, design.Treatment);
        return test is { ChiSquare: { } statistic, P: { } p } ? new(statistic, test.DegreesOfFreedom, DenominatorDegrees: null, Probability.Of(p), Methods.Friedman) : null;
    }

    // In whole blocks the treatments' names can be exchanged all at once without a change of the statistic.
    private static double Smallest(BlockRandomization test, BlockDesign design)
    {
        if (!test.IsExact)
        {
            return 1 / (1.0 + Draws);
        }

        var alike = design.IsComplete ? Enumerable.Range(1, design.Treatments).Aggregate(1.0, (product, factor) => product * factor) : 1;
        return Math.Min(1, alike / test.Arrangements);
    }
}
