using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>The difference of two heat sums of the same method; negative when the first is smaller.</summary>
/// <remarks>The default is zero.</remarks>
public readonly record struct HeatSumDifference
{
    private HeatSumDifference(double fahrenheitDays) => FahrenheitDays = fahrenheitDays;

    /// <summary>Degree-days in Fahrenheit.</summary>
    public double FahrenheitDays { get; }

    /// <summary>Degree-days in Celsius.</summary>
    public double CelsiusDays => FahrenheitDays / HeatSum.FahrenheitPerCelsius;

    /// <summary>A difference in Fahrenheit degree-days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static HeatSumDifference FromFahrenheitDays(double days) => new(Guard.Finite(days, "difference in Fahrenheit degree-days"));

    /// <summary>A difference in Celsius degree-days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static HeatSumDifference FromCelsiusDays(double days) =>
        new(Guard.Finite(days, "difference in Celsius degree-days") * HeatSum.FahrenheitPerCelsius);

    /// <summary>The difference in the degree-days of a unit system.</summary>
    public double In(UnitSystem units) => units == UnitSystem.Us ? FahrenheitDays : CelsiusDays;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{FahrenheitDays:R} F-days");
}
