using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>Salt indices of materials, and of what is mixed from them. They rank products; they do not predict a loss of stand.</summary>
/// <remarks>
/// For ammonium sulfate 88.3 and 3.252 a unit are printed together; 21 units at 3.252 make 68.3, and 88.3 is taken as a misprint.
/// Of fluids the total alone is printed; per unit it is divided by their units.
/// </remarks>
public static class SaltIndexes
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Salt index, a ranking",
        "Rader, White and Whittaker 1943, Soil Sci. 55:201-218; Mortvedt 2001",
        "docs/methods/starter.md");

    /// <summary>Every one on record, the highest first.</summary>
    public static ImmutableArray<SaltIndex> All { get; } =
    [
        .. new SaltIndex[]
        {
            new("ammonium nitrate", 104, 3.059, IsFromMemory: false),
            new("ammonium sulfate", 68.3, 3.252, IsFromMemory: false),
            new("urea", 74.4, 1.618, IsFromMemory: false),
            new("10-34-0", 20.0, 0.455, IsFromMemory: false),
            new("diammonium phosphate", 29.2, 0.456, IsFromMemory: false),
            new("monoammonium phosphate", 26.7, 0.405, IsFromMemory: false),
            new("triple superphosphate", 10.1, 0.224, IsFromMemory: false),
            new("monopotassium phosphate", 8.4, 0.097, IsFromMemory: false),
            new("potassium chloride", 116.2, 1.936, IsFromMemory: false),
            new("potassium nitrate", 69.5, 1.219, IsFromMemory: false),
            new("potassium sulfate", 42.6, 0.852, IsFromMemory: false),
            new("UAN-28", 63.0, 2.250, IsFromMemory: true),
            new("UAN-32", 71.1, 2.221, IsFromMemory: true),
            new("ammonium thiosulfate", 90.4, 7.533, IsFromMemory: true),
            new("potassium thiosulfate", 68.0, 2.720, IsFromMemory: true),
            Fluid("6-24-6", 11.5, isFromMemory: false),
            Fluid("9-18-9", 16.7, isFromMemory: false),
            Fluid("7-21-7", 27.8, isFromMemory: false),
            Fluid("4-10-10", 27.5, isFromMemory: false),
            Fluid("3-18-18", 8.5, isFromMemory: true),
        }.OrderByDescending(index => index.Total),
    ];

    /// <summary>The index of a material; null when none is on record.</summary>
    public static SaltIndex? Find(string material) => All.FirstOrDefault(index => Identifier.Same(index.Material, material));

    /// <summary>The total index of a product: from what it is made from, else of the material it is; null when neither is on record.</summary>
    /// <param name="product">The product.</param>
    public static double? Of(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        return product.MadeFrom.IsEmpty
            ? Materials.Recognise(product) is { } material ? Find(material.Name)?.Total : null
            : OfMixture(product.MadeFrom.Select(part => (part.Material, part.Share * Units(part.Material))));
    }

    /// <summary>Why a product has no index; null when it has one.</summary>
    /// <param name="product">The product.</param>
    public static string? Missing(Product product) => Of(product) is not null ? null
        : $"no value in this table for {product.MadeFrom.FirstOrDefault(part => Find(part.Material) is null)?.Material ?? product.Analysis?.ToString() ?? product.Name}";

    /// <summary>The total index of a mixture: units of N + P2O5 + K2O in a ton of it from each material, times the material's index for a unit.</summary>
    /// <param name="units">Materials with their units in a short ton of mixture, each unit 20 lb.</param>
    /// <returns>Null when a material's index is not on record.</returns>
    public static double? OfMixture(IEnumerable<(string Material, double Units)> units)
    {
        ArgumentNullException.ThrowIfNull(units);
        var sum = 0.0;
        foreach (var (material, amount) in units)
        {
            if (Find(material) is not { } index)
            {
                return null;
            }

            sum += amount * index.PerUnit;
        }

        return sum;
    }

    /// <summary>The index of products at one placement together, by their weights; null when an index or a weight is not known.</summary>
    /// <param name="total">What lies there.</param>
    public static double? Of(PlacementTotal total)
    {
        ArgumentNullException.ThrowIfNull(total);
        var (weights, sum) = (0.0, 0.0);
        foreach (var placed in total.Products)
        {
            if (Of(placed.Product) is not { } index || placed.Weight is not { } weight)
            {
                return null;
            }

            weights += weight.PerHectare;
            sum += weight.PerHectare * index;
        }

        return weights > 0 ? sum / weights : null;
    }

    private static double Units(string material) => Materials.Find(material) is { } known ? Units(known.Analysis) : 0;

    private static double Units(NutrientAnalysis analysis) => analysis.N + analysis.P2O5 + analysis.K2O;

    private static SaltIndex Fluid(string name, double total, bool isFromMemory) => new(name, total, total / Units(Materials.Find(name)!.Analysis), isFromMemory);
}
