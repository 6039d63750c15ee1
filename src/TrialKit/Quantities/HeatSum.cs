using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>Heat accumulated above a threshold: degree-days.</summary>
/// <remarks>
/// Finite, never negative; the default is zero. One Celsius degree-day is 1.8 Fahrenheit degree-days exactly.
/// A sum means nothing without the name of its method, which results carry beside it.
/// </remarks>
public readonly record struct HeatSum
{
    /// <summary>Fahrenheit degree-days in one Celsius degree-day.</summary>
    public const double FahrenheitPerCelsius = 1.8;

    private HeatSum(double fahrenheitDays) => FahrenheitDays = fahrenheitDays;

    /// <summary>Degree-days in Fahrenheit (F-days).</summary>
    public double FahrenheitDays { get; }

    /// <summary>Degree-days in Celsius (C-days).</summary>
    public double CelsiusDays => FahrenheitDays / FahrenheitPerCelsius;

    /// <summary>A sum in Fahrenheit degree-days.</summary>
    /// <param name="days">0 or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static HeatSum FromFahrenheitDays(double days) => new(Guard.NotNegative(days, "Fahrenheit degree-days"));

    /// <summary>A sum in Celsius degree-days.</summary>
    /// <param name="days">0 or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static HeatSum FromCelsiusDays(double days) => new(Guard.NotNegative(days, "Celsius degree-days") * FahrenheitPerCelsius);

    /// <summary>The sum in the degree-days of a unit system.</summary>
    public double In(UnitSystem units) => units == UnitSystem.Us ? FahrenheitDays : CelsiusDays;

    /// <summary>The sum of two sums of the same method.</summary>
    public static HeatSum operator +(HeatSum left, HeatSum right) => new(left.FahrenheitDays + right.FahrenheitDays);

    /// <summary>The sum of two sums of the same method.</summary>
    public static HeatSum Add(HeatSum left, HeatSum right) => left + right;

    /// <summary>How much more heat the left is; negative when less.</summary>
    public static HeatSumDifference operator -(HeatSum left, HeatSum right) =>
        HeatSumDifference.FromFahrenheitDays(left.FahrenheitDays - right.FahrenheitDays);

    /// <summary>How much more heat the left is; negative when less.</summary>
    public static HeatSumDifference Subtract(HeatSum left, HeatSum right) => left - right;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{FahrenheitDays:R} F-days");
}
