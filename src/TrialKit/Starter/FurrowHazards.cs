using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What is never to be in the seed furrow, and what to be wary of there.</summary>
public static class FurrowHazards
{
    private const string Kansas = "Kansas State University Agronomy";
    private const string Guides = "extension starter guides (stored extract)";

    /// <summary>Every one.</summary>
    public static ImmutableArray<FurrowHazard> All { get; } =
    [
        Never("urea", "urea turns to ammonia, which kills seedlings", Kansas),
        Never("UAN-28", "holds urea, which turns to ammonia", Kansas),
        Never("UAN-32", "holds urea, which turns to ammonia", Kansas),
        Never("ammonium thiosulfate", "thiosulfate and ammonia harm the seed", Guides),
        Never("potassium thiosulfate", "treated as a thiosulfate", Guides),
        Never("anhydrous ammonia", "free ammonia kills seedlings", Guides),
        new("boron", Material: null, Nutrient.B, IsNever: true, "toxic to seedlings in the row", "Tri-State fertilizer recommendations, AY-9-32 (value from memory)"),
        new("diammonium phosphate", "diammonium phosphate", Nutrient: null, IsNever: false, "releases ammonia beside the seed", Guides),
    ];

    /// <summary>Those of a product: what it is, what it is made from, and what its analysis names.</summary>
    /// <param name="product">The product.</param>
    public static IEnumerable<FurrowHazard> In(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        var recognised = Materials.RecogniseAll(product);
        return All.Where(hazard => hazard.Material is { } material
            ? recognised.Any(known => known.Name == material) || product.MadeFrom.Any(part => part.Material == material)
            : product.Analysis?.Percent(hazard.Nutrient!.Value) > 0);
    }

    private static FurrowHazard Never(string material, string reason, string source) => new(material, material, Nutrient: null, IsNever: true, reason, source);
}
