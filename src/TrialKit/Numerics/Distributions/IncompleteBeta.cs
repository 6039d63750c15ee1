namespace TrialKit.Numerics.Distributions;

/// <summary>The regularised incomplete beta integral, each tail computed directly so that a small one keeps its digits.</summary>
internal static class IncompleteBeta
{
    private const int MostTerms = 100_000;

    /// <summary>
    /// I_x(a, b) by the continued fraction of DiDonato and Morris (1992, ACM Transactions on Mathematical Software 18:360,
    /// algorithm 708).
    /// </summary>
    /// <param name="a">First shape, above 0.</param>
    /// <param name="b">Second shape, above 0.</param>
    /// <param name="x">From 0 to 1.</param>
    /// <param name="y">1 - x, given because the caller often knows it with more digits.</param>
    public static double Lower(double a, double b, double x, double y)
    {
        if (x <= 0)
        {
            return 0;
        }

        if (y <= 0)
        {
            return 1;
        }

        return x <= (a + 1) / (a + b + 2)
            ? Saddle.BetaPower(a, b, x, y) * Fraction(a, b, x, y)
            : 1 - (Saddle.BetaPower(b, a, y, x) * Fraction(b, a, y, x));
    }

    // I_x(a, b) over the beta power, from the fraction's even part. The first denominator is 1 + (a + b) y - b in place of a
    // difference of numbers near one, which would cost five digits at a = 1e5.
    private static double Fraction(double a, double b, double x, double y)
    {
        var distance = a > b ? ((a + b) * y) - b : a - ((a + b) * x);
        var start = 1 + distance;
        var firstStep = 1 + (1 / a);
        double numeratorBefore = 0, denominatorBefore = 1, numerator = 1, denominator = start / firstStep;
        var value = firstStep / start;
        for (var n = 1; n < MostTerms; n++)
        {
            var share = n / a;
            var before = (n - 1) / a;
            var reach = a + (2 * n) - 1;
            var w = n * (b - n) * x;
            var scale = a / reach;
            var alpha = (1 + before) * (1 + before + (b / a)) * scale * scale * w * x;
            var beta = n + (w / reach) + ((1 + share) / (firstStep + (2 * share)) * (start + (n * (1 + y))));

            (numeratorBefore, numerator) = (numerator, (alpha * numeratorBefore) + (beta * numerator));
            (denominatorBefore, denominator) = (denominator, (alpha * denominatorBefore) + (beta * denominator));
            var last = value;
            value = numerator / denominator;
            if (Math.Abs(value - last) <= 2e-16 * value)
            {
                return value;
            }

            numeratorBefore /= denominator;
            denominatorBefore /= denominator;
            numerator = value;
            denominator = 1;
        }

        throw new ArithmeticException("The incomplete beta continued fraction did not settle.");
    }
}
