namespace TrialKit.Numerics.Distributions;

/// <summary>The chi-square distribution by the regularised incomplete gamma integrals.</summary>
internal static class ChiSquare
{
    /// <summary>P(X &lt;= x); below zero it is 0.</summary>
    public static double LowerTail(double x, double df)
    {
        CheckArguments(x, df);
        return double.IsPositiveInfinity(x) ? 1 : IncompleteGamma.Lower(df / 2, x / 2);
    }

    /// <summary>P(X &gt; x); below zero it is 1.</summary>
    public static double UpperTail(double x, double df)
    {
        CheckArguments(x, df);
        return double.IsPositiveInfinity(x) ? 0 : IncompleteGamma.Upper(df / 2, x / 2);
    }

    /// <summary>The x that leaves <paramref name="upperTail"/> above.</summary>
    public static double UpperQuantile(double upperTail, double df)
    {
        Checks.Probability(upperTail);
        CheckArguments(0, df);
        if (upperTail is 0 or 1)
        {
            return upperTail == 0 ? double.PositiveInfinity : 0;
        }

        return upperTail <= 0.5
            ? QuantileSearch.Falling(x => UpperTail(x, df), upperTail, df)
            : QuantileSearch.Rising(x => LowerTail(x, df), 1 - upperTail, df);
    }

    private static void CheckArguments(double x, double df)
    {
        Checks.Number(x);
        Checks.Positive(df);
    }
}
