using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Starter;

/// <summary>Everything a treatment puts at one placement.</summary>
/// <param name="Placement">Where.</param>
/// <param name="Products">The products there, in the treatment's order.</param>
/// <param name="Nutrients">The nutrients of all of them; null when those of one are not known.</param>
public sealed record PlacementTotal(Placement Placement, ImmutableArray<PlacedProduct> Products, ImmutableArray<NutrientAmount>? Nutrients)
{
    /// <summary>The placements of a treatment, each once, in the order of their names; each is judged on its own amount.</summary>
    /// <param name="products">The treatment's products.</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    public static ImmutableArray<PlacementTotal> Of(IEnumerable<Product> products, Length spacing)
    {
        ArgumentNullException.ThrowIfNull(products);
        return [.. products
            .SelectMany(product => PlacedProduct.Of(product, spacing))
            .GroupBy(placed => placed.Placement)
            .OrderBy(placement => placement.Key)
            .Select(placement => new PlacementTotal(placement.Key, [.. placement], Sum([.. placement], spacing)))];
    }

    /// <summary>Pounds per acre of some nutrients together; null when they are not known.</summary>
    public double? PoundsPerAcre(params ReadOnlySpan<Nutrient> nutrients)
    {
        if (Nutrients is not { } known)
        {
            return null;
        }

        var sum = 0.0;
        foreach (var amount in known)
        {
            sum += nutrients.Contains(amount.Nutrient) ? amount.Rate.PerAcreUs : 0;
        }

        return sum;
    }

    private static ImmutableArray<NutrientAmount>? Sum(PlacedProduct[] products, Length spacing)
    {
        if (products.Any(product => product.Nutrients is null))
        {
            return null;
        }

        var sums =
            from product in products
            from amount in product.Nutrients!.Value
            group amount.Rate.PerHectare by amount.Nutrient into nutrient
            orderby nutrient.Key
            let rate = ApplicationRate.FromKilogramsPerHectare(nutrient.Sum())
            select new NutrientAmount(nutrient.Key, rate, RowAmount.Of(rate, spacing));
        return [.. sums];
    }
}
