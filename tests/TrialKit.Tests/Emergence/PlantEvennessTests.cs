using TrialKit.Emergence;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

public class PlantEvennessTests
{
    [Fact]
    public void Of_PlantsOfASpot_LagsBehindFirstMedianAndNeighbours()
    {
        // Days 10, 11, 10, 14, 12 along the tape: first 10, median 11.
        var strip = Assert.Single(Of(Dated("a", 10, 11, 10, 14, 12)));

        Assert.Equal([0, 1, 0, 4, 2], strip.Lags.Select(lag => lag.BehindFirst));
        Assert.Equal([-1, 0, -1, 3, 1], strip.Lags.Select(lag => lag.BehindMedian));
        Assert.Equal([null, 1, -2.5, 3, null], strip.Lags.Select(lag => lag.BehindNeighbours));
        Assert.Equal(1.4, strip.MeanLag!.Value, Tolerances.ClosedForm);
        Assert.Equal(Math.Sqrt(((1.4 * 1.4 * 2) + (0.4 * 0.4) + (2.6 * 2.6) + (0.6 * 0.6)) / 4), strip.StandardDeviation!.Value, Tolerances.ClosedForm);
        Assert.Equal(60, strip.PercentWithin24HoursOfFirst!.Value, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin48HoursOfFirst!.Value, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin24HoursOfMedian!.Value, Tolerances.ClosedForm);
        Assert.Equal(80, strip.PercentWithin48HoursOfMedian!.Value, Tolerances.ClosedForm);
        Assert.Equal(20, strip.PercentLate!.Value, Tolerances.ClosedForm);
        Assert.Equal("4", Assert.Single(strip.Lags, lag => lag.IsLate).Plant);
    }

    [Theory]
    [InlineData(13.0, false)]
    [InlineData(13.125, false)]
    [InlineData(13.13, true)]
    public void Of_PlantThreeDaysBehind_IsNotYetLate(double day, bool late) =>
        Assert.Equal(late, Assert.Single(Of(Dated("a", 10, day))).Lags[1].IsLate);

    [Fact]
    public void Of_SeveralSpots_HasAFirstOfEach()
    {
        var strip = Assert.Single(Of([.. Dated("a", 10, 11), .. Dated("b", 15, 16)]));

        Assert.Equal([0, 1, 0, 1], strip.Lags.Select(lag => lag.BehindFirst));
    }

    [Fact]
    public void Of_VolunteersAndUndatedPlants_AreLeftOutAndBreakTheRow()
    {
        Plant[] plants = [.. Dated("a", 10, 9, 11, 12)];
        plants[1] = plants[1] with { Fate = PlantFate.Volunteer };
        plants[2] = plants[2] with { FirstSeen = null };

        var strip = Assert.Single(Of(plants));

        Assert.Equal([0, 2], strip.Lags.Select(lag => lag.BehindFirst));
        Assert.All(strip.Lags, lag => Assert.Null(lag.BehindNeighbours));
    }

    [Fact]
    public void Of_CountsOnly_TakesEachNewPlantAsAPlant()
    {
        var strip = Counted((9, 0), (10, 2), (11, 5), (12, 4), (13, 5), (14, 6));

        Assert.Equal([10, 10, 11, 11, 11, 14], strip.Lags.Select(lag => lag.Days));
        Assert.Equal(100.0 / 6, strip.PercentLate!.Value, Tolerances.ClosedForm);
        Assert.Empty(strip.Findings);
    }

    [Fact]
    public void Of_CountsDaily_SharesOfTheFirstAreThoseOfTheTiming()
    {
        (double, int)[] visits = [(9, 0), (10, 2), (11, 5), (12, 9), (13, 11), (14, 12)];
        var timing = Assert.Single(EmergenceTiming.Of(Watched(visits)));
        var strip = Counted(visits);

        Assert.Equal((timing.PercentWithin24Hours, timing.PercentWithin48Hours), (strip.PercentWithin24HoursOfFirst, strip.PercentWithin48HoursOfFirst));
    }

    public static TheoryData<string, (double, int)[]> Untold => new()
    {
        { "lags-coarse", [(4, 0), (7, 2), (10, 20), (13, 30), (16, 31)] },
        { "lags-coarse", [(5, 0), (30, 31)] },
        { "lags-coarse", [(5, 0), (9, 12), (18, 31)] },
        { "lags-coarse", [(9, 0), (10, 2), (11, 12), (13, 20), (14, 30)] },
        { "lags-coarse", [(5, 0), (9, 2), (10, 12), (11, 20), (12, 30)] },
    };

    [Theory]
    [MemberData(nameof(Untold))]
    public void Of_VisitsTooFarApart_SumsNoLagUpAndSaysWhy(string finding, (double, int)[] visits)
    {
        // Where visits fall would set the lags: a treatment that only brings all plants up sooner would look less even.
        var strip = Counted(visits);

        Assert.Equal(finding, Assert.Single(strip.Findings).Id);
        Assert.Equal(visits[^1].Item2, strip.Lags.Length);
        Assert.Equal(Assert.Single(EmergenceTiming.Of(Watched(visits))).PercentWithin48Hours, strip.PercentWithin48HoursOfFirst);
        Assert.Null(strip.PercentWithin48HoursOfFirst);
        Nothing(strip);
    }

    [Fact]
    public void Of_PlantsUpAtTheFirstVisit_SumsNoLagUp() => Nothing(Counted((10, 12), (11, 20), (12, 30), (13, 31)));

    [Theory]
    [InlineData(11.25, true)]
    [InlineData(11.3, false)]
    public void Of_VisitLaterInTheDay_StillTellsLagsUpToADayAndAQuarter(double day, bool told) =>
        Assert.Equal(told, Counted((9, 0), (10, 2), (day, 12), (12, 20), (13, 30)).MeanLag is not null);

    [Fact]
    public void Of_GapInWhichNothingCameUp_TellsLagsAllTheSame() =>
        Assert.NotNull(Counted((5, 0), (9, 0), (10, 2), (11, 12), (12, 20), (15, 20), (20, 20)).MeanLag);

    [Theory]
    [InlineData(36, true)]
    [InlineData(35, false)]
    public void Of_StragglersFoundByCoarseVisits_LeaveLagsToldUpToATenth(int daily, bool told) =>
        Assert.Equal(told, Counted((9, 0), (10, 2), (11, 12), (12, 20), (13, daily), (17, 39), (20, 39)).MeanLag is not null);

    [Theory]
    [InlineData(0, true)]
    [InlineData(3, false)]
    public void Of_StragglersFoundByCoarseVisits_LeaveNoStandardDeviation(int stragglers, bool told)
    {
        var strip = Counted((9, 0), (10, 2), (11, 12), (12, 20), (13, 39 - stragglers), (17, 39));

        Assert.NotNull(strip.MeanLag);
        Assert.Equal(told, strip.StandardDeviation is not null);
    }

    [Fact]
    public void Of_StragglersOfOneStrip_AreWeighedOverTheTrial()
    {
        // A strip must not leave a comparison of evenness for being uneven: 7 of 39 on one strip are 7 of 78 of both.
        (double, int)[] uneven = [(9, 0), (10, 2), (11, 12), (12, 20), (13, 32), (17, 39)], even = [(9, 0), (10, 2), (11, 12), (12, 30), (13, 39), (17, 39)];
        var both = PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, uneven), SmallTrial.Spot(SmallTrial.Second, "a", 40, even)] }));

        Assert.All(both, strip => Assert.True(strip.VisitsTellLags));
        Assert.Null(Counted(uneven).MeanLag);
        Assert.All(
            PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, [.. uneven[..4], (13, 30), (17, 39)]), SmallTrial.Spot(SmallTrial.Second, "a", 40, even)] })).Zip(["lags-coarse", "lags-coarse-elsewhere"]),
            pair => Assert.Equal(pair.Second, Assert.Single(pair.First.Findings).Id));
    }

    [Fact]
    public void Of_PlantsFromTwoVisitsOnly_HaveSharesButNeitherMeanNorSpread()
    {
        var strip = Counted((9, 0), (10, 20), (11, 30), (12, 30), (13, 30));

        Assert.Null(strip.MeanLag);
        Assert.Null(strip.StandardDeviation);
        Assert.Equal(100, strip.PercentWithin24HoursOfFirst);
        Assert.Equal(0, strip.PercentLate);
    }

    [Fact]
    public void Of_DatedPlants_TakeTheVisitsOnRecordForTheirSpot()
    {
        // The plants are dated a day apart, but the spot was visited every third day: a date without its time does not narrow the gap.
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (7.7, 0), (10.7, 3), (13.7, 5))],
            Plants = [.. Dated("a", 10, 10, 10, 13, 13)],
        });

        var strip = Assert.Single(PlantEvenness.Of(trial));

        Nothing(strip);
        Assert.Equal("lags-coarse", Assert.Single(strip.Findings).Id);
    }

    [Fact]
    public void Of_DatedPlantsWithoutVisits_TakeTheDaysOfTheTrialsPlantsForVisits()
    {
        // Spot a began when spot b had been walked already; of spot b nothing tells whether plants were up before.
        var later = Assert.Single(PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Plants = [.. Dated("a", 11, 12, 13), .. Dated("b", 10, 11, 12)] })));

        Nothing(later);
        Assert.Equal("S1, spot b", Assert.Single(later.Findings, finding => finding.Id == "lags-from-first-visit").Where);
    }

    [Theory]
    [InlineData(34, 40, false)]
    [InlineData(20, 40, true)]
    public void Of_SpotsOfUnequalSize_AreDoubted(int few, int many, bool doubted)
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", few, (9, 0), (10, 2), (11, 5), (12, 9)), SmallTrial.Spot(SmallTrial.Second, "a", many, (9, 0), (10, 2), (11, 5), (12, 9))],
        });

        Assert.All(PlantEvenness.Of(trial), strip => Assert.Equal(doubted, strip.Findings.Any(finding => finding.Id == "spots-of-unequal-size")));
    }

    [Fact]
    public void Of_PlantsAndCounts_UsesThePlantsForAllStrips()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (9, 0), (10, 2)), SmallTrial.Spot(SmallTrial.Second, "a", 40, (9, 0), (10, 2))],
            Plants = [.. Dated("a", 10, 11)],
        });

        Assert.Equal("S1", Assert.Single(PlantEvenness.Of(trial)).Strip.Name);
    }

    [Fact]
    public void Of_NothingDated_ListsNothing() => Assert.Empty(PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (9, 0), (10, 0))] })));

    private static void Nothing(StripEvenness strip)
    {
        Assert.False(strip.VisitsTellLags);
        Assert.Null(strip.MeanLag);
        Assert.Null(strip.StandardDeviation);
        Assert.Null(strip.PercentWithin24HoursOfMedian);
        Assert.Null(strip.PercentWithin48HoursOfMedian);
        Assert.Null(strip.PercentLate);
    }

    private static StripTrial Watched(params (double, int)[] visits) =>
        StripTrial.Create(SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, visits)] });

    private static StripEvenness Counted(params (double, int)[] visits) => Assert.Single(PlantEvenness.Of(Watched(visits)));

    // With daily visits to both spots on record, from before the first plant.
    private static System.Collections.Immutable.ImmutableArray<StripEvenness> Of(params Plant[] plants) =>
        PlantEvenness.Of(StripTrial.Create(SmallTrial.Draft with
        {
            Plants = [.. plants],
            Emergence = [.. plants.Select(plant => plant.Spot).Distinct(StringComparer.Ordinal).Select(spot => SmallTrial.Spot(SmallTrial.First, spot, 40, [.. Enumerable.Range(5, 15).Select(day => ((double)day, 0))]))],
        }));

    private static Plant[] Dated(string spot, params double[] days) =>
        [.. days.Select((day, i) => SmallTrial.Plant(SmallTrial.First, spot, FormattableString.Invariant($"{i + 1}"), 6.0 * i) with { FirstSeen = SmallTrial.Planted.ToDateTime(TimeOnly.MinValue).AddDays(day) })];
}
