namespace TrialKit.Numerics.Distributions;

/// <summary>
/// Finds the positive x at which a tail area reaches a wanted value. Both are followed on a log scale, where tails are
/// nearly straight, so an area of 1e-300 is no harder than one of 0.05.
/// </summary>
internal static class QuantileSearch
{
    private const int MostSteps = 200;
    private const double FullPrecision = 2e-16;
    private const double FirstStep = 0.1;
    private const double LogOfLargest = 709.78;
    private const double LogOfSmallest = -744.4;

    /// <summary>The x above 0 with area(x) = target, for an area that falls as x grows.</summary>
    /// <param name="area">The tail area, positive and falling in x.</param>
    /// <param name="target">The wanted area, above 0.</param>
    /// <param name="guess">Where to begin, above 0; a poor one costs time only.</param>
    /// <param name="precision">Relative; wider than the default where the area itself is less exact.</param>
    public static double Falling(Func<double, double> area, double target, double guess, double precision = FullPrecision) =>
        Find(u => Math.Log(target) - LogOrFloor(area(Math.Exp(u))), guess, precision);

    /// <summary>The x above 0 with area(x) = target, for an area that grows with x.</summary>
    /// <param name="area">The area, positive and growing in x.</param>
    /// <param name="target">The wanted area, above 0.</param>
    /// <param name="guess">Where to begin, above 0.</param>
    public static double Rising(Func<double, double> area, double target, double guess) =>
        Find(u => LogOrFloor(area(Math.Exp(u))) - Math.Log(target), guess, FullPrecision);

    // An area that underflows to zero still orders rightly when its log is set below that of the smallest number.
    private static double LogOrFloor(double value) => value > 0 ? Math.Log(value) : -800;

    private static double Find(Func<double, double> rising, double guess, double precision)
    {
        var inner = Math.Log(guess);
        var valueInner = rising(inner);
        if (valueInner == 0)
        {
            return guess;
        }

        var step = valueInner < 0 ? FirstStep : -FirstStep;
        while (true)
        {
            var outer = Math.Clamp(inner + step, LogOfSmallest, LogOfLargest);
            var valueOuter = rising(outer);
            if (valueOuter == 0 || (valueOuter > 0) != (valueInner > 0))
            {
                return Math.Exp(Chandrupatla(rising, inner, valueInner, outer, valueOuter, precision));
            }

            if (outer is LogOfSmallest or LogOfLargest)
            {
                return outer == LogOfLargest ? double.PositiveInfinity : 0;
            }

            inner = outer;
            valueInner = valueOuter;
            step *= 2;
        }
    }

    /// <summary>Root within a bracket by Chandrupatla (1997), inverse quadratic steps where safe and bisection elsewhere.</summary>
    private static double Chandrupatla(Func<double, double> f, double b, double fb, double a, double fa, double precision)
    {
        double c = a, fc = fa, t = 0.5;
        for (var i = 0; i < MostSteps; i++)
        {
            var x = a + (t * (b - a));
            var fx = f(x);
            if ((fx > 0) == (fa > 0))
            {
                (c, fc) = (a, fa);
            }
            else
            {
                (c, b, fc, fb) = (b, a, fb, fa);
            }

            (a, fa) = (x, fx);
            var (best, fbest) = Math.Abs(fa) < Math.Abs(fb) ? (a, fa) : (b, fb);
            var limit = precision * Math.Max(1, Math.Abs(best)) / Math.Abs(b - a);
            if (limit > 0.5 || fbest == 0)
            {
                return best;
            }

            var xi = (a - b) / (c - b);
            var phi = (fa - fb) / (fc - fb);
            t = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
                ? (fa / (fb - fa) * (fc / (fb - fc))) + ((c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)))
                : 0.5;
            t = Math.Clamp(t, limit, 1 - limit);
        }

        return a;
    }
}
