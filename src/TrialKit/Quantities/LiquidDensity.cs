using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>Densities as the trade prints them, pounds per U.S. gallon, by the exact factors.</summary>
/// <remarks>The unit library's own factor is rounded at the ninth figure.</remarks>
public static class LiquidDensity
{
    private const double KilogramsPerLitre = ApplicationRate.KilogramsPerPound / ApplicationRate.LitresPerGallon;

    /// <summary>A density in pounds per U.S. gallon.</summary>
    /// <param name="pounds">Above 0, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static Density FromPoundsPerGallon(double pounds) => Density.FromKilogramsPerLiter(Guard.Positive(pounds, "pounds per gallon") * KilogramsPerLitre);

    /// <summary>Pounds in a U.S. gallon of a liquid.</summary>
    /// <param name="density">The density.</param>
    public static double PoundsPerGallon(Density density) => density.KilogramsPerLiter / KilogramsPerLitre;
}
