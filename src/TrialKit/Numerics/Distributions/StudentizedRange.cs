namespace TrialKit.Numerics.Distributions;

/// <summary>
/// The range of k means over their estimated standard error, the distribution behind Tukey's comparisons. One integral over
/// the place of the largest mean lies inside one over the chi scale (Lund and Lund 1983, AS 190; Copenhaver and Holland 1988).
/// </summary>
internal static class StudentizedRange
{
    // A range of this many standard deviations has a chance below the smallest number.
    private const double Furthest = 74;
    private const double InnerTolerance = 1e-13;
    private const double OuterTolerance = 1e-12;
    private const double QuantilePrecision = 1e-12;

    /// <summary>P(Q &gt; q): small values keep their digits.</summary>
    /// <param name="q">The range over the standard error of one mean; at or below 0 the tail is 1.</param>
    /// <param name="k">Means compared, 2 or more.</param>
    /// <param name="df">Degrees of freedom of the error, above 0, infinity included.</param>
    public static double UpperTail(double q, int k, double df)
    {
        Checks.Number(q);
        Checks.AtLeast(k, 2);
        Checks.DegreesOfFreedom(df);
        if (q <= 0 || double.IsPositiveInfinity(q))
        {
            return q <= 0 ? 1 : 0;
        }

        return Math.Min(1, ChiScale.Mean(s => RangeUpperTail(q * s, k), df, OuterTolerance).Value);
    }

    /// <summary>The q that leaves <paramref name="upperTail"/> above.</summary>
    public static double UpperQuantile(double upperTail, int k, double df)
    {
        Checks.OpenProbability(upperTail);
        Checks.AtLeast(k, 2);
        Checks.DegreesOfFreedom(df);

        // Bonferroni's bound over the k (k - 1) / 2 pairs is never below the answer and seldom far above.
        var guess = Math.Sqrt(2) * StudentT.UpperQuantile(upperTail / (k * (k - 1.0)), df);
        return QuantileSearch.Falling(q => UpperTail(q, k, df), upperTail, guess, QuantilePrecision);
    }

    // P(range of k standard normals > w) = k * integral of phi(z) (Phi(z)^(k-1) - (Phi(z) - Phi(z - w))^(k-1)), the
    // difference of powers taken as Phi^(k-1) (1 - (1 - ratio)^(k-1)) to keep small tails.
    private static double RangeUpperTail(double w, int k) =>
        w > Furthest ? 0 : Quadrature.OverLine(
            z =>
            {
                var below = Normal.LowerTail(z);
                var ratio = Math.Min(1, Normal.LowerTail(z - w) / below);
                return k * Normal.Density(z) * Math.Pow(below, k - 1) * Logs.OneMinusPower(ratio, k - 1);
            },
            start: w / 2,
            step: 1,
            low: -Furthest / 2,
            high: Furthest / 2,
            InnerTolerance).Value;
}
