using MathNet.Numerics;

namespace TrialKit.Numerics.Distributions;

/// <summary>The standard normal distribution; each tail is computed directly.</summary>
internal static class Normal
{
    private const double RootTwo = 1.4142135623730951;
    private const double DensityAtZero = 0.3989422804014327;

    /// <summary>P(Z &lt;= z).</summary>
    public static double LowerTail(double z)
    {
        Checks.Number(z);
        return 0.5 * SpecialFunctions.Erfc(-z / RootTwo);
    }

    /// <summary>P(Z &gt; z).</summary>
    public static double UpperTail(double z) => LowerTail(-z);

    /// <summary>The density at z.</summary>
    public static double Density(double z)
    {
        Checks.Number(z);
        return DensityAtZero * Math.Exp(-0.5 * z * z);
    }

    /// <summary>The z that leaves <paramref name="p"/> below; 0 and 1 give the infinities.</summary>
    public static double Quantile(double p)
    {
        Checks.Probability(p);
        return p <= 0.5 ? -UpperQuantile(p) : UpperQuantile(1 - p);
    }

    /// <summary>The z that leaves <paramref name="upperTail"/> above.</summary>
    public static double UpperQuantile(double upperTail)
    {
        Checks.Probability(upperTail);
        if (upperTail > 0.5)
        {
            return -UpperQuantile(1 - upperTail);
        }

        if (upperTail == 0)
        {
            return double.PositiveInfinity;
        }

        if (upperTail == 0.5)
        {
            return 0;
        }

        // One step of Halley's method takes the library's inverse to the accuracy of the tail itself.
        var z = RootTwo * SpecialFunctions.ErfcInv(2 * upperTail);
        var newton = (UpperTail(z) - upperTail) / Density(z);
        return z + (newton / (1 - (0.5 * z * newton)));
    }
}
