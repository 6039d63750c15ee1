using MathNet.Numerics;

namespace TrialKit.Numerics.Distributions;

/// <summary>
/// Student's t for any degrees of freedom above zero, fractions and infinity (the normal) included.
/// A tail is computed where it is small, so 1e-300 keeps its digits; quantiles are searched on these same tails.
/// </summary>
internal static class StudentT
{
    // Beyond this the normalising transformation of Hill is exact to rounding, and the continued fraction slow.
    private const double ManyDegrees = 1e5;

    /// <summary>P(T &lt;= t).</summary>
    public static double LowerTail(double t, double df) => UpperTail(-t, df);

    /// <summary>P(T &gt; t).</summary>
    public static double UpperTail(double t, double df)
    {
        Checks.Number(t);
        Checks.DegreesOfFreedom(df);
        if (double.IsInfinity(t))
        {
            return t > 0 ? 0 : 1;
        }

        if (double.IsPositiveInfinity(df))
        {
            return Normal.UpperTail(t);
        }

        if (df > ManyDegrees)
        {
            return Normal.UpperTail(Normalised(t, df));
        }

        return t >= 0 ? Tail(t, df) : 1 - Tail(-t, df);
    }

    /// <summary>The t that leaves <paramref name="p"/> below; 0 and 1 give the infinities.</summary>
    public static double Quantile(double p, double df)
    {
        Checks.Probability(p);
        return p <= 0.5 ? -UpperQuantile(p, df) : UpperQuantile(1 - p, df);
    }

    /// <summary>The t that leaves <paramref name="upperTail"/> above; infinite when it exceeds the largest number.</summary>
    public static double UpperQuantile(double upperTail, double df)
    {
        Checks.Probability(upperTail);
        Checks.DegreesOfFreedom(df);
        if (upperTail > 0.5)
        {
            return -UpperQuantile(1 - upperTail, df);
        }

        if (upperTail is 0 or 0.5)
        {
            return upperTail == 0 ? double.PositiveInfinity : 0;
        }

        var guess = Normal.UpperQuantile(upperTail);
        if (double.IsPositiveInfinity(df))
        {
            return guess;
        }

        // Near the middle the tail says little; the area between 0 and t, whose digits survive, is followed instead.
        return upperTail > 0.25 && df <= ManyDegrees
            ? QuantileSearch.Rising(t => Centre(t, df), 0.5 - upperTail, guess)
            : QuantileSearch.Falling(t => UpperTail(t, df), upperTail, guess);
    }

    private static double Tail(double t, double df)
    {
        var (share, remainder) = Shares(t, df);
        if (share > 1e-20)
        {
            return 0.5 * IncompleteBeta.Lower(df / 2, 0.5, share, remainder);
        }

        // The leading term of the series; t squared may exceed the largest number, so its logarithm is used.
        var half = df / 2;
        return 0.5 * Math.Exp((half * (Math.Log(df) - (2 * Math.Log(t)))) + LogInverseBeta(half)) / half;
    }

    // P(0 < T <= t).
    private static double Centre(double t, double df)
    {
        var (share, remainder) = Shares(t, df);
        return 0.5 * IncompleteBeta.Lower(0.5, df / 2, remainder, share);
    }

    // df / (df + t^2) and t^2 / (df + t^2), neither by subtraction.
    private static (double Share, double Remainder) Shares(double t, double df)
    {
        var ratio = t / Math.Sqrt(df);
        var square = ratio * ratio;
        return (1 / (1 + square), ratio < 1 ? square / (1 + square) : 1 / (1 + (1 / square)));
    }

    // -log B(a, 1/2).
    private static double LogInverseBeta(double a) =>
        SpecialFunctions.GammaLn(a + 0.5) - SpecialFunctions.GammaLn(a) - (0.5 * Math.Log(Math.PI));

    /// <summary>The normal deviate with the same tail (Hill 1970, Communications of the ACM 13:617, algorithm 395).</summary>
    private static double Normalised(double t, double df)
    {
        var ratio = t / Math.Sqrt(df);
        var a = df - 0.5;
        var b = 48 * a * a;
        var square = a * Logs.OnePlus(ratio * ratio);
        var z = Math.Sqrt(square);
        var correction = ((((-0.4 * square) - 3.3) * square - 24) * square - 85.5) / (0.8 * square * square + 100 + b);
        return Math.CopySign(z * (1 + ((correction + square + 3) / b)), t);
    }
}
