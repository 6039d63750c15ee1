namespace TrialKit.Numerics.Distributions;

/// <summary>
/// The upper tail of the noncentral F distribution as the Poisson mixture of beta tails (Johnson, Kotz and Balakrishnan
/// 1995, chapter 30): sum over j of the Poisson chance of j with mean ncp / 2 times I_y(df2 / 2, df1 / 2 + j).
/// </summary>
internal static class NoncentralF
{
    /// <summary>P(F &gt; f).</summary>
    /// <param name="f">0 or more, finite.</param>
    /// <param name="df1">Numerator degrees of freedom, finite.</param>
    /// <param name="df2">Denominator degrees of freedom, finite.</param>
    /// <param name="ncp">Noncentrality: the sum of squared standardised effects; 0 or more.</param>
    public static double UpperTail(double f, double df1, double df2, double ncp)
    {
        Checks.Finite(f);
        Checks.Positive(df1);
        Checks.Positive(df2);
        if (!(ncp >= 0 && double.IsFinite(ncp)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(ncp), FormattableString.Invariant($"{ncp} was found; a finite number of 0 or more was expected."));
        }

        if (ncp == 0 || f <= 0)
        {
            return FisherF.UpperTail(f, df1, df2);
        }

        var mean = ncp / 2;
        var y = 1 / (1 + (df1 * f / df2));
        var x = 1 / (1 + (df2 / (df1 * f)));
        var sum = 0.0;
        for (var j = 0; ; j++)
        {
            var chance = j == 0 ? Math.Exp(-mean) : Saddle.GammaPower(j, mean);
            var term = chance * IncompleteBeta.Lower(df2 / 2, (df1 / 2) + j, y, x);
            sum += term;

            // Past the mean the chances fall faster than the beta tails can rise.
            if (j > mean + 10 && term < 1e-18 * sum)
            {
                return Math.Min(1, sum);
            }
        }
    }
}
