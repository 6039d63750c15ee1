using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;
using UnitsNet.Units;

namespace TrialKit.Heat;

/// <summary>The heat of one day from its extremes.</summary>
/// <remarks>
/// With maximum Tx, minimum Tn and thresholds L and U, all in degrees Fahrenheit: the simple average is max(0, (Tx + Tn)/2 - L);
/// the extremes-clipped rule brings Tx and Tn each within [L, U] and gives their mean less L.
/// Source: McMaster and Wilhelm 1997, Agric. For. Meteorol. 87:291-300 (the second is their method 2).
/// </remarks>
public static class DegreeDays
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Daily degree-days",
        "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300",
        "docs/methods/heat-units.md");

    /// <summary>The heat of a day.</summary>
    /// <param name="day">The day's extremes, the maximum never below the minimum.</param>
    /// <param name="method">The rule and its thresholds.</param>
    /// <exception cref="ArgumentException">A temperature is not a number, the maximum is below the minimum, or the upper threshold is not above the lower.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rule is none that is known.</exception>
    public static HeatSum Of(DailyTemperature day, HeatMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        var maximum = Guard.Finite(Fahrenheit(day.Maximum), "maximum temperature, F", nameof(day));
        var minimum = Guard.Finite(Fahrenheit(day.Minimum), "minimum temperature, F", nameof(day));
        if (maximum < minimum)
        {
            throw new ArgumentException(FormattableString.Invariant($"The maximum of {day.Date:yyyy-MM-dd} was {maximum} F and its minimum {minimum} F; a maximum not below the minimum was expected."), nameof(day));
        }

        var lower = Guard.Finite(Fahrenheit(method.Lower), "lower threshold, F", nameof(method));
        var upper = method.Upper is { } given ? Guard.Finite(Fahrenheit(given), "upper threshold, F", nameof(method)) : double.PositiveInfinity;
        if (upper <= lower)
        {
            throw new ArgumentException(FormattableString.Invariant($"The thresholds of '{method.Name}' were {lower} and {upper} F; an upper one above the lower was expected."), nameof(method));
        }

        return HeatSum.FromFahrenheitDays(method.Rule switch
        {
            HeatRule.SimpleAverage => Math.Max(0, ((maximum + minimum) / 2) - lower),
            HeatRule.ExtremesClipped => ((Math.Clamp(maximum, lower, upper) + Math.Clamp(minimum, lower, upper)) / 2) - lower,
            _ => throw new ArgumentOutOfRangeException(nameof(method), method.Rule, "The rule of the method is unknown; the simple average or the extremes-clipped rule was expected."),
        });
    }

    // A conversion by way of kelvins would turn a day of exactly 30 C into one a rounding error off the threshold of 86 F.
    private static double Fahrenheit(Temperature temperature) =>
        temperature.Unit == TemperatureUnit.DegreeCelsius ? (temperature.Value * 9 / 5) + 32 : temperature.DegreesFahrenheit;
}
