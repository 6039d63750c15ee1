using System.Globalization;

namespace TrialKit.Tests.Examples;

/// <summary>
/// The truth of <c>example-trials/starter-placement</c>: against a 2x2 band, the same starter in the furrow costs 3.5 plants of
/// 100 seeds, brings the others up 0.15 days sooner, and does nothing to yield. Split, two fifths in the furrow and the rest in the
/// band, it costs 0.5 plants of 100 seeds, is 0.10 days sooner, and yields 3 bu/ac more.
/// </summary>
internal static class StarterPlacement
{
    /// <summary>The plan.</summary>
    public static ExamplePlan Plan { get; } = new()
    {
        Name = "starter-placement",
        Seed = 20150510,
        Units = ExampleUnits.UsCorn,
        Planted = new(2015, 5, 9),
        PlantedNextDay = [5, 6],
        Blocks = 6,
        Treatments =
        [
            new("band", Share: 0.945, MedianDays: 12.40, Steepness: 13.0, Yield: 204),
            new("furrow", Share: 0.910, MedianDays: 12.25, Steepness: 13.0, Yield: 204),
            new("split", Share: 0.940, MedianDays: 12.30, Steepness: 13.0, Yield: 207),
        ],
        Field = new()
        {
            BlockMedianDays = 0.30,
            StripMedianDays = 0.10,
            StripShare = 0.010,
            StripSteepness = 0.8,
            BlockYield = 6,
            StripYield = 3,
            Moisture = 19.4,
            Depth = 2.0,
            StripDepth = 0.05,
            DepthSpread = 0.18,
            DropError = 0.9,
            Doubles = 0.010,
        },
        StripName = (_, _, order) => string.Create(CultureInfo.InvariantCulture, $"N{order:00}"),
        StripLength = 960,
        LengthStep = 12,
        StripWidth = 20,
        Rows = 8,
        HarvestWidth = 20,
        StandardMoisture = 15.5,
        SpotLength = 17.424,
        SpotSeeds = 34,
        SeedSpacing = 6.15,
        FlaggedSpots = ["A", "B", "C"],
        VisitDays = [6, 7, 8, 9, 10, 11, 12, 14, 15, 16, 17, 18, 19, 21, 24],
        VisitHour = new(18, 30),
        NewPlants = true,
        StandSpots = 8,
        StandDay = 34,
        PlantColumns = PlantColumns.Collars | PlantColumns.Mesocotyl,
        Measures =
        [
            new("V6 shoot weight", "g", Step: 0.1, Lowest: 0, Highest: 40, StripSpread: 0.35, SpotSpread: 0.6, Means: [8.0, 8.3, 8.3]),
        ],
    };
}
