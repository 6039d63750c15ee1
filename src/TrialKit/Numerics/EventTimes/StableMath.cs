using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Elementary functions that keep their digits near zero and in the tails.</summary>
internal static class StableMath
{
    private const double HalfLogTwoPi = 0.918938533204672741780329736406;

    /// <summary>exp(x) - 1 without cancellation.</summary>
    public static double ExpM1(double x) => x <= 0.0 ? -Logs.OneMinusExp(x) : Math.Exp(x) * Logs.OneMinusExp(-x);

    /// <summary>log(1 - exp(-x)) for x above 0.</summary>
    public static double Log1MExp(double x) => x > 0.693147180559945 ? Logs.OnePlus(-Math.Exp(-x)) : Math.Log(-ExpM1(-x));

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
    public static double LogLogistic(double x) => x >= 0.0 ? -Logs.OnePlus(Math.Exp(-x)) : x - Logs.OnePlus(Math.Exp(x));

    /// <summary>Log of the standard normal density.</summary>
    public static double LogNormalDensity(double z) => (-0.5 * z * z) - HalfLogTwoPi;

    /// <summary>Log of the standard normal lower tail, to full relative precision down to any z.</summary>
    public static double LogNormalCdf(double z)
    {
        if (z > -30.0)
        {
            return z > 5.0 ? Logs.OnePlus(-Normal.LowerTail(-z)) : Math.Log(Normal.LowerTail(z));
        }

        // Mills' ratio by its asymptotic series; at z = -30 the first term left out is below 1e-13.
        var x = 1.0 / (z * z);
        var series = 1.0 - (x * (1.0 - (3.0 * x * (1.0 - (5.0 * x * (1.0 - (7.0 * x * (1.0 - (9.0 * x)))))))));
        return LogNormalDensity(z) - Math.Log(-z) + Math.Log(series);
    }
}
