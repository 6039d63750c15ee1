using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Power;

/// <summary>The power of the F test of treatments in complete blocks by the noncentral F distribution.</summary>
internal static class BlockPower
{
    /// <summary>
    /// The chance that F is significant when two treatments differ by the difference given and the others lie midway,
    /// the arrangement hardest to find: ncp = blocks (difference / sigma)^2 / 2.
    /// </summary>
    /// <param name="treatments">Treatments, 2 or more.</param>
    /// <param name="blocks">Blocks, 2 or more.</param>
    /// <param name="difference">True difference of the two treatments furthest apart.</param>
    /// <param name="standardDeviation">Standard deviation of a plot within its block, above 0, in the same unit.</param>
    /// <param name="alpha">Level of the F test.</param>
    public static double Power(int treatments, int blocks, double difference, double standardDeviation, double alpha)
    {
        Checks.AtLeast(treatments, 2);
        Checks.AtLeast(blocks, 2);
        Checks.Finite(difference);
        Checks.Positive(standardDeviation);
        Checks.OpenProbability(alpha);
        var df1 = treatments - 1;
        var df2 = (treatments - 1) * (blocks - 1);
        var effect = difference / standardDeviation;
        return NoncentralF.UpperTail(FisherF.UpperQuantile(alpha, df1, df2), df1, df2, blocks * effect * effect / 2);
    }
}
