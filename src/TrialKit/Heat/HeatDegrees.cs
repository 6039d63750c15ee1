using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;
using UnitsNet.Units;

namespace TrialKit.Heat;

/// <summary>Temperatures as plain numbers, without the detour by kelvins that would turn a day of exactly 30 C into one a rounding error off 86 F.</summary>
internal static class HeatDegrees
{
    /// <summary>Degrees Fahrenheit.</summary>
    public static double Fahrenheit(Temperature temperature) =>
        temperature.Unit == TemperatureUnit.DegreeCelsius ? (temperature.Value * 9 / 5) + 32 : temperature.DegreesFahrenheit;

    /// <summary>Degrees Celsius.</summary>
    public static double Celsius(Temperature temperature) =>
        temperature.Unit == TemperatureUnit.DegreeFahrenheit ? (temperature.Value - 32) * 5 / 9 : temperature.DegreesCelsius;

    /// <summary>The thresholds of a method in degrees Fahrenheit, the upper infinite when there is none.</summary>
    /// <exception cref="ArgumentException">One is not a number, or the upper is not above the lower.</exception>
    public static (double Lower, double Upper) Thresholds(HeatMethod method)
    {
        var lower = Guard.Finite(Fahrenheit(method.Lower), "lower threshold, F", nameof(method));
        var upper = method.Upper is { } given ? Guard.Finite(Fahrenheit(given), "upper threshold, F", nameof(method)) : double.PositiveInfinity;
        return upper > lower
            ? (lower, upper)
            : throw new ArgumentException(FormattableString.Invariant($"The thresholds of '{method.Name}' were {lower} and {upper} F; an upper one above the lower was expected."), nameof(method));
    }

    /// <summary>The extremes of a day in degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentException">One is not a number, or the maximum is below the minimum.</exception>
    public static (double Minimum, double Maximum) Extremes(DailyTemperature day)
    {
        var maximum = Guard.Finite(Fahrenheit(day.Maximum), "maximum temperature, F", nameof(day));
        var minimum = Guard.Finite(Fahrenheit(day.Minimum), "minimum temperature, F", nameof(day));
        return maximum >= minimum
            ? (minimum, maximum)
            : throw new ArgumentException(FormattableString.Invariant($"The maximum of {day.Date:yyyy-MM-dd} was {maximum} F and its minimum {minimum} F; a maximum not below the minimum was expected."), nameof(day));
    }
}
