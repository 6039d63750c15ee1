using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>How much of a product is put on an area: a volume (liquids) or a weight (dry goods).</summary>
/// <remarks>Finite, never negative. The default is zero weight.</remarks>
public readonly record struct ApplicationRate
{
    /// <summary>Litres in a U.S. gallon, exact (NIST Handbook 44, Appendix C).</summary>
    internal const double LitresPerGallon = 3.785411784;

    /// <summary>Kilograms in a pound, exact (NIST Handbook 44, Appendix C).</summary>
    internal const double KilogramsPerPound = 0.45359237;

    private ApplicationRate(double perHectare, bool isVolume) => (PerHectare, IsVolume) = (perHectare, isVolume);

    /// <summary>Whether the rate is a volume; otherwise it is a weight.</summary>
    public bool IsVolume { get; }

    /// <summary>Litres per hectare of a volume, kilograms per hectare of a weight.</summary>
    public double PerHectare { get; }

    /// <summary>U.S. gallons per acre of a volume, pounds per acre of a weight.</summary>
    public double PerAcreUs => PerHectare * Land.HectaresPerAcre / (IsVolume ? LitresPerGallon : KilogramsPerPound);

    /// <summary>A volume in litres per hectare.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static ApplicationRate FromLitresPerHectare(double litres) => new(Guard.NotNegative(litres, "litres per hectare"), isVolume: true);

    /// <summary>A volume in U.S. gallons per acre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static ApplicationRate FromGallonsPerAcre(double gallons) =>
        new(Guard.NotNegative(gallons, "gallons per acre") * LitresPerGallon / Land.HectaresPerAcre, isVolume: true);

    /// <summary>A weight in kilograms per hectare.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static ApplicationRate FromKilogramsPerHectare(double kilograms) => new(Guard.NotNegative(kilograms, "kilograms per hectare"), isVolume: false);

    /// <summary>A weight in pounds per acre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static ApplicationRate FromPoundsPerAcre(double pounds) =>
        new(Guard.NotNegative(pounds, "pounds per acre") * KilogramsPerPound / Land.HectaresPerAcre, isVolume: false);

    /// <summary>A part of the rate.</summary>
    /// <param name="share">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public ApplicationRate Times(double share) => new(PerHectare * Guard.NotNegative(share, "a share of a rate"), IsVolume);

    /// <summary>The rate as a weight; null when it is a volume and the density is not known.</summary>
    /// <param name="density">Weight per volume, above zero; not needed for a weight.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density that is zero, negative, infinite or NaN.</exception>
    public ApplicationRate? Weighed(Density? density) =>
        !IsVolume ? this
        : density is { } known ? FromKilogramsPerHectare(PerHectare * Guard.Positive(known.KilogramsPerLiter, "density, kg/L", nameof(density)))
        : null;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerHectare:R} {(IsVolume ? "L" : "kg")}/ha");
}
