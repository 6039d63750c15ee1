namespace TrialKit.Numerics.Distributions;

/// <summary>The F distribution of a ratio of mean squares by the regularised incomplete beta integral.</summary>
internal static class FisherF
{
    /// <summary>P(F &gt; f); below zero it is 1. Either degrees of freedom may be infinite, not both.</summary>
    public static double UpperTail(double f, double df1, double df2)
    {
        CheckArguments(f, df1, df2);
        if (f <= 0 || double.IsPositiveInfinity(f))
        {
            return f <= 0 ? 1 : 0;
        }

        if (double.IsPositiveInfinity(df2))
        {
            return ChiSquare.UpperTail(df1 * f, df1);
        }

        if (double.IsPositiveInfinity(df1))
        {
            return ChiSquare.LowerTail(df2 / f, df2);
        }

        var (x, y) = Split(df2, df1 * f);
        return IncompleteBeta.Lower(df2 / 2, df1 / 2, x, y);
    }

    /// <summary>P(F &lt;= f); it is the upper tail of 1 / F with the degrees of freedom changed over.</summary>
    public static double LowerTail(double f, double df1, double df2)
    {
        CheckArguments(f, df1, df2);
        return f <= 0 ? 0 : UpperTail(1 / f, df2, df1);
    }

    /// <summary>The f that leaves <paramref name="upperTail"/> above.</summary>
    public static double UpperQuantile(double upperTail, double df1, double df2)
    {
        Checks.Probability(upperTail);
        CheckArguments(0, df1, df2);
        if (upperTail is 0 or 1)
        {
            return upperTail == 0 ? double.PositiveInfinity : 0;
        }

        return upperTail <= 0.5
            ? QuantileSearch.Falling(f => UpperTail(f, df1, df2), upperTail, 1)
            : QuantileSearch.Rising(f => LowerTail(f, df1, df2), 1 - upperTail, 1);
    }

    // first / (first + second) and its complement, each without subtraction or overflow.
    private static (double First, double Second) Split(double first, double second) =>
        (1 / (1 + (second / first)), 1 / (1 + (first / second)));

    private static void CheckArguments(double f, double df1, double df2)
    {
        Checks.Number(f);
        Checks.DegreesOfFreedom(df1);
        Checks.DegreesOfFreedom(df2);
        if (double.IsPositiveInfinity(df1) && double.IsPositiveInfinity(df2))
        {
            throw new ArgumentOutOfRangeException(nameof(df2), "Both degrees of freedom are infinite; at least one finite one was expected.");
        }
    }
}
