namespace TrialKit.Starter;

/// <summary>One screening limit as printed.</summary>
/// <param name="Crop">The crop it is for; null when the source names none.</param>
/// <param name="Distance">How far from the seed.</param>
/// <param name="Soil">The soil it is for.</param>
/// <param name="RowInches">The row spacing it is for, inches; null when the source names none.</param>
/// <param name="Sum">What is summed.</param>
/// <param name="PoundsPerAcre">The limit; 0 means none at all.</param>
/// <param name="IsFromMemory">Whether the value is from memory and not read in the source.</param>
public sealed record ScreeningLimit(
    string? Crop,
    SeedDistance Distance,
    LimitSoil Soil,
    double? RowInches,
    SummedNutrients Sum,
    double PoundsPerAcre,
    bool IsFromMemory = false)
{
    /// <summary>The soil in words.</summary>
    public string SoilWords => LimitSoils.Words(Soil);

    /// <summary>What is summed, in words.</summary>
    public string SumWords => SummedNutrientsWords.Words(Sum);
}
