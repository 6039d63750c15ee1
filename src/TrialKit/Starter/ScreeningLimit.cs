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
    // Rounding of a sum of products must not take a half pound down.
    private const double Rounding = 1e-9;

    /// <summary>The decimals it is printed with: whole pounds, tenths where a share was taken off.</summary>
    public int Decimals => PoundsPerAcre == Math.Floor(PoundsPerAcre) ? 0 : 1;

    /// <summary>The soil in words.</summary>
    public string SoilWords => LimitSoils.Words(Soil);

    /// <summary>What is summed, in words.</summary>
    public string SumWords => SummedNutrientsWords.Words(Sum);

    /// <summary>An amount at the precision of the limit, which is what is held against it: 8.04 and 7.92 both meet a limit printed as 8.</summary>
    /// <param name="amount">Pounds per acre, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public double AsPrinted(double amount) =>
        Math.Round(Quantities.Guard.NotNegative(amount, "pounds per acre", nameof(amount)) * (1 + Rounding), Decimals, MidpointRounding.AwayFromZero);
}
