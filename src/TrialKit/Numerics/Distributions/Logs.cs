namespace TrialKit.Numerics.Distributions;

/// <summary>Logarithms near one.</summary>
internal static class Logs
{
    /// <summary>log(1 + x) with full precision for small x, where <see cref="double.LogP1"/> rounds 1 + x first (Kahan's correction).</summary>
    public static double OnePlus(double x)
    {
        var sum = 1 + x;
        return sum == 1 || double.IsPositiveInfinity(sum) ? x : Math.Log(sum) * (x / (sum - 1));
    }
}
