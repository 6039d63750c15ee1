using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>How much lies along a length of row: a volume (liquids) or a weight (dry goods, nutrients).</summary>
/// <remarks>Finite, never negative. The default is zero weight.</remarks>
public readonly record struct RowAmount
{
    private const double MetresPerFoot = 0.3048;
    private const double FeetPerThousand = 1000;
    private const double FluidOuncesPerGallon = 128;

    private RowAmount(double perMetre, bool isVolume) => (PerMetre, IsVolume) = (perMetre, isVolume);

    /// <summary>Whether the amount is a volume; otherwise it is a weight.</summary>
    public bool IsVolume { get; }

    /// <summary>Litres per metre of row of a volume, kilograms per metre of row of a weight.</summary>
    public double PerMetre { get; }

    /// <summary>Millilitres per metre of row of a volume, grams per metre of row of a weight.</summary>
    public double ThousandthsPerMetre => PerMetre * 1000;

    /// <summary>Millilitres per foot of row of a volume, grams per foot of row of a weight.</summary>
    public double ThousandthsPerFoot => ThousandthsPerMetre * MetresPerFoot;

    /// <summary>U.S. gallons per 1,000 feet of row of a volume, pounds per 1,000 feet of row of a weight.</summary>
    public double PerThousandFeetUs =>
        PerMetre * MetresPerFoot * FeetPerThousand / (IsVolume ? ApplicationRate.LitresPerGallon : ApplicationRate.KilogramsPerPound);

    /// <summary>U.S. fluid ounces per 1,000 feet of row; null of a weight.</summary>
    public double? FluidOuncesPerThousandFeet => IsVolume ? PerThousandFeetUs * FluidOuncesPerGallon : null;

    /// <summary>What a rate per area comes to along a row.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A spacing that is zero, negative, infinite or NaN.</exception>
    public static RowAmount Of(ApplicationRate rate, Length spacing) =>
        new(rate.PerHectare / Land.SquareMetresPerHectare * Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing)), rate.IsVolume);

    /// <summary>A weight in pounds per 1,000 feet of row.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static RowAmount FromPoundsPerThousandFeet(double pounds) =>
        new(Guard.NotNegative(pounds, "pounds per 1,000 feet of row") * ApplicationRate.KilogramsPerPound / (FeetPerThousand * MetresPerFoot), isVolume: false);

    /// <summary>A volume in U.S. gallons per 1,000 feet of row.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static RowAmount FromGallonsPerThousandFeet(double gallons) =>
        new(Guard.NotNegative(gallons, "gallons per 1,000 feet of row") * ApplicationRate.LitresPerGallon / (FeetPerThousand * MetresPerFoot), isVolume: true);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerMetre:R} {(IsVolume ? "L" : "kg")}/m");
}
