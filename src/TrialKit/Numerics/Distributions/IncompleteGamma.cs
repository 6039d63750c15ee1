namespace TrialKit.Numerics.Distributions;

/// <summary>The regularised incomplete gamma integrals P(a, x) and Q(a, x), a small one computed directly.</summary>
internal static class IncompleteGamma
{
    private const int MostTerms = 100_000;
    private const double Tiny = 1e-300;

    /// <summary>P(a, x): by its series (DLMF 8.11.4) up to a + 1, else from the upper tail.</summary>
    public static double Lower(double a, double x)
    {
        if (x <= 0)
        {
            return 0;
        }

        return x <= a + 1 ? Series(a, x) : 1 - Fraction(a, x);
    }

    /// <summary>Q(a, x): by its continued fraction (DLMF 8.9.2) from a + 1 on, else from the lower tail.</summary>
    public static double Upper(double a, double x)
    {
        if (x <= 0)
        {
            return 1;
        }

        return x <= a + 1 ? 1 - Series(a, x) : Fraction(a, x);
    }

    private static double Series(double a, double x)
    {
        double term = 1, sum = 1;
        for (var n = 1; n < MostTerms; n++)
        {
            term *= x / (a + n);
            sum += term;
            if (term < 1e-17 * sum)
            {
                return Saddle.GammaPower(a, x) * sum;
            }
        }

        throw new ArithmeticException("The incomplete gamma series did not settle.");
    }

    private static double Fraction(double a, double x)
    {
        var scale = Saddle.GammaPower(a, x) * a;
        if (scale == 0)
        {
            return 0;
        }

        var b = x + 1 - a;
        var c = 1 / Tiny;
        var d = 1 / b;
        var value = d;
        for (var i = 1; i < MostTerms; i++)
        {
            var step = -i * (i - a);
            b += 2;
            d = 1 / AwayFromZero((step * d) + b);
            c = AwayFromZero(b + (step / c));
            var change = d * c;
            value *= change;
            if (Math.Abs(change - 1) < 2e-16)
            {
                return scale * value;
            }
        }

        throw new ArithmeticException("The incomplete gamma continued fraction did not settle.");
    }

    private static double AwayFromZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
