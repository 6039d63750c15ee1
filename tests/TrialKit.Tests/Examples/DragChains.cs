using System.Globalization;

namespace TrialKit.Tests.Examples;

/// <summary>
/// The truth of <c>example-trials/drag-chains</c>: with chains the stand comes up 0.35 days sooner and closer together;
/// stand and yield hardly differ.
/// </summary>
internal static class DragChains
{
    /// <summary>The plan.</summary>
    public static ExamplePlan Plan { get; } = new()
    {
        Name = "drag-chains",
        Seed = 20140508,
        Units = ExampleUnits.UsCorn,
        Planted = new(2014, 5, 8),
        Blocks = 6,
        Treatments =
        [
            new("none", Share: 0.930, MedianDays: 11.30, Steepness: 12.5, Yield: 191),
            new("chains", Share: 0.935, MedianDays: 10.95, Steepness: 16.0, Yield: 192),
        ],
        Field = new()
        {
            BlockMedianDays = 0.35,
            StripMedianDays = 0.10,
            StripShare = 0.012,
            StripSteepness = 0.8,
            BlockYield = 7,
            StripYield = 3,
            Moisture = 18.2,
            Depth = 2.05,
            StripDepth = 0.05,
            DepthSpread = 0.18,
            DropError = 1.0,
            Doubles = 0.012,
        },
        StripName = (_, _, order) => string.Create(CultureInfo.InvariantCulture, $"S{order:00}"),
        StripLength = 1240,
        StripWidth = 30,
        Rows = 12,
        HarvestWidth = 20,
        StandardMoisture = 15.5,
        SpotLength = 17.424,
        SpotSeeds = 34,
        SeedSpacing = 6.15,
        FlaggedSpots = ["A", "B", "C", "D"],
        VisitDays = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 19, 22],
        VisitHour = new(17, 0),
        StandSpots = 6,
        PlanterRows = [4, 6, 9],
        StandDay = 33,
        PlantColumns = PlantColumns.Collars | PlantColumns.Depth,
    };
}
