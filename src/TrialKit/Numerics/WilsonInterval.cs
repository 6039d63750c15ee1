using System.Globalization;

namespace TrialKit.Numerics;

/// <summary>The score interval of a proportion: those p for which the count lies within z standard errors, the errors taken at p.</summary>
/// <remarks>(x + z^2/2 -+ z sqrt(x (n - x)/n + z^2/4)) / (n + z^2); Wilson 1927, J. Am. Stat. Assoc. 22:209-212. It takes the n as independent.</remarks>
internal static class WilsonInterval
{
    /// <summary>The interval.</summary>
    /// <param name="successes">x, from 0 to n; need not be whole.</param>
    /// <param name="trials">n, above 0.</param>
    /// <param name="z">The upper quantile of the standard normal distribution, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or NaN.</exception>
    public static (double Low, double High) Of(double successes, double trials, double z)
    {
        if (!(trials > 0 && double.IsFinite(trials) && successes >= 0 && successes <= trials && z > 0 && double.IsFinite(z)))
        {
            throw new ArgumentOutOfRangeException(nameof(successes), string.Create(CultureInfo.InvariantCulture, $"Found {successes} of {trials} with z {z}; expected 0 or more of more than 0, not more than all, with z above 0."));
        }

        var centre = successes + (z * z / 2);
        var reach = z * Math.Sqrt((successes * (trials - successes) / trials) + (z * z / 4));
        var whole = trials + (z * z);
        return (Math.Max(0, (centre - reach) / whole), Math.Min(1, (centre + reach) / whole));
    }
}
