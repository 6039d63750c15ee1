using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>The difference of two plant densities; negative when the first is thinner.</summary>
/// <remarks>The default is zero.</remarks>
public readonly record struct PlantDensityDifference
{
    private PlantDensityDifference(double perHectare) => PerHectare = perHectare;

    /// <summary>Plants per hectare more (or, negative, fewer).</summary>
    public double PerHectare { get; }

    /// <summary>Plants per acre more (or, negative, fewer).</summary>
    public double PerAcre => PerHectare * Land.HectaresPerAcre;

    /// <summary>A difference in plants per hectare.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static PlantDensityDifference FromPerHectare(double plants) => new(Guard.Finite(plants, "difference in plants per hectare"));

    /// <summary>A difference in plants per acre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static PlantDensityDifference FromPerAcre(double plants) => new(Guard.Finite(plants, "difference in plants per acre") / Land.HectaresPerAcre);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerHectare:R} plants/ha");
}
