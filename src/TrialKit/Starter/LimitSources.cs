using System.Collections.Immutable;

namespace TrialKit.Starter;

/// <summary>The screening limits as data. They disagree with each other: each is shown with its source, and none is the truth.</summary>
public static class LimitSources
{
    private const double SorghumShare = 0.7;

    private static readonly string[] NoneWith = ["soybean", "sunflower", "dry bean"];

    /// <summary>Kansas State University, by row spacing.</summary>
    public static LimitSource KansasState { get; } = new(
        "Kansas State University",
        "Agronomy eUpdate, placement and rates of starter fertilizer",
        Year: null,
        [
            .. Furrow("corn", LimitSoil.MediumAndFine, 1, (40, 6, false), (30, 8, false), (20, 12, false), (15, 16, true)),
            .. Furrow("corn", LimitSoil.Sandy, 1, (40, 4, false), (30, 6, false), (20, 8, false), (15, 11, true)),
            .. Furrow("sorghum", LimitSoil.MediumAndFine, SorghumShare, (40, 6, false), (30, 8, false), (20, 12, false), (15, 16, true)),
            .. Furrow("sorghum", LimitSoil.Sandy, SorghumShare, (40, 4, false), (30, 6, false), (20, 8, false), (15, 11, true)),
            .. NoneWith.Select(crop => new ScreeningLimit(crop, SeedDistance.WithSeed, LimitSoil.Any, RowInches: null, SummedNutrients.NitrogenAndPotash, 0)),
        ],
        "Without urea or UAN. Sorghum 30 % less than corn; none with soybean, sunflower and dry bean.");

    /// <summary>A soil-testing laboratory's guide, by distance and exchange capacity.</summary>
    public static LimitSource LaboratoryGuide { get; } = new(
        "a soil-testing laboratory's guide",
        "starter guide, read in a stored extract",
        Year: null,
        [
            .. ByExchange(SeedDistance.WithSeed, 5, 8),
            .. ByExchange(SeedDistance.QuarterToHalfInch, 8, 15),
            .. ByExchange(SeedDistance.OneToTwoInches, 15, 40),
            .. ByExchange(SeedDistance.OverTwoInches, 20, 40),
        ],
        "Names neither crop nor row spacing in the extract read.");

    /// <summary>Ohio State University, for the 2x2 band.</summary>
    public static LimitSource OhioState { get; } = new(
        "Ohio State University",
        "Extension, starter phosphorus and potassium",
        Year: null,
        [new("corn", SeedDistance.BesideAndBelowBand, LimitSoil.Any, RowInches: null, SummedNutrients.NitrogenAndPotash, 100)],
        "For the 2x2 band. Far above the laboratory's figure for the same distance: the sources disagree.");

    /// <summary>Tri-State recommendations, by exchange capacity.</summary>
    public static LimitSource TriState { get; } = new(
        "the Tri-State recommendations",
        "Fertilizer recommendations for corn, soybeans, wheat and alfalfa, AY-9-32 (values and year from memory)",
        Year: 1995,
        [
            new("corn", SeedDistance.WithSeed, LimitSoil.ExchangeUpTo7, RowInches: null, SummedNutrients.NitrogenAndPotash, 5, IsFromMemory: true),
            new("corn", SeedDistance.WithSeed, LimitSoil.ExchangeAbove7, RowInches: null, SummedNutrients.NitrogenAndPotash, 8, IsFromMemory: true),
        ],
        "No boron in the row.");

    /// <summary>Every source, in the order they are shown.</summary>
    public static ImmutableArray<LimitSource> All { get; } = [KansasState, LaboratoryGuide, OhioState, TriState];

    private static IEnumerable<ScreeningLimit> Furrow(string crop, LimitSoil soil, double share, params (double Inches, double Pounds, bool IsFromMemory)[] rows) =>
        rows.Select(row => new ScreeningLimit(crop, SeedDistance.WithSeed, soil, row.Inches, SummedNutrients.NitrogenAndPotash, Math.Round(share * row.Pounds, 1), row.IsFromMemory));

    private static IEnumerable<ScreeningLimit> ByExchange(SeedDistance distance, double below, double above) =>
    [
        new(Crop: null, distance, LimitSoil.ExchangeUpTo12, RowInches: null, SummedNutrients.NitrogenPotashAndSulfur, below),
        new(Crop: null, distance, LimitSoil.ExchangeAbove12, RowInches: null, SummedNutrients.NitrogenPotashAndSulfur, above),
    ];
}
