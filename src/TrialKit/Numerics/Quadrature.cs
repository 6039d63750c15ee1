namespace TrialKit.Numerics;

/// <summary>
/// Integrals over the line of smooth, nonnegative integrands that die away on both sides, by the trapezoidal rule. For
/// analytic integrands its error falls geometrically in the number of points, so each halving of
/// the step shrinks it by a growing factor (Trefethen and Weideman 2014, SIAM Review 56:385), and the halvings measure it.
/// </summary>
internal static class Quadrature
{
    private const double Rounding = 4e-16;
    // A term this far below the tolerance ends the sum; what it leaves out is a few such terms.
    private const double NegligibleShare = 1e-4;
    private const int MostHalvings = 12;

    /// <summary>The integral from <paramref name="low"/> to <paramref name="high"/>, where the integrand is negligible at both.</summary>
    /// <param name="integrand">Nonnegative, with one peak, or two on either side of the start.</param>
    /// <param name="start">Where the sum begins, between low and high; near the bulk for speed.</param>
    /// <param name="step">First step, about twice the standard deviation of the bulk.</param>
    /// <param name="low">Finite; nothing below it counts.</param>
    /// <param name="high">Finite; nothing above it counts.</param>
    /// <param name="tolerance">Relative error asked.</param>
    /// <exception cref="ArithmeticException">The tolerance was not reached.</exception>
    public static QuadratureResult OverLine(
        Func<double, double> integrand, double start, double step, double low, double high, double tolerance)
    {
        Checks.Positive(step);
        Checks.OpenProbability(tolerance);
        var atStart = integrand(start);
        var (above, last) = March(integrand, start, step, high, atStart, atStart, tolerance);
        var (below, first) = March(integrand, start, -step, low, atStart, atStart + above, tolerance);
        var sum = atStart + above + below;
        var value = sum * step;
        var origin = start + (first * step);
        var intervals = last - first;
        var lastChange = double.PositiveInfinity;
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            for (var i = 0; i < intervals; i++)
            {
                sum += integrand(origin + ((i + 0.5) * step));
            }

            step /= 2;
            intervals *= 2;
            var coarser = value;
            value = sum * step;
            if (value == 0)
            {
                return new QuadratureResult(0, 0, intervals + 1);
            }

            // The next change is smaller than this one by at least the factor by which this one is smaller than the last. One
            // change alone is not trusted: a bulk that settles early can hide an edge that has not.
            var change = Math.Abs(value - coarser) / value;
            var left = change * Math.Min(1, change / lastChange);
            if (halving > 0 && left <= tolerance)
            {
                return new QuadratureResult(value, value * (left + Rounding), intervals + 1);
            }

            lastChange = Math.Max(change, Rounding);
        }

        throw new ArithmeticException("An integral did not settle to the accuracy asked.");
    }

    // The sum of terms outwards from the start, until they fall and no longer count beside what there is, and how many steps
    // (negative when downwards) that took. Terms that still rise are followed however small: the peak may lie ahead.
    private static (double Sum, int Steps) March(
        Func<double, double> integrand, double start, double step, double end, double atStart, double already, double tolerance)
    {
        var sum = 0.0;
        var before = atStart;
        for (var i = 1; ; i++)
        {
            var point = start + (i * step);
            if (step > 0 ? point > end : point < end)
            {
                return (sum, step > 0 ? i - 1 : 1 - i);
            }

            var term = integrand(point);
            sum += term;
            if (term < before && term <= NegligibleShare * tolerance * (already + sum) && already + sum > 0)
            {
                return (sum, step > 0 ? i : -i);
            }

            before = term;
        }
    }
}
