using System.Globalization;

namespace TrialKit.Numerics.HeatCurves;

/// <summary>Heat units of one day from its extremes, in degree-days of the unit the temperatures are in.</summary>
/// <remarks>
/// L is the lower and U the upper threshold; an infinite U is none. Doubles throughout, nothing rounded.
/// Curves: Allen 1976, Environ. Entomol. 5:388-396, for the double forms; Roltsch et al. 1999, Int. J. Biometeorol. 42:169-176, for the cut-offs.
/// </remarks>
internal static class DayHeat
{
    /// <summary>max(0, (Tx + Tn)/2 - L).</summary>
    public static double SimpleAverage(double minimum, double maximum, double lower)
    {
        Check(minimum, maximum, lower, double.PositiveInfinity);
        return Math.Max(0.0, (0.5 * (minimum + maximum)) - lower);
    }

    /// <summary>The mean clipped to [L, U], less L: method 1 of McMaster and Wilhelm 1997, Agric. For. Meteorol. 87:291-300.</summary>
    public static double MeanClipped(double minimum, double maximum, double lower, double upper)
    {
        Check(minimum, maximum, lower, upper);
        return Math.Clamp(0.5 * (minimum + maximum), lower, upper) - lower;
    }

    /// <summary>The mean of the extremes, each clipped to [L, U], less L: method 2 of McMaster and Wilhelm 1997; with 86 and 50 F the corn heat units of Gilmore and Rogers 1958.</summary>
    public static double ExtremesClipped(double minimum, double maximum, double lower, double upper)
    {
        Check(minimum, maximum, lower, upper);
        return (0.5 * (Math.Clamp(minimum, lower, upper) + Math.Clamp(maximum, lower, upper))) - lower;
    }

    /// <summary>A single curve from the day's minimum to its maximum and back to the same minimum.</summary>
    /// <returns>Degree-days; never below 0 but for the intermediate cut-off, which is floored at 0 only when asked.</returns>
    public static double Single(DayShape shape, CutOff cutOff, double minimum, double maximum, double lower, double upper, bool floored)
    {
        Check(minimum, maximum, lower, upper);
        return Combine(cutOff, lower, upper, floored, level => DayCurve.Excess(shape, minimum, maximum, level), () => DayCurve.ShareAbove(shape, minimum, maximum, upper));
    }

    /// <summary>Two half days: from the minimum up to the maximum, and down to the next day's minimum.</summary>
    /// <returns>The mean of the two halves' degree-days.</returns>
    public static double Double(DayShape shape, CutOff cutOff, double minimum, double maximum, double nextMinimum, double lower, double upper, bool floored)
    {
        // A morning warmer than the afternoon before it has no falling half; its two ends change places.
        var (low, high) = (Math.Min(nextMinimum, maximum), Math.Max(nextMinimum, maximum));
        return 0.5 * (Single(shape, cutOff, minimum, maximum, lower, upper, floored) + Single(shape, cutOff, low, high, lower, upper, floored));
    }

    /// <summary>The mean of max(0, min(T, U) - L) over equally spaced readings of one day.</summary>
    /// <param name="readings">Temperatures, at least one.</param>
    /// <param name="lower">L.</param>
    /// <param name="upper">U, at or above L.</param>
    public static double Hourly(ReadOnlySpan<double> readings, double lower, double upper)
    {
        if (readings.Length == 0)
        {
            throw new ArgumentException("Found no reading; expected at least one.", nameof(readings));
        }

        var sum = 0.0;
        foreach (var t in readings)
        {
            Check(t, t, lower, upper);
            sum += Math.Max(0.0, Math.Min(t, upper) - lower);
        }

        return sum / readings.Length;
    }

    /// <summary>Crop heat units from extremes in degrees C: the mean of 3.33 (Tx - 10) - 0.084 (Tx - 10)^2 and 1.8 (Tn - 4.4) (Brown and Bootsma 1993; Agriculture Canada).</summary>
    /// <param name="minimum">Tn, degrees C.</param>
    /// <param name="maximum">Tx, degrees C.</param>
    /// <param name="floored">Sets each of the two to 0 where it is negative, as Ontario does.</param>
    public static double CropHeatUnits(double minimum, double maximum, bool floored)
    {
        Check(minimum, maximum, 0.0, double.PositiveInfinity);
        var above = maximum - 10.0;
        var day = (3.33 * above) - (0.084 * above * above);
        var night = 1.8 * (minimum - 4.4);
        return floored ? 0.5 * (Math.Max(0.0, day) + Math.Max(0.0, night)) : 0.5 * (day + night);
    }

    /// <summary>Heat gathered on a curve by a fraction of the day.</summary>
    /// <remarks>
    /// The day is taken to begin at its minimum, to reach its maximum half way, and to end at <paramref name="endMinimum"/>: its own minimum for the single curve, the next day's for the double.
    /// At the fraction 1 this equals the day's degree-days. Methods without a curve gather evenly: multiply their degree-days by the fraction.
    /// </remarks>
    /// <param name="shape">The curve.</param>
    /// <param name="cutOff">The cut-off.</param>
    /// <param name="minimum">The minimum the day begins at.</param>
    /// <param name="maximum">The maximum.</param>
    /// <param name="endMinimum">The temperature the day ends at.</param>
    /// <param name="lower">L.</param>
    /// <param name="upper">U, at or above L, infinite for none.</param>
    /// <param name="fraction">Fraction of the day gone, 0 to 1.</param>
    /// <param name="floored">Whether the intermediate cut-off is kept from falling within the day.</param>
    public static double UpTo(DayShape shape, CutOff cutOff, double minimum, double maximum, double endMinimum, double lower, double upper, double fraction, bool floored = false)
    {
        Check(minimum, maximum, lower, upper);
        if (!(fraction is >= 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "Found a fraction of the day outside [0, 1].");
        }

        var (low, high) = (Math.Min(endMinimum, maximum), Math.Max(endMinimum, maximum));
        Check(low, high, lower, upper);
        var rise = Math.Min(1.0, 2.0 * fraction);
        var heat = 0.5 * Combine(cutOff, lower, upper, floored, level => DayCurve.ExcessUpTo(shape, minimum, maximum, level, rise), () => DayCurve.TimeAboveUpTo(shape, minimum, maximum, upper, rise));
        var fall = Math.Max(0.0, (2.0 * fraction) - 1.0);
        if (fall == 0.0)
        {
            return heat;
        }

        // A fall is a rise run backwards: what is gathered by a share of it is the whole less what the mirrored rise has not reached. A morning warmer than the maximum is a rise.
        var backwards = endMinimum <= maximum;
        double Gathered(Func<double, double> by) => backwards ? by(1.0) - by(1.0 - fall) : by(fall);
        return heat + (0.5 * Combine(
            cutOff,
            lower,
            upper,
            floored,
            level => Gathered(x => DayCurve.ExcessUpTo(shape, low, high, level, x)),
            () => Gathered(x => DayCurve.TimeAboveUpTo(shape, low, high, upper, x))));
    }

    // none G(L); horizontal G(L) - G(U); intermediate G(L) - 2 G(U), with G(2U - L) to floor it; vertical G(L) - G(U) - (U - L) F(U).
    private static double Combine(CutOff cutOff, double lower, double upper, bool floored, Func<double, double> excess, Func<double> shareAbove)
    {
        var heat = excess(lower);
        if (cutOff == CutOff.None || double.IsPositiveInfinity(upper))
        {
            return heat;
        }

        // Rounding may leave a day that is all cut off a hair below zero.
        var over = excess(upper);
        return cutOff switch
        {
            CutOff.Horizontal => Math.Max(0.0, heat - over),
            CutOff.Intermediate => heat - (2.0 * over) + (floored ? excess((2.0 * upper) - lower) : 0.0),
            CutOff.Vertical => Math.Max(0.0, heat - over - ((upper - lower) * shareAbove())),
            _ => throw new ArgumentOutOfRangeException(nameof(cutOff), cutOff, "Found an unknown cut-off; expected none, horizontal, intermediate or vertical."),
        };
    }

    private static void Check(double minimum, double maximum, double lower, double upper)
    {
        if (!double.IsFinite(minimum) || !double.IsFinite(maximum) || maximum < minimum)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the minimum {minimum} and the maximum {maximum}; expected finite temperatures, the maximum not below the minimum."), nameof(maximum));
        }

        if (!double.IsFinite(lower) || !(upper >= lower))
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the thresholds {lower} and {upper}; expected a finite lower one and an upper one not below it (infinite for none)."), nameof(upper));
        }
    }
}
