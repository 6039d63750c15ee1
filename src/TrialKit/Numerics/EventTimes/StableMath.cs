namespace TrialKit.Numerics.EventTimes;

/// <summary>Elementary functions that keep their digits near zero and in the tails.</summary>
internal static class StableMath
{
    private const double HalfLogTwoPi = 0.918938533204672741780329736406;

    /// <summary>exp(x) - 1 without cancellation (Kahan's correction).</summary>
    public static double ExpM1(double x)
    {
        // The framework's own ExpM1 subtracts one from exp(x) and loses every digit near zero.
        var u = Math.Exp(x);
        if (u == 1.0)
        {
            return x;
        }

        var less = u - 1.0;
        return less == -1.0 || Math.Abs(x) > 1.0 ? less : less * x / Math.Log(u);
    }

    /// <summary>log(1 + x) without cancellation (Kahan's correction).</summary>
    public static double LogP1(double x)
    {
        var u = 1.0 + x;
        return u == 1.0 ? x : double.IsPositiveInfinity(u) ? u : Math.Log(u) * x / (u - 1.0);
    }

    /// <summary>log(1 - exp(-x)) for x above 0.</summary>
    public static double Log1MExp(double x) => x > 0.693147180559945 ? LogP1(-Math.Exp(-x)) : Math.Log(-ExpM1(-x));

    /// <summary>1 / (1 + exp(-x)), accurate in both tails.</summary>
    public static double Logistic(double x)
    {
        if (x >= 0.0)
        {
            return 1.0 / (1.0 + Math.Exp(-x));
        }

        var u = Math.Exp(x);
        return u / (1.0 + u);
    }

    /// <summary>log(1 / (1 + exp(-x))).</summary>
    public static double LogLogistic(double x) => x >= 0.0 ? -LogP1(Math.Exp(-x)) : x - LogP1(Math.Exp(x));

    /// <summary>Log of the standard normal density.</summary>
    public static double LogNormalDensity(double z) => (-0.5 * z * z) - HalfLogTwoPi;

    /// <summary>Log of the standard normal lower tail, to full relative precision down to any z.</summary>
    public static double LogNormalCdf(double z)
    {
        if (z > -30.0)
        {
            return z > 5.0 ? LogP1(-NormalCdf(-z)) : Math.Log(NormalCdf(z));
        }

        // Mills' ratio by its asymptotic series; at z = -30 the first term left out is below 1e-13.
        var x = 1.0 / (z * z);
        var series = 1.0 - (x * (1.0 - (3.0 * x * (1.0 - (5.0 * x * (1.0 - (7.0 * x * (1.0 - (9.0 * x)))))))));
        return LogNormalDensity(z) - Math.Log(-z) + Math.Log(series);
    }

    /// <summary>The standard normal lower tail.</summary>
    public static double NormalCdf(double z) => 0.5 * MathNet.Numerics.SpecialFunctions.Erfc(-z / Math.Sqrt(2.0));

    /// <summary>The standard normal quantile of a lower tail p in (0, 1).</summary>
    public static double NormalQuantile(double p) => -Math.Sqrt(2.0) * MathNet.Numerics.SpecialFunctions.ErfcInv(2.0 * p);
}
