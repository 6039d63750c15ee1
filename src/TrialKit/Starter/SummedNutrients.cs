using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What a limit sums.</summary>
public enum SummedNutrients
{
    /// <summary>Nitrogen and potash, N + K2O.</summary>
    NitrogenAndPotash,

    /// <summary>Nitrogen, potash and sulfur, N + K2O + S.</summary>
    NitrogenPotashAndSulfur,
}

/// <summary>What is summed, as nutrients and in words.</summary>
internal static class SummedNutrientsWords
{
    public static double? PoundsPerAcre(SummedNutrients sum, PlacementTotal total) => sum == SummedNutrients.NitrogenAndPotash
        ? total.PoundsPerAcre(Nutrient.N, Nutrient.K2O)
        : total.PoundsPerAcre(Nutrient.N, Nutrient.K2O, Nutrient.S);

    public static string Words(SummedNutrients sum) => sum == SummedNutrients.NitrogenAndPotash ? "N+K2O" : "N+K2O+S";
}
