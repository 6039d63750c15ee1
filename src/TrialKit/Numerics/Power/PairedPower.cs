namespace TrialKit.Numerics.Power;

/// <summary>Power, detectable difference and pairs required of the two-sided t test of paired differences, df = pairs - 1.</summary>
internal static class PairedPower
{
    /// <summary>The chance that the test finds a true difference.</summary>
    /// <param name="difference">True mean difference; only its size matters.</param>
    /// <param name="standardDeviation">Standard deviation of a difference, above 0, in the same unit.</param>
    /// <param name="pairs">Pairs, 2 or more.</param>
    /// <param name="alpha">Two-sided level.</param>
    /// <param name="rejection">Which rejections count.</param>
    public static double Power(
        double difference, double standardDeviation, int pairs, double alpha, Rejection rejection = Rejection.TrueDirection)
    {
        Checks.Finite(difference);
        Checks.Positive(standardDeviation);
        Checks.AtLeast(pairs, 2);
        return TTestPower.Power(Math.Sqrt(pairs) * Math.Abs(difference) / standardDeviation, pairs - 1, alpha, rejection);
    }

    /// <summary>The smallest true difference found, in its true direction, with the chance asked.</summary>
    /// <param name="standardDeviation">Standard deviation of a difference, above 0.</param>
    /// <param name="pairs">Pairs, 2 or more.</param>
    /// <param name="alpha">Two-sided level.</param>
    /// <param name="power">Chance asked.</param>
    public static double DetectableDifference(double standardDeviation, int pairs, double alpha, double power)
    {
        Checks.Positive(standardDeviation);
        Checks.AtLeast(pairs, 2);
        return TTestPower.NoncentralityFor(power, pairs - 1, alpha) * standardDeviation / Math.Sqrt(pairs);
    }

    /// <summary>The fewest pairs with the power asked, or nothing when more than <paramref name="most"/> are needed.</summary>
    /// <param name="difference">True mean difference, not 0.</param>
    /// <param name="standardDeviation">Standard deviation of a difference, above 0.</param>
    /// <param name="alpha">Two-sided level.</param>
    /// <param name="power">Chance asked, counting the true direction.</param>
    /// <param name="most">Where to give up, 2 or more.</param>
    public static int? PairsRequired(double difference, double standardDeviation, double alpha, double power, int most)
    {
        Checks.Positive(Math.Abs(difference));
        Checks.OpenProbability(power);
        return FewestReplicates.Find(pairs => Power(difference, standardDeviation, pairs, alpha) >= power, most);
    }
}
