using TrialKit.Emergence;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

public class PlantEvennessTests
{
    [Fact]
    public void Of_PlantsOfASpot_LagsBehindFirstMedianAndNeighbours()
    {
        // Days 10, 11, 10, 14, 12 along the tape: first 10, median 11.
        var strip = Assert.Single(Of(Plants("a", 10, 11, 10, 14, 12)));

        Assert.Equal([0, 1, 0, 4, 2], strip.Lags.Select(lag => lag.BehindFirst));
        Assert.Equal([-1, 0, -1, 3, 1], strip.Lags.Select(lag => lag.BehindMedian));
        Assert.Equal([null, 1, -2.5, 3, null], strip.Lags.Select(lag => lag.BehindNeighbours));
        Assert.Equal(1.4, strip.MeanLag, Tolerances.ClosedForm);
        Assert.Equal(Math.Sqrt(((1.4 * 1.4 * 2) + (0.4 * 0.4) + (2.6 * 2.6) + (0.6 * 0.6)) / 4), strip.StandardDeviation!.Value, Tolerances.ClosedForm);
        Assert.Equal(60, strip.PercentWithin24HoursOfFirst, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin48HoursOfFirst, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin24HoursOfMedian, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin48HoursOfMedian, Tolerances.ClosedForm);
        Assert.Equal(20, strip.PercentLate, Tolerances.ClosedForm);
        Assert.Equal("4", Assert.Single(strip.Lags, lag => lag.IsLate).Plant);
    }

    [Theory]
    [InlineData(13.0, false)]
    [InlineData(13.125, false)]
    [InlineData(13.13, true)]
    public void Of_PlantThreeDaysBehind_IsNotYetLate(double day, bool late) =>
        Assert.Equal(late, Assert.Single(Of(Plants("a", 10, day))).Lags[1].IsLate);

    [Fact]
    public void Of_SeveralSpots_HasAFirstOfEach()
    {
        var strip = Assert.Single(Of([.. Plants("a", 10, 11), .. Plants("b", 15, 16)]));

        Assert.Equal([0, 1, 0, 1], strip.Lags.Select(lag => lag.BehindFirst));
    }

    [Fact]
    public void Of_VolunteersAndUndatedPlants_AreLeftOutAndBreakTheRow()
    {
        Plant[] plants = [.. Plants("a", 10, 9, 11, 12)];
        plants[1] = plants[1] with { Fate = PlantFate.Volunteer };
        plants[2] = plants[2] with { FirstSeen = null };

        var strip = Assert.Single(Of(plants));

        Assert.Equal([0, 2], strip.Lags.Select(lag => lag.BehindFirst));
        Assert.All(strip.Lags, lag => Assert.Null(lag.BehindNeighbours));
    }

    [Fact]
    public void Of_CountsOnly_TakesEachNewPlantAsAPlant()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (9, 0), (10, 2), (11, 5), (12, 4), (14, 6))] });

        var strip = Assert.Single(PlantEvenness.Of(trial));

        Assert.Equal([10, 10, 11, 11, 11, 14], strip.Lags.Select(lag => lag.Days));
        Assert.Equal(100.0 / 6, strip.PercentLate, Tolerances.ClosedForm);
        Assert.Equal("lags-coarse", Assert.Single(strip.Findings).Id);
    }

    [Fact]
    public void Of_PlantsAndCounts_UsesThePlantsForAllStrips()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (9, 0), (10, 2)), SmallTrial.Spot(SmallTrial.Second, "a", 40, (9, 0), (10, 2))],
            Plants = [.. Plants("a", 10, 11)],
        });

        Assert.Equal("S1", Assert.Single(PlantEvenness.Of(trial)).Strip.Name);
    }

    [Fact]
    public void Of_NothingDated_ListsNothing() => Assert.Empty(PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (9, 0), (10, 0))] })));

    private static System.Collections.Immutable.ImmutableArray<StripEvenness> Of(params Plant[] plants) =>
        PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Plants = [.. plants] }));

    private static Plant[] Plants(string spot, params double[] days) =>
        [.. days.Select((day, i) => SmallTrial.Plant(SmallTrial.First, spot, FormattableString.Invariant($"{i + 1}"), 6.0 * i) with { FirstSeen = SmallTrial.Planted.ToDateTime(TimeOnly.MinValue).AddDays(day) })];
}
