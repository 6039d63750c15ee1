using System.Collections.Immutable;
using CsCheck;
using TrialKit.Quantities;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Tests.Stand;

public class StandCountsTests
{
    [Fact]
    public void Of_FiveSpots_AgreesWithFormula()
    {
        // Computed from the formulas, no published value.
        int[] plants = [28, 31, 30, 27, 29];

        var stand = Assert.Single(Of([.. plants.Select((count, i) => SmallTrial.Count(SmallTrial.First, $"{i}", count))]));

        Assert.Equal(29_000, stand.Mean.PerAcre, Tolerances.Density);
        Assert.Equal(1.581139, stand.StandardDeviation!.Value.PerAcre / 1000, Tolerances.PrintedToSixDecimals);
        Assert.Equal(0.707107, stand.StandardError!.Value.PerAcre / 1000, Tolerances.PrintedToSixDecimals);
        Assert.Equal(5.452, stand.CoefficientOfVariation!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(85.294, stand.PercentOfSeeds!.Value, Tolerances.PrintedToThreeDecimals);
        var interval = stand.IntervalAt(ConfidenceLevel.FromAlpha(0.05), UnitSystem.Us)!.Value;
        Assert.Equal(27.0368, interval.Low / 1000, Tolerances.PrintedToFourDecimals);
        Assert.Equal(30.9632, interval.High / 1000, Tolerances.PrintedToFourDecimals);
        Assert.Empty(stand.Findings);
    }

    [Fact]
    public void IntervalAt_Metric_IsTheSameInterval()
    {
        var stand = Assert.Single(Of([SmallTrial.Count(SmallTrial.First, "a", 28), SmallTrial.Count(SmallTrial.First, "b", 31)]));

        var us = stand.IntervalAt(default, UnitSystem.Us)!.Value;
        var metric = stand.IntervalAt(default, UnitSystem.Metric)!.Value;

        Assert.Equal(us.Low / Land.HectaresPerAcre, metric.Low, Tolerances.Density);
        Assert.Equal(us.High / Land.HectaresPerAcre, metric.High, Tolerances.Density);
    }

    [Fact]
    public void Of_OneSpot_HasNoInterval()
    {
        var stand = Assert.Single(Of([SmallTrial.Count(SmallTrial.First, spot: null, 30)]));

        Assert.Null(stand.StandardDeviation);
        Assert.Null(stand.StandardError);
        Assert.Null(stand.IntervalAt(default, UnitSystem.Us));
    }

    [Fact]
    public void Of_MorePlantsThanSeeds_IsFlaggedAndNotClipped()
    {
        var stand = Assert.Single(Of([SmallTrial.Count(SmallTrial.First, "a", 37)]));

        Assert.Equal(100.0 * 37 / 34, stand.PercentOfSeeds!.Value, Tolerances.Density);
        Assert.Equal(["stand-over-seeds"], stand.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_FullStand_IsNotFlagged() =>
        Assert.Empty(Assert.Single(Of([SmallTrial.Count(SmallTrial.First, "a", 34)])).Findings);

    [Fact]
    public void Of_SeveralDates_UsesTheLast()
    {
        var stand = Assert.Single(Of(
        [
            SmallTrial.Count(SmallTrial.First, "a", 30, new(2026, 6, 1)),
            SmallTrial.Count(SmallTrial.First, "A ", 28, new(2026, 6, 8)),
            SmallTrial.Count(SmallTrial.First, "a", 33),
        ]));

        Assert.Equal(28, Assert.Single(stand.Spots).Plants);
        Assert.Equal(["stand-several-dates"], stand.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_CountsWithoutASpot_AreAddedUp()
    {
        var stand = Assert.Single(Of(
        [
            SmallTrial.Count(SmallTrial.First, spot: null, 30),
            SmallTrial.Count(SmallTrial.First, spot: null, 27) with { Row = 2 * SmallTrial.ThousandthAcre },
        ]));

        Assert.Equal(19_000, stand.Mean.PerAcre, Tolerances.Density);
        Assert.Equal(["stand-spots-unnamed"], stand.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_RowsCountedTogether_SharesTheirLength()
    {
        var stand = Assert.Single(Of([SmallTrial.Count(SmallTrial.First, "a", 58) with { Rows = 2 }]));

        Assert.Equal(29_000, stand.Mean.PerAcre, Tolerances.Density);
    }

    [Fact]
    public void Of_StripLeftOut_IsSummarisedAllTheSame()
    {
        var flooded = SmallTrial.Strip("S1", SmallTrial.Control, 1, leftOut: "flooded");
        var trial = StripTrial.Create(SmallTrial.Draft with { Strips = [flooded, SmallTrial.Second], StandCounts = [SmallTrial.Count(flooded, "a", 30)] });

        var stand = Assert.Single(StandCounts.Of(trial));

        Assert.False(stand.Strip.IsAnalysed);
        Assert.Equal(30_000, stand.Mean.PerAcre, Tolerances.Density);
    }

    [Fact]
    public void Of_NoSeedingRate_HasNoPercent()
    {
        var draft = SmallTrial.Draft with { StandCounts = [SmallTrial.Count(SmallTrial.First, "a", 30)] };
        var trial = StripTrial.Create(draft with { Planting = draft.Planting with { Seeds = null } });

        Assert.Null(Assert.Single(StandCounts.Of(trial)).PercentOfSeeds);
    }

    [Fact]
    public void Of_OtherOrderSpotNamesAndUnits_ChangesNothing() =>
        Gen.Select(Gen.Int[0, 60].Array[2, 6], Gen.Shuffle(Enumerable.Range(0, 6).ToArray())).Sample((plants, order) =>
        {
            var one = Assert.Single(Of([.. plants.Select((count, i) => SmallTrial.Count(SmallTrial.First, $"{i}", count))]));
            var other = Assert.Single(Of([.. order.Where(i => i < plants.Length).Select(i => SmallTrial.Count(SmallTrial.First, $"spot {9 - i}", plants[i])
                with { Row = Length.FromCentimeters(SmallTrial.ThousandthAcre.Centimeters) })]));

            Assert.Equal(one.Mean.PerHectare, other.Mean.PerHectare, Tolerances.Density);
            Assert.Equal(one.StandardDeviation!.Value.PerHectare, other.StandardDeviation!.Value.PerHectare, Tolerances.Density);
            Assert.Equal(one.PercentOfSeeds!.Value, other.PercentOfSeeds!.Value, Tolerances.Density);
        });

    private static ImmutableArray<StripStand> Of(StandCount[] counts) =>
        StandCounts.Of(StripTrial.Create(SmallTrial.Draft with { StandCounts = [.. counts] }));
}
