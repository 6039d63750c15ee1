using System.Globalization;

namespace TrialKit.Tests.Examples;

/// <summary>
/// The truth of <c>example-trials/closing-wheels</c>: of three wheels one, the spiked, brings soybeans up 0.8 days sooner and breaks
/// the crust; the notched one
/// leaves a smoother sidewall and no sooner stand; no wheel changes stand or yield.
/// </summary>
internal static class ClosingWheels
{
    /// <summary>The plan.</summary>
    public static ExamplePlan Plan { get; } = new()
    {
        Name = "closing-wheels",
        Seed = 20130508,
        Units = ExampleUnits.Metric,
        Planted = new(2013, 5, 8),
        Blocks = 5,
        Treatments =
        [
            new("rubber", Share: 0.860, MedianDays: 10.6, Steepness: 11.5, Yield: 3.60),
            new("spiked", Share: 0.860, MedianDays: 9.8, Steepness: 11.5, Yield: 3.60),
            new("notched", Share: 0.860, MedianDays: 10.6, Steepness: 11.5, Yield: 3.60),
            new("cast", Share: 0.860, MedianDays: 10.6, Steepness: 11.5, Yield: 3.60),
        ],
        Field = new()
        {
            BlockMedianDays = 0.35,
            StripMedianDays = 0.15,
            StripShare = 0.015,
            StripSteepness = 0.8,
            BlockYield = 0.18,
            StripYield = 0.09,
            Moisture = 11.6,
            Depth = 3.8,
            StripDepth = 0.12,
            DepthSpread = 0.5,
            DropError = 1.6,
            Doubles = 0.03,
            Deaths = 0.001,
        },
        Troubles =
        [
            new(Block: 2, "notched", LeftOut: "the planter ran short of seed on most of this strip", ShareKept: 0.6),
            new(Block: 5, "cast", LeftOut: null, ShareKept: 0),
        ],
        StripName = (block, place, _) => string.Create(CultureInfo.InvariantCulture, $"{(100 * block) + place}"),
        StripLength = 310,
        LengthStep = -2,
        StripWidth = 6.08,
        Rows = 16,
        HarvestWidth = 6.08,
        StandardMoisture = 13,
        SpotLength = 3,
        SpotSeeds = 40,
        SeedSpacing = 7.5,
        FlaggedSpots = ["A", "B", "C"],
        VisitDays = [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 15, 16, 18, 21],
        VisitHour = new(7, 30),
        StandSpots = 4,
        StandRows = 2,
        StandDay = 30,
        PlantColumns = PlantColumns.Depth,
        Measures =
        [
            new("crust strength", "kPa", Step: 5, Lowest: 0, Highest: 1000, StripSpread: 18, SpotSpread: 30, Means: [290, 215, 290, 290]),
            new("sidewall score", string.Empty, Step: 1, Lowest: 1, Highest: 5, StripSpread: 0.3, SpotSpread: 0.6, Means: [3.2, 2.4, 2.4, 3.2]),
        ],
        SoilTemperature = true,
    };
}
