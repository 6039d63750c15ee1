using System.Collections.Concurrent;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>Quantiles by brute force, to hold the printed tables against: the beta integral by Simpson's rule, turned round by halving.</summary>
/// <remarks>
/// With x = sin² θ the integral of the beta density for F with a and b degrees of freedom is that of 2 sin^(a-1) θ cos^(b-1) θ,
/// smooth for whole a and b (Abramowitz and Stegun 1964, 26.5.1 and 26.6.2).
/// </remarks>
internal static class Textbook
{
    private const int Panels = 400;
    private const int Halvings = 50;
    private static readonly ConcurrentDictionary<(int Effect, int Error, double Alpha), double> Known = new();

    /// <summary>The |t| passed with probability alpha.</summary>
    public static double T(int degrees, double alpha) => Math.Sqrt(F(1, degrees, alpha));

    /// <summary>The F passed with probability alpha.</summary>
    public static double F(int effect, int error, double alpha) => Known.GetOrAdd((effect, error, alpha), cell => Searched(cell.Effect, cell.Error, cell.Alpha));

    /// <summary>The probability of an F at least this large.</summary>
    public static double UpperTail(double f, int effect, int error)
    {
        var split = Math.Atan(Math.Sqrt(effect * f / error));
        return Integral(split, Math.PI / 2, effect, error) / Integral(0, Math.PI / 2, effect, error);
    }

    private static double Searched(int effect, int error, double alpha)
    {
        var (low, high) = (0.0, 1.0);
        while (UpperTail(high, effect, error) > alpha)
        {
            high *= 2;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = UpperTail(middle, effect, error) > alpha ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Integral(double from, double to, int effect, int error)
    {
        var step = (to - from) / Panels;
        var sum = 0.0;
        for (var i = 0; i <= Panels; i++)
        {
            var angle = from + (i * step);
            var weight = i is 0 or Panels ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.Pow(Math.Sin(angle), effect - 1) * Math.Pow(Math.Cos(angle), error - 1);
        }

        return sum * step / 3;
    }
}
