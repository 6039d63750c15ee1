using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>Calibrating an orifice with water for a heavier liquid.</summary>
/// <remarks>
/// At one pressure the flow goes as one over the square root of density. Positive-displacement pumps deliver their volume whatever the density
/// and need no correction (value from memory).
/// </remarks>
public static class DensityCorrection
{
    /// <summary>Water's density, 8.34 lb/gal, as extension tables use it.</summary>
    public static Density Water { get; } = LiquidDensity.FromPoundsPerGallon(8.34);

    /// <summary>How many times the liquid's flow the water flows: the square root of their densities' ratio.</summary>
    /// <param name="density">The liquid's density, above zero.</param>
    public static double Factor(Density density) => Math.Sqrt(Guard.Positive(density.KilogramsPerLiter, "density, kg/L", nameof(density)) / Water.KilogramsPerLiter);
}
