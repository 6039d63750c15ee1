using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Starter;

/// <summary>Products and sites that the tests of this folder share.</summary>
internal static class Products
{
    public static readonly Length ThirtyInches = Length.FromInches(30);

    /// <summary>10-34-0 at 11.65 lb/gal.</summary>
    public static Product Polyphosphate(double gallons, params PlacedShare[] placements) =>
        Liquid("10-34-0", gallons, 11.65, "10-34-0", placements);

    public static Product Liquid(string name, double gallons, double poundsPerGallon, string analysis, params PlacedShare[] placements) =>
        new(name, Placed(placements), ApplicationRate.FromGallonsPerAcre(gallons), LiquidDensity.FromPoundsPerGallon(poundsPerGallon), Analysis(analysis));

    public static Product Dry(string name, double pounds, string analysis, params PlacedShare[] placements) =>
        new(name, Placed(placements), ApplicationRate.FromPoundsPerAcre(pounds), Density: null, Analysis(analysis));

    public static NutrientAnalysis Analysis(string text)
    {
        Assert.True(NutrientAnalysis.TryParse(text, out var analysis), text);
        return analysis;
    }

    private static System.Collections.Immutable.ImmutableArray<PlacedShare> Placed(PlacedShare[] placements) =>
        placements.Length == 0 ? [new(Placement.InFurrow, 1)] : [.. placements];
}
