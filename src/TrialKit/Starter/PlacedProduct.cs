using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Starter;

/// <summary>A product, or the part of it, at one placement.</summary>
/// <param name="Product">The product.</param>
/// <param name="Placement">Where.</param>
/// <param name="Share">The part of the product's rate that goes there.</param>
/// <param name="Rate">That part per area, as given: a volume or a weight.</param>
/// <param name="Row">That part per length of row.</param>
/// <param name="Weight">Its weight per area; null when a volume cannot be weighed.</param>
/// <param name="RowWeight">Its weight per length of row; null when it cannot be weighed.</param>
/// <param name="Nutrients">Its nutrients; null when it cannot be weighed or has no analysis.</param>
public sealed record PlacedProduct(
    Product Product,
    Placement Placement,
    double Share,
    ApplicationRate Rate,
    RowAmount Row,
    ApplicationRate? Weight,
    RowAmount? RowWeight,
    ImmutableArray<NutrientAmount>? Nutrients)
{
    /// <summary>A product at each of its placements, in the product's order.</summary>
    /// <param name="product">The product.</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    public static ImmutableArray<PlacedProduct> Of(Product product, Length spacing)
    {
        ArgumentNullException.ThrowIfNull(product);
        return [.. product.Placements.Select(placed => Of(product, placed, spacing))];
    }

    private static PlacedProduct Of(Product product, PlacedShare placed, Length spacing)
    {
        var rate = product.Rate.Times(placed.Share);
        var weight = rate.Weighed(product.Density);
        return new(
            product,
            placed.Placement,
            placed.Share,
            rate,
            RowAmount.Of(rate, spacing),
            weight,
            weight is { } weighed ? RowAmount.Of(weighed, spacing) : null,
            weight is { } known && product.Analysis is { } analysis ? [.. analysis.Stated.Select(nutrient => Nutrient(nutrient, known.Times(analysis.Percent(nutrient) / 100), spacing))] : null);
    }

    private static NutrientAmount Nutrient(Nutrient nutrient, ApplicationRate rate, Length spacing) => new(nutrient, rate, RowAmount.Of(rate, spacing));
}
