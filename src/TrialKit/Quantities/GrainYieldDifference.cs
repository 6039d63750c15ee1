using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>The difference of two grain yields; negative when the first is smaller.</summary>
/// <remarks>The default is zero.</remarks>
public readonly record struct GrainYieldDifference
{
    private GrainYieldDifference(double kilogramsPerHectare) => KilogramsPerHectare = kilogramsPerHectare;

    /// <summary>Kilograms per hectare more (or, negative, less).</summary>
    public double KilogramsPerHectare { get; }

    /// <summary>Tonnes per hectare more (or, negative, less).</summary>
    public double TonnesPerHectare => KilogramsPerHectare / 1000;

    /// <summary>A difference in kilograms per hectare.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static GrainYieldDifference FromKilogramsPerHectare(double kilograms) =>
        new(Guard.Finite(kilograms, "difference in kilograms per hectare"));

    /// <summary>The difference in bushels per acre.</summary>
    /// <param name="bushel">The crop's standard weight of a bushel, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public double BushelsPerAcre(Mass bushel) =>
        KilogramsPerHectare * Land.HectaresPerAcre / Guard.Positive(bushel.Kilograms, "weight of a bushel, kg", nameof(bushel));

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{KilogramsPerHectare:R} kg/ha");
}
