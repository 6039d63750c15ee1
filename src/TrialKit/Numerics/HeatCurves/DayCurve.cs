namespace TrialKit.Numerics.HeatCurves;

/// <summary>Mean excess and share of a day above a level, for a temperature that swings once between a minimum and a maximum.</summary>
/// <remarks>
/// M = (Tx + Tn)/2, A = (Tx - Tn)/2, th = asin((k - M)/A). Sine: G(k) = [(M - k)(pi/2 - th) + A cos th]/pi, F(k) = (pi/2 - th)/pi.
/// Triangle: G(k) = (Tx - k)^2 / [2 (Tx - Tn)], F(k) = (Tx - k)/(Tx - Tn). A level at or above Tx gives 0 and 0, one at or below Tn gives M - k and 1.
/// </remarks>
internal static class DayCurve
{
    /// <summary>G(k): the mean of max(0, T - k) over the swing.</summary>
    public static double Excess(DayShape shape, double minimum, double maximum, double level)
    {
        // The upper test comes first, so that a day without a swing never divides by zero.
        var mean = 0.5 * (minimum + maximum);
        if (level >= maximum)
        {
            return 0.0;
        }

        if (level <= minimum)
        {
            return mean - level;
        }

        if (shape == DayShape.Triangle)
        {
            return (maximum - level) * (maximum - level) / (2.0 * (maximum - minimum));
        }

        var half = HalfAngleAbove(minimum, maximum, level);
        return (((mean - level) * half) + Math.Sqrt((maximum - level) * (level - minimum))) / Math.PI;
    }

    /// <summary>F(k): the share of the swing spent above the level.</summary>
    public static double ShareAbove(DayShape shape, double minimum, double maximum, double level)
    {
        if (level >= maximum)
        {
            return 0.0;
        }

        if (level <= minimum)
        {
            return 1.0;
        }

        return shape == DayShape.Triangle
            ? (maximum - level) / (maximum - minimum)
            : HalfAngleAbove(minimum, maximum, level) / Math.PI;
    }

    /// <summary>The mean over the whole rise of max(0, T - k) up to a share x of it: at x = 1 this is G(k).</summary>
    public static double ExcessUpTo(DayShape shape, double minimum, double maximum, double level, double x)
    {
        var begin = Crossing(shape, minimum, maximum, level);
        if (x <= begin)
        {
            return 0.0;
        }

        if (shape == DayShape.Triangle)
        {
            return (x - begin) * (minimum + ((maximum - minimum) * 0.5 * (begin + x)) - level);
        }

        // T = M - A cos(pi x), whose integral is M x - (A / pi) sin(pi x).
        var mean = 0.5 * (minimum + maximum);
        var amplitude = 0.5 * (maximum - minimum);
        return ((mean - level) * (x - begin)) - (amplitude / Math.PI * (Math.Sin(Math.PI * x) - Math.Sin(Math.PI * begin)));
    }

    /// <summary>The share of the whole rise spent above the level up to a share x of it.</summary>
    public static double TimeAboveUpTo(DayShape shape, double minimum, double maximum, double level, double x) =>
        Math.Max(0.0, x - Crossing(shape, minimum, maximum, level));

    // pi/2 - th, and A cos th = sqrt((Tx - k)(k - Tn)): the half-angle form keeps its digits where the level touches an extreme.
    private static double HalfAngleAbove(double minimum, double maximum, double level) =>
        2.0 * Math.Atan2(Math.Sqrt(maximum - level), Math.Sqrt(level - minimum));

    // The share of the rise at which the level is passed: 0 if it never was below, 1 if it never is above.
    private static double Crossing(DayShape shape, double minimum, double maximum, double level) =>
        1.0 - ShareAbove(shape, minimum, maximum, level);
}
