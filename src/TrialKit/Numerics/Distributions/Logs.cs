namespace TrialKit.Numerics.Distributions;

/// <summary>Logarithms near one and exponentials near zero.</summary>
internal static class Logs
{
    /// <summary>log(1 + x) with full precision for small x, where <see cref="double.LogP1"/> rounds 1 + x first (Kahan's correction).</summary>
    public static double OnePlus(double x)
    {
        var sum = 1 + x;
        return sum == 1 || double.IsPositiveInfinity(sum) ? x : Math.Log(sum) * (x / (sum - 1));
    }

    /// <summary>1 - e^x for x at or below zero, with full precision for small x.</summary>
    public static double OneMinusExp(double x)
    {
        // From Kahan: the rounding of e^x is undone by the logarithm of the rounded value.
        var power = Math.Exp(x);
        if (power == 1)
        {
            return -x;
        }

        return power < 0.5 ? 1 - power : (1 - power) * (x / Math.Log(power));
    }

    /// <summary>1 - (1 - x)^n for x from 0 to 1, with full precision for small x.</summary>
    public static double OneMinusPower(double x, int n) => n == 1 ? x : OneMinusExp(n * OnePlus(-x));
}
