namespace TrialKit.Numerics.Distributions;

/// <summary>
/// Binomial and Poisson terms for real arguments by Loader's saddle-point form (C. Loader 2000, "Fast and accurate
/// computation of binomial probabilities"): near full precision where a difference of log-gammas would lose digits.
/// </summary>
internal static class Saddle
{
    private const double TwoPi = 2 * Math.PI;

    /// <summary>
    /// x^a y^b / B(a, b) with y = 1 - x, both given so that neither is rounded away; a, b above 0.
    /// </summary>
    public static double BetaPower(double a, double b, double x, double y)
    {
        if (x <= 0 || y <= 0)
        {
            return 0;
        }

        var n = a + b;
        var exponent = StirlingError(n) - StirlingError(a) - StirlingError(b) - Deviance(a, n * x) - Deviance(b, n * y);
        return Math.Sqrt(a / n * (b / TwoPi)) * Math.Exp(exponent);
    }

    /// <summary>x^a e^-x / Gamma(a + 1), for a, x above 0.</summary>
    public static double GammaPower(double a, double x) =>
        x <= 0 || double.IsPositiveInfinity(x) ? 0 : Math.Exp(-StirlingError(a) - Deviance(a, x)) / Math.Sqrt(TwoPi * a);

    /// <summary>log Gamma(n + 1) less Stirling's formula.</summary>
    public static double StirlingError(double n)
    {
        // The recurrence of the gamma function carries a small n to where the series is exact.
        var carried = 0.0;
        for (; n < 16; n++)
        {
            carried += ((n + 0.5) * Logs.OnePlus(1 / n)) - 1;
        }

        var r = 1 / (n * n);
        return carried + ((1.0 / 12 - ((1.0 / 360 - ((1.0 / 1260 - ((1.0 / 1680 - ((1.0 / 1188 - (691.0 / 360360 * r)) * r)) * r)) * r)) * r)) / n);
    }

    /// <summary>x log(x / mean) + mean - x, without cancellation when the two are close.</summary>
    public static double Deviance(double x, double mean)
    {
        var gap = x - mean;
        if (Math.Abs(gap) >= 0.1 * (x + mean))
        {
            return (x * Math.Log(x / mean)) - gap;
        }

        var v = gap / (x + mean);
        var sum = gap * v;
        var term = 2 * x * v;
        for (var j = 3; ; j += 2)
        {
            term *= v * v;
            var next = sum + (term / j);
            if (next == sum)
            {
                return sum;
            }

            sum = next;
        }
    }
}
