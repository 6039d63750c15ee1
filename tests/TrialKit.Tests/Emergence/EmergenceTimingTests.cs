using System.Collections.Immutable;
using CsCheck;
using TrialKit.Emergence;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Emergence;

public class EmergenceTimingTests
{
    // 40 seeds, daily visits from day 6 to 14 (and day 5, at which nothing was up).
    private static readonly (double, int)[] Daily = [(5, 0), (6, 0), (7, 2), (8, 10), (9, 22), (10, 28), (11, 32), (12, 34), (13, 34), (14, 35)];

    [Fact]
    public void Of_OnofriCounts_AgreesWithTheFit()
    {
        // Counts of Onofri, Mesgaran & Ritz 2022, Weed Science; the fit computed by another program, no published value.
        var strip = One(30, (5, 10), (10, 25), (15, 27), (20, 28));

        Assert.Equal(-35.837843, strip.Fit.LogLikelihood, Tolerances.LogLikelihood);
        Assert.Equal(-35.616729, strip.Fit.SaturatedLogLikelihood!.Value, Tolerances.LogLikelihood);
        Assert.Equal(0.944363, strip.Fit.Share!.Value.Value, Tolerances.PrintedToSixDecimals);
        Assert.Equal(0.0480, strip.Fit.Share!.Value.StandardError!.Value, Tolerances.PrintedToFourDecimals);
        Assert.Equal(3.623631, strip.Fit.Steepness!.Value.Value, Tolerances.PrintedToSixDecimals);
        Assert.Equal(0.920, strip.Fit.Steepness!.Value.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(5.876365, strip.Fit.Location!.Value.Value, Tolerances.PrintedToSixDecimals);
        Assert.Equal(0.597, strip.Fit.Location!.Value.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(3.2046, strip.T10!.Days, Tolerances.PrintedToFourDecimals);
        Assert.Equal(0.571, strip.T10.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(10.7758, strip.T90!.Days, Tolerances.PrintedToFourDecimals);
        Assert.Equal(2.054, strip.T90.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(7.571, strip.Spread!.Days, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(2.338, strip.Spread.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(6.0708, strip.T50OfSown!.Days, Tolerances.PrintedToFourDecimals);
        Assert.Equal(0.627, strip.T50OfSown.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.True(strip.Fit.Converged);
        Assert.Equal(100.0 * 28 / 30, strip.FinalPercent!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_DailyCounts_AgreesWithTheFitAndTheIndices()
    {
        // Computed from the formulas and by another program, no published value.
        var strip = One(40, Daily);

        Assert.Equal(-76.366477, strip.Fit.LogLikelihood, Tolerances.LogLikelihood);
        Assert.Equal(0.879403, strip.Fit.Share!.Value.Value, Tolerances.PrintedToSixDecimals);
        Assert.Equal(11.144971, strip.Fit.Steepness!.Value.Value, Tolerances.PrintedToSixDecimals);
        Assert.Equal(8.707945, strip.T50!.Days, Tolerances.PrintedToSixDecimals);
        Assert.Equal(3.4558, strip.Spread!.Days, Tolerances.PrintedToFourDecimals);
        Assert.Equal(0.558, strip.Spread.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(9.371429, Index(strip, "mean-time"), Tolerances.PrintedToSixDecimals);
        Assert.Equal(3.820779, Index(strip, "speed-maguire"), Tolerances.PrintedToSixDecimals);
        Assert.Equal(8.625, Index(strip, "median-farooq"), Tolerances.ClosedForm);
        Assert.Equal(["no-temperatures"], Ids(strip));
    }

    [Fact]
    public void Of_DailyCounts_IntervalOfATimeIsEvenOnTheLogScale()
    {
        var time = One(40, Daily).T50OfSown!;
        var interval = time.IntervalAt(default)!.Value;

        Assert.Equal(8.9263, time.Days, Tolerances.PrintedToFourDecimals);
        Assert.Equal(0.268, time.StandardError!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(time.Days * time.Days, interval.Low * interval.High, Tolerances.ClosedForm);
        Assert.Equal(1.6448536269514722 * time.StandardError.Value / time.Days, Math.Log(interval.High / time.Days), Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_ShareNotReached_HasNoTimeOfSown()
    {
        // 35 of 40 came up: nine tenths of the seeds never will.
        var strip = One(40, Daily);

        Assert.NotNull(strip.T90);
        Assert.Null(strip.T90OfSown);
        Assert.Null(One(seeds: null, Daily).T50OfSown);
    }

    [Theory]
    [InlineData("t10-of-up", 7.1875)]
    [InlineData("t16-of-up", 7.45)]
    [InlineData("t25-of-up", 7.84375)]
    [InlineData("t50-of-up", 8.625)]
    [InlineData("t75-of-up", 9.708333)]
    [InlineData("t84-of-up", 10.35)]
    [InlineData("t90-of-up", 10.875)]
    [InlineData("t90-t10-of-up", 3.6875)]
    [InlineData("t10-of-sown", 7.25)]
    [InlineData("t16-of-sown", 7.55)]
    [InlineData("t25-of-sown", 8.0)]
    [InlineData("t50-of-sown", 8.833333)]
    [InlineData("t75-of-sown", 10.5)]
    [InlineData("t84-of-sown", 11.8)]
    [InlineData("final-percent", 87.5)]
    [InlineData("cv-of-time", 15.971687)]
    public void Of_DailyCounts_GivesTheTableOfTimes(string id, double expected) =>
        // Computed from the formulas, no published value.
        Assert.Equal(expected, Index(One(40, Daily), id), Tolerances.PrintedToSixDecimals);

    [Fact]
    public void Of_DailyCounts_SaysWhatIsNotReached()
    {
        var index = One(40, Daily).Indices.Single(index => index.Id == "t90-of-sown");

        Assert.Null(index.Value);
        Assert.Equal("not reached", index.Remark);
        Assert.Equal("on or before the first visit", One(40, (6, 10), (7, 20), (8, 30)).Indices.Single(entry => entry.Id == "t10-of-up").Remark);
    }

    [Fact]
    public void Of_EvenWarmth_GivesIndicesInHeatInProportion()
    {
        // Every day holds 20 F-days, so heat is twenty times the days.
        var strip = Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", 40, Daily)], SmallTrial.Warm(20)));

        Assert.Equal(20 * 9.371429, Index(strip, "heat-mean-time"), Tolerances.PrintedToFourDecimals);
        Assert.Equal(15.971687, Index(strip, "heat-cv-of-time"), Tolerances.PrintedToSixDecimals);
        Assert.Equal(3.820779 / 20, Index(strip, "heat-speed-maguire"), Tolerances.PrintedToSixDecimals);
        Assert.Equal(20 * 8.833333, Index(strip, "heat-t50-of-sown"), Tolerances.PrintedToFourDecimals);
    }

    [Fact]
    public void Of_DailyCounts_CurveIsTheShareAtEachVisit()
    {
        var strip = One(40, Daily);

        Assert.Equal(10, strip.Curve.Length);
        Assert.Equal(22.0 / 40, strip.Curve[4].Share, Tolerances.ClosedForm);
        Assert.Equal(Math.Sqrt(0.55 * 0.45 / 40), strip.Curve[4].StandardError!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_DailyCounts_ShareWithin48HoursIsCountedFromTheFirstPlantSeen()
    {
        // First seen on day 7: 10 of 35 a day later, 22 of 35 two days later.
        var strip = One(40, Daily);

        Assert.Equal(100.0 * 10 / 35, strip.PercentWithin24Hours!.Value, Tolerances.ClosedForm);
        Assert.Equal(100.0 * 22 / 35, strip.PercentWithin48Hours!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_VisitsDaysApart_SaysThatTheEarlySharesAreNotKnown()
    {
        var strip = One(40, (5, 0), (8, 10), (11, 32), (14, 35));

        Assert.Null(strip.PercentWithin24Hours);
        Assert.Null(strip.PercentWithin48Hours);
        Assert.Contains("visits-too-far-apart", Ids(strip));
    }

    [Fact]
    public void Of_PlantsUpAtTheFirstVisit_GivesNoShareWithinHoursOfTheFirst()
    {
        var strip = One(40, (7, 30), (8, 33), (9, 34), (10, 34), (11, 34));

        Assert.Null(strip.PercentWithin24Hours);
        Assert.Null(strip.PercentWithin48Hours);
        Assert.Contains("first-visit-late", Ids(strip));
        Assert.DoesNotContain("visits-too-far-apart", Ids(strip));
    }

    [Theory]
    [InlineData(5.75, true)]
    [InlineData(5.7, false)]
    public void Of_GapBeforeTheFirstPlant_TellsTheEarlySharesUpToADayAndAQuarter(double before, bool told)
    {
        var strip = One(40, (before, 0), (7, 2), (8, 10), (9, 22), (10, 28));

        Assert.Equal(told, strip.PercentWithin24Hours is not null);
        Assert.Equal(told, strip.PercentWithin48Hours is not null);
        Assert.Equal(!told, Ids(strip).Contains("visits-too-far-apart"));
    }

    [Fact]
    public void FinalIntervalAt_ThirtyFiveOfForty_IsWilsons()
    {
        // Computed from the formula, no published value.
        var interval = One(40, Daily).FinalIntervalAt(TrialKit.Quantities.ConfidenceLevel.FromAlpha(0.05))!.Value;

        Assert.Equal(73.8879, interval.Low, Tolerances.PrintedToFourDecimals);
        Assert.Equal(94.5405, interval.High, Tolerances.PrintedToFourDecimals);
        Assert.Null(One(30, Daily).FinalIntervalAt(default));
        Assert.Null(One(seeds: null, Daily).FinalIntervalAt(default));
    }

    [Fact]
    public void Of_IndicesInHeat_HaveNamesOfTheirOwn()
    {
        var indices = Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", 40, Daily)], SmallTrial.Warm(20))).Indices;

        Assert.Contains(indices, index => index.Id.StartsWith("heat-", StringComparison.Ordinal));
        Assert.Equal(indices.Length, indices.Select(index => index.Method.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal("d²", indices.Single(index => index.Id == "variance-of-time").Unit.Symbol);
        Assert.Equal("(F-days)²", indices.Single(index => index.Id == "heat-variance-of-time").Unit.Symbol);
    }

    [Fact]
    public void Of_VisitThreeHoursOff_IsNearEnough()
    {
        var strip = One(40, (6, 0), (7, 2), (8.125, 10), (9.126, 22), (11, 35));

        Assert.Equal(100.0 * 10 / 35, strip.PercentWithin24Hours!.Value, Tolerances.ClosedForm);
        Assert.Null(strip.PercentWithin48Hours);
    }

    [Fact]
    public void Of_CountUnchangedAcrossTheMoment_IsKnown()
    {
        var strip = One(40, (6, 0), (7, 30), (7.5, 33), (12, 33), (13, 34));

        Assert.Equal(100.0 * 33 / 34, strip.PercentWithin24Hours!.Value, Tolerances.ClosedForm);
        Assert.Equal(100.0 * 33 / 34, strip.PercentWithin48Hours!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_SeveralSpots_PoolsTheirIntervals()
    {
        (double, int)[] half = [.. Daily.Select(visit => (visit.Item1, visit.Item2 / 2))];
        (double, int)[] rest = [.. Daily.Zip(half, (all, part) => (all.Item1, all.Item2 - part.Item2))];

        var one = One(40, Daily);
        var two = Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", 18, half), SmallTrial.Spot(SmallTrial.First, "b", 22, rest)]));

        Assert.Equal(one.Fit.LogLikelihood, two.Fit.LogLikelihood, Tolerances.LogLikelihood);
        Assert.Equal(one.T50!.Days, two.T50!.Days, Tolerances.Maximised);
        Assert.Equal(one.Curve, two.Curve);
        Assert.Equal(one.PlantsUp, two.PlantsUp);
    }

    [Fact]
    public void Of_SpotsVisitedApart_HasNoTableAndSaysSo()
    {
        var strip = Assert.Single(Of(
        [
            SmallTrial.Spot(SmallTrial.First, "a", 34, (6, 0), (8, 10), (9, 20), (12, 30)),
            SmallTrial.Spot(SmallTrial.First, "b", 34, (6, 0), (7, 4), (10, 25), (12, 31)),
        ]));

        // Both spots were visited on days 6 and 12, when 0 and 30 + 31 of 68 seeds were up.
        Assert.Equal(0, strip.Curve[0].Share);
        Assert.Equal(12, strip.Curve[^1].Days);
        Assert.Equal(61.0 / 68, strip.Curve[^1].Share, Tolerances.OtherSearch);
        Assert.All(strip.Curve.Zip(strip.Curve.Skip(1)), step => Assert.True(step.First.Share <= step.Second.Share));
        Assert.All(strip.Curve, point => Assert.Null(point.StandardError));
        Assert.Empty(strip.Indices);
        Assert.NotNull(strip.T50);
        Assert.Contains("spots-visited-apart", Ids(strip));
    }

    [Fact]
    public void Of_SeedsUnknown_FitsThePlantsSeen()
    {
        var strip = One(seeds: null, Daily);

        Assert.Null(strip.SeedsSown);
        Assert.Null(strip.FinalPercent);
        Assert.Equal(1, strip.Fit.Share!.Value.Value);
        Assert.Null(strip.Fit.Share!.Value.StandardError);
        Assert.Equal("log-logistic of the plants seen", strip.Fit.Model);
        Assert.NotNull(strip.T50);
        Assert.Contains("seeds-unknown", Ids(strip));
    }

    [Fact]
    public void Of_RowAndSeedingRate_GiveTheSeeds()
    {
        var spot = SmallTrial.Spot(SmallTrial.First, "a", seeds: null, Daily) with { Row = 2 * SmallTrial.ThousandthAcre };

        Assert.Equal(68, Assert.Single(Of([spot])).SeedsSown);
        Assert.Equal(85, Assert.Single(Of([spot with { Row = 2.5 * SmallTrial.ThousandthAcre }])).SeedsSown);
        Assert.Equal(40.8, Assert.Single(Of([spot with { Row = 1.2 * SmallTrial.ThousandthAcre }])).SeedsSown!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_ExpectedSeeds_OffsetAFullSpotByAThinOne()
    {
        var full = SmallTrial.Spot(SmallTrial.First, "a", seeds: null, (6, 0), (8, 12), (9, 24), (10, 31), (12, 36)) with { Row = SmallTrial.ThousandthAcre };
        var thin = SmallTrial.Spot(SmallTrial.First, "b", seeds: null, (6, 0), (8, 10), (9, 20), (10, 26), (12, 30)) with { Row = SmallTrial.ThousandthAcre };
        var pooled = SmallTrial.Spot(SmallTrial.First, "a", 68, (6, 0), (8, 22), (9, 44), (10, 57), (12, 66));

        var two = Assert.Single(Of([full, thin]));
        var one = Assert.Single(Of([pooled]));

        Assert.Equal(one.Fit.Share!.Value.Value, two.Fit.Share!.Value.Value, Tolerances.Maximised);
        Assert.DoesNotContain("plants-over-seeds", Ids(two));
    }

    [Fact]
    public void Of_MorePlantsThanSeeds_IsFlaggedAndNotClipped()
    {
        var known = One(30, Daily);
        var expected = Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", seeds: null, Daily) with { Row = SmallTrial.ThousandthAcre }]));

        Assert.Equal(100.0 * 35 / 30, known.FinalPercent!.Value, Tolerances.ClosedForm);
        Assert.Equal(100.0 * 35 / 34, expected.FinalPercent!.Value, Tolerances.ClosedForm);
        Assert.Equal(1, known.Fit.Share!.Value.Value);
        Assert.Contains("plants-over-seeds", Ids(known));
        Assert.Contains("plants-over-seeds", Ids(expected));
    }

    [Fact]
    public void Of_CountsThatFall_UsesTheHighestSoFar()
    {
        var level = One(40, (6, 0), (8, 10), (9, 20), (10, 20), (12, 30));
        var fallen = One(40, (6, 0), (8, 10), (9, 20), (10, 17), (12, 30));

        Assert.Equal(level.Fit, fallen.Fit);
        Assert.Equal("S1, spot a", fallen.Findings.Single(finding => finding.Id == "counts-fell").Where);
    }

    [Theory]
    [InlineData("nothing-up", 0, 0, 0, 0)]
    [InlineData("fit-one-interval", 0, 30, 30, 30)]
    [InlineData("fit-two-intervals", 0, 20, 30, 30)]
    [InlineData("fit-one-plant", 0, 1, 1, 1)]
    public void Of_CountsWithoutACurve_GivesNoTimesAndSaysWhy(string id, int first, int second, int third, int fourth)
    {
        var strip = One(34, (6, first), (8, second), (10, third), (12, fourth));

        Assert.Null(strip.T10);
        Assert.Null(strip.T50);
        Assert.Null(strip.T90);
        Assert.Null(strip.Spread);
        Assert.False(strip.Fit.Converged);
        Assert.Contains(strip.Findings, finding => finding.Id == id && finding.Weight == FindingWeight.Serious);
    }

    [Fact]
    public void Of_EverySeedUp_SaysThatTheShareRanToOne()
    {
        var strip = One(35, Daily);

        Assert.Equal(1, strip.Fit.Share!.Value.Value);
        Assert.Contains("fit-share-at-one", Ids(strip));
    }

    [Fact]
    public void Of_ThreeIntervals_SaysThatTheShapeIsNotTested()
    {
        // Three free cells and three parameters: the fit is the saturated one, -45.183367, computed from the counts.
        var strip = One(40, (8, 10), (11, 32), (14, 35));

        Assert.Equal(-45.183367, strip.Fit.LogLikelihood, Tolerances.LogLikelihood);
        Assert.Contains("fit-few-intervals", Ids(strip));
        Assert.Contains("first-visit-late", Ids(strip));
    }

    [Fact]
    public void Of_StillRising_SaysThatT90IsTheModelsWord()
    {
        var strip = One(100, (6, 0), (7, 2), (8, 6), (9, 14), (10, 26), (11, 41));

        Assert.True(strip.T90!.Days > 11);
        Assert.Contains("fit-still-rising", Ids(strip));
        Assert.Contains("t90-beyond-last-visit", Ids(strip));
    }

    [Fact]
    public void Of_Weather_GivesTimesInHeat()
    {
        // Every day holds 20 F-days by both methods.
        var strip = Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", 40, Daily)], SmallTrial.Warm(20)));

        Assert.Equal(20 * strip.T50!.Days, strip.T50.Heat!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(20 * strip.T50.Days, strip.T50.AverageHeat!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(20 * strip.Spread!.Days, strip.Spread.Heat!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Empty(strip.Findings);
    }

    [Fact]
    public void Of_SoilTemperature_IsUsedInsteadOfAir()
    {
        var cold = TemperatureSeries.Of("weather.csv", [.. SmallTrial.Warm(20).Days.Select(day => day with { Maximum = Temperature.FromDegreesFahrenheit(60) })]);
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, Daily)],
            Weather = cold,
            SoilTemperature = SmallTrial.Warm(20),
        });

        var strip = Assert.Single(EmergenceTiming.Of(trial));

        Assert.Equal(20 * strip.T50!.Days, strip.T50.Heat!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Contains("soil-temperature-used", Ids(strip));
    }

    [Fact]
    public void Of_WeatherThatEndsEarly_GivesHeatAsFarAsItGoes()
    {
        // The last visit comes first after planting, but T90 lies beyond it.
        var strip = Assert.Single(Of(
            [SmallTrial.Spot(SmallTrial.First, "a", 100, (6, 0), (7, 2), (8, 6), (9, 14), (10, 26), (11, 41))],
            SmallTrial.Warm(11)));

        Assert.NotNull(strip.T10!.Heat);
        Assert.Null(strip.T90!.Heat);
        Assert.Null(strip.Spread!.Heat);
        Assert.Contains("heat-not-on-record", Ids(strip));
    }

    [Fact]
    public void Of_VisitOnThePlantingDay_OpensNoInterval()
    {
        var with = One(40, [(0, 0), .. Daily]);

        Assert.Equal(One(40, Daily).Fit, with.Fit);
    }

    [Fact]
    public void Of_OtherOrderAndSpotNames_ChangesNothing() =>
        Gen.Select(Gen.Int[0, 6].Array[6].Array[1, 4], Gen.Shuffle(Enumerable.Range(0, 4).ToArray())).Sample((newlyUp, order) =>
        {
            EmergenceSpot Spot(string name, int[] counts)
            {
                var up = 0;
                return SmallTrial.Spot(SmallTrial.First, name, 37, [.. counts.Select((count, i) => (6.0 + i, up += count))]);
            }

            var one = Assert.Single(Of([.. newlyUp.Select((counts, i) => Spot($"{i}", counts))]));
            var other = Assert.Single(Of([.. order.Where(i => i < newlyUp.Length).Select(i => Spot($"spot {9 - i}", newlyUp[i]))]));

            Assert.Equal(one.Fit, other.Fit);
            Assert.Equal(one.T90, other.T90);
            Assert.Equal(one.Curve, other.Curve);
            Assert.Equal(one.PercentWithin24Hours, other.PercentWithin24Hours);
            Assert.Equal(Ids(one).Order(), Ids(other).Order());
        });

    [Fact]
    public void Of_RowInOtherUnits_ChangesNothing() =>
        Gen.Double[10, 60].Sample(feet =>
        {
            var spot = SmallTrial.Spot(SmallTrial.First, "a", seeds: null, Daily);
            var one = Assert.Single(Of([spot with { Row = Length.FromFeet(feet) }]));
            var other = Assert.Single(Of([spot with { Row = Length.FromMeters(Length.FromFeet(feet).Meters) }]));

            Assert.Equal(one.SeedsSown!.Value, other.SeedsSown!.Value, Tolerances.ClosedForm);
            Assert.Equal(one.T50!.Days, other.T50!.Days, Tolerances.Maximised);
        });

    private static StripEmergence One(int? seeds, params (double, int)[] visits) =>
        Assert.Single(Of([SmallTrial.Spot(SmallTrial.First, "a", seeds, visits)]));

    private static ImmutableArray<StripEmergence> Of(EmergenceSpot[] spots, TemperatureSeries? weather = null) =>
        EmergenceTiming.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [.. spots], Weather = weather }));

    private static double Index(StripEmergence strip, string id) => strip.Indices.Single(index => index.Id == id).Value!.Value;

    private static IEnumerable<string> Ids(StripEmergence strip) => strip.Findings.Select(finding => finding.Id);
}
