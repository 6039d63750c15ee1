using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>Grain per area of land at a stated standard moisture.</summary>
/// <remarks>Finite, never negative; the default is zero. A difference may be negative and is a <see cref="GrainYieldDifference"/>.</remarks>
public readonly record struct GrainYield
{
    private GrainYield(double kilogramsPerHectare) => KilogramsPerHectare = kilogramsPerHectare;

    /// <summary>Kilograms per hectare.</summary>
    public double KilogramsPerHectare { get; }

    /// <summary>Tonnes per hectare.</summary>
    public double TonnesPerHectare => KilogramsPerHectare / 1000;

    /// <summary>A yield in kilograms per hectare.</summary>
    /// <param name="kilograms">0 or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static GrainYield FromKilogramsPerHectare(double kilograms) => new(Guard.NotNegative(kilograms, "kilograms per hectare"));

    /// <summary>The yield of a weighed strip, brought to a standard moisture (wet basis): dry matter is kept, water is not.</summary>
    /// <param name="weight">Weight of grain as harvested, 0 or more.</param>
    /// <param name="area">Area harvested, above zero.</param>
    /// <param name="moisture">Moisture as harvested, wet basis, from 0 to 60 %.</param>
    /// <param name="standardMoisture">The standard's moisture, wet basis, from 0 to 60 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these limits, infinite or NaN.</exception>
    public static GrainYield FromStrip(Mass weight, Area area, Ratio moisture, Ratio standardMoisture)
    {
        var kilograms = Guard.NotNegative(weight.Kilograms, "weight of grain, kg", nameof(weight));
        var hectares = Guard.Positive(area.SquareMeters, "area harvested, m2", nameof(area)) / Land.SquareMetresPerHectare;
        var dry = 100 - Guard.Between(moisture.Percent, 0, 60, "moisture, %", nameof(moisture));
        var standardDry = 100 - Guard.Between(standardMoisture.Percent, 0, 60, "standard moisture, %", nameof(standardMoisture));
        return new(kilograms / hectares * dry / standardDry);
    }

    /// <summary>The yield in bushels per acre.</summary>
    /// <param name="bushel">The crop's standard weight of a bushel, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public double BushelsPerAcre(Mass bushel) =>
        KilogramsPerHectare * Land.HectaresPerAcre / Guard.Positive(bushel.Kilograms, "weight of a bushel, kg", nameof(bushel));

    /// <summary>The difference of two yields.</summary>
    public static GrainYieldDifference operator -(GrainYield left, GrainYield right) =>
        GrainYieldDifference.FromKilogramsPerHectare(left.KilogramsPerHectare - right.KilogramsPerHectare);

    /// <summary>The difference of two yields.</summary>
    public static GrainYieldDifference Subtract(GrainYield left, GrainYield right) => left - right;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{KilogramsPerHectare:R} kg/ha");
}
