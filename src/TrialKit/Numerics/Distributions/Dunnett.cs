namespace TrialKit.Numerics.Distributions;

/// <summary>
/// The largest of several t statistics that compare treatments with one control, all on the same error (Dunnett 1955).
/// Given the control's deviation z and the scale s the treatments are independent, so the probability is a product inside
/// integrals over z and s; lambda_i = sqrt(n_i / (n_i + n_0)) is each treatment's share of the control.
/// </summary>
internal static class Dunnett
{
    // Relative errors asked of a probability, and of those on the way to a critical value, whose digits are worth less. The
    // inner integral is asked for a tenth of the outer one's.
    private const double TailTolerance = 1e-11;
    private const double CriticalValueTolerance = 1e-9;
    private const double InnerShare = 0.1;

    /// <summary>P(max |T_i| &gt; d): the familywise p of a two-sided comparison with |t| = d.</summary>
    /// <param name="d">0 or more.</param>
    /// <param name="control">Replicates of the control.</param>
    /// <param name="treatments">Replicates of each treatment, at least one.</param>
    /// <param name="df">Degrees of freedom of the error, above 0, infinity included.</param>
    public static double UpperTailTwoSided(double d, int control, ReadOnlySpan<int> treatments, double df) =>
        UpperTail(d, Shares(control, treatments), df, twoSided: true, TailTolerance);

    /// <summary>P(max T_i &gt; d): the familywise p of the one-sided comparison "larger than the control" with t = d.</summary>
    /// <param name="d">Any finite number.</param>
    /// <param name="control">Replicates of the control.</param>
    /// <param name="treatments">Replicates of each treatment, at least one.</param>
    /// <param name="df">Degrees of freedom of the error, above 0, infinity included.</param>
    public static double UpperTailOneSided(double d, int control, ReadOnlySpan<int> treatments, double df) =>
        UpperTail(d, Shares(control, treatments), df, twoSided: false, TailTolerance);

    /// <summary>The |t| exceeded by any treatment with chance <paramref name="upperTail"/>.</summary>
    public static double CriticalValueTwoSided(double upperTail, int control, ReadOnlySpan<int> treatments, double df) =>
        CriticalValue(upperTail, Shares(control, treatments), df, twoSided: true);

    /// <summary>The t exceeded by any treatment with chance <paramref name="upperTail"/>, at most one half.</summary>
    public static double CriticalValueOneSided(double upperTail, int control, ReadOnlySpan<int> treatments, double df) =>
        CriticalValue(upperTail, Shares(control, treatments), df, twoSided: false);

    private static double UpperTail(double d, Share[] shares, double df, bool twoSided, double tolerance)
    {
        Checks.Finite(d);
        Checks.DegreesOfFreedom(df);
        return twoSided && d <= 0
            ? 1
            : Math.Min(1, ChiScale.Mean(s => ForKnownSpread(d * s, shares, twoSided, InnerShare * tolerance), df, tolerance).Value);
    }

    private static double CriticalValue(double upperTail, Share[] shares, double df, bool twoSided)
    {
        Checks.OpenProbability(upperTail);
        if (!twoSided && upperTail > 0.5)
        {
            throw new ArgumentOutOfRangeException(
                nameof(upperTail), FormattableString.Invariant($"{upperTail} was found; at most 0.5 was expected of a one-sided test."));
        }

        // Bonferroni's bound is never below the answer and seldom far above.
        var count = shares.Sum(share => share.Count) * (twoSided ? 2 : 1);
        var bonferroni = StudentT.UpperQuantile(upperTail / count, df);

        // With one treatment and one half the bound is zero and the answer too.
        return bonferroni == 0
            ? 0
            : QuantileSearch.Falling(
                d => UpperTail(d, shares, df, twoSided, CriticalValueTolerance), upperTail, bonferroni, CriticalValueTolerance);
    }

    private static double ForKnownSpread(double d, Share[] shares, bool twoSided, double tolerance) =>
        Quadrature.OverLine(
            z =>
            {
                var logInside = 0.0;
                foreach (var (lambda, rest, count) in shares)
                {
                    var outside = Normal.LowerTail(((lambda * z) - d) / rest);
                    outside += twoSided ? Normal.LowerTail(((-lambda * z) - d) / rest) : 0;
                    logInside += count * Logs.OnePlus(-Math.Min(1, outside));
                }

                return Normal.Density(z) * Logs.OneMinusExp(logInside);
            },
            start: 0,
            step: 1,
            low: -38,
            high: 38,
            tolerance).Value;

    // Treatments with the same replication have the same factor; it is computed once and raised to their number.
    private static Share[] Shares(int control, ReadOnlySpan<int> treatments)
    {
        Checks.AtLeast(control, 1);
        Checks.AtLeast(treatments.Length, 1);
        foreach (var replicates in treatments)
        {
            Checks.AtLeast(replicates, 1);
        }

        return
        [
            .. treatments.ToArray().GroupBy(n => n).OrderBy(group => group.Key).Select(group => new Share(
                Math.Sqrt((double)group.Key / (group.Key + control)), Math.Sqrt((double)control / (group.Key + control)), group.Count())),
        ];
    }

    private readonly record struct Share(double Lambda, double Rest, int Count);
}
