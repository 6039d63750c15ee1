namespace TrialKit.Numerics.Distributions;

/// <summary>
/// Means over the distribution of S = sqrt(chi-square / df), the estimated over the true standard deviation: what turns a
/// probability for a known spread into one for an estimated spread.
/// </summary>
/// <remarks>
/// Integrated over u = log s, where the density sqrt(2h / pi) exp(-delta(h) - h (e^2u - 1 - 2u)), h = df / 2 and delta the
/// remainder of Stirling's formula, is analytic and bell-shaped for every df.
/// </remarks>
internal static class ChiScale
{
    // Below e^-740 a number is nothing in double precision.
    private const double Vanishing = 740;

    /// <summary>The mean of <paramref name="value"/>(S); for infinite df, its value at 1.</summary>
    /// <param name="value">Nonnegative and smooth in s above 0.</param>
    /// <param name="df">Degrees of freedom, above 0.</param>
    /// <param name="tolerance">Relative error asked.</param>
    public static QuadratureResult Mean(Func<double, double> value, double df, double tolerance)
    {
        Checks.DegreesOfFreedom(df);
        if (double.IsPositiveInfinity(df))
        {
            return new QuadratureResult(value(1), 0, 1);
        }

        var half = df / 2;
        var height = Math.Sqrt(df / Math.PI) * Math.Exp(-Saddle.StirlingError(half));
        return Quadrature.OverLine(
            u =>
            {
                var s = Math.Exp(u);
                var density = height * Math.Exp(-half * Saddle.Deviance(1, s * s));
                return density > 0 ? density * value(s) : 0;
            },
            start: 0,
            step: Math.Sqrt(2 / df),
            low: -1 - (Vanishing / df),
            high: 0.5 * Math.Log(2 + (4 * Vanishing / df)),
            tolerance);
    }
}
