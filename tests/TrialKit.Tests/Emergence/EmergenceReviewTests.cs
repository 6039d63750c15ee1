using System.Collections.Immutable;
using CsCheck;
using TrialKit.Emergence;
using TrialKit.Export;
using TrialKit.Numerics;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

public class EmergenceReviewTests
{
    private const int Pairs = 5;

    [Fact]
    public void Tests_TreatmentAWholeDaySooner_AgreeOnItAndTheSmallestP()
    {
        var test = Assert.Single(Review(sooner: 1).Tests);

        Assert.Equal(["seeds sown", "plants up"], test.Scores.Select(score => score.Of));
        Assert.All(test.Scores, score =>
        {
            // In every pair the treated strip is sooner: of 2^5 exchanges only this and its mirror are as far from none.
            Assert.True(score.Statistic > 0);
            Assert.True(score.IsExact);
            Assert.Equal(2.0 / 32, score.P!.Value.Value, Tolerances.ExactCount);
            Assert.Equal(score.SmallestP, score.P.Value);
        });
        Assert.True(test.Pooled!.IntervalAt(default)!.Value.High < 1);
        Assert.Equal(Pairs - 1, test.Pooled.LogRatio.DegreesOfFreedom);
    }

    [Fact]
    public void Tests_TreatmentsExchanged_TurnTheSign()
    {
        var trial = Trial(sooner: 0.3);
        var strips = EmergenceTiming.Of(trial);

        var one = TimeTest.Of(SmallTrial.Other, SmallTrial.Control, strips);
        var other = TimeTest.Of(SmallTrial.Control, SmallTrial.Other, strips);

        Assert.Equal(one.Pooled!.LogRatio.Value, -other.Pooled!.LogRatio.Value, Tolerances.Maximised);
        Assert.Equal(one.Pooled.LogRatio.StandardError, other.Pooled.LogRatio.StandardError, Tolerances.RefittedError);
        Assert.Equal(one.Scores[0].Statistic, -other.Scores[0].Statistic, Tolerances.ClosedForm);
        Assert.Equal(one.Scores[0].P, other.Scores[0].P);
    }

    [Fact]
    public void Tests_StripsCountedTwice_KeepTheStripErrorAndShrinkTheSeedError()
    {
        // Each seed with a twin at its side: strips know no more of treatments.
        var one = TimeTest.Of(SmallTrial.Other, SmallTrial.Control, EmergenceTiming.Of(Trial(sooner: 0.3))).Pooled!;
        var twice = TimeTest.Of(SmallTrial.Other, SmallTrial.Control, EmergenceTiming.Of(Trial(sooner: 0.3, spots: 2))).Pooled!;

        Assert.Equal(one.LogRatio.Value, twice.LogRatio.Value, Tolerances.Maximised);
        Assert.Equal(one.LogRatio.StandardError, twice.LogRatio.StandardError, Tolerances.RefittedError);
        Assert.Equal(one.SeedStandardError!.Value / Math.Sqrt(2), twice.SeedStandardError!.Value, Tolerances.RefittedError);
    }

    [Fact]
    public void Tests_OnePair_HasNoPooledRatio()
    {
        var test = Assert.Single(Review(sooner: 1, pairs: 1).Tests);

        Assert.Null(test.Pooled);
        Assert.Equal(1, test.Scores[0].SmallestP.Value);
    }

    [Fact]
    public void Treatments_Strips_GiveMeansWithTheSpreadBetweenThem()
    {
        var trial = Trial(sooner: 1);
        var strips = EmergenceTiming.Of(trial);
        var review = Review(sooner: 1);
        var own = strips.Where(strip => strip.Strip.Treatment.Name == SmallTrial.Other.Name).Select(strip => strip.T50!.Days).ToArray();

        var time = review.Treatments.Single(treatment => treatment.Treatment == SmallTrial.Other).Times.Single(time => time.Id == "t50");

        Assert.Equal(Summary.Mean(own), time.Mean!.Value, Tolerances.ClosedForm);
        Assert.Equal(Summary.StandardDeviation(own) / Math.Sqrt(Pairs), time.ByStrips!.StandardError, Tolerances.ClosedForm);
        Assert.True(time.PooledInterval!.Value.Holds(time.Pooled!.Value));
    }

    [Fact]
    public void Treatments_ShareNotReachedInAStrip_HasNoMeanOverTheOthers()
    {
        var review = Review(sooner: 1);
        var late = review.Treatments[0].Times.Single(time => time.Id == "t90-sown");

        Assert.True(late.Strips < Pairs);
        Assert.Null(late.Mean);
        Assert.Null(late.ByStrips);
    }

    [Fact]
    public void Treatments_DailyVisits_AreUndefinedWhereverTheCountsRise()
    {
        var stretches = Review(sooner: 0, pairs: 1).Treatments[0].Undefined;

        Assert.All(stretches, stretch => Assert.Equal(1, stretch.ToDays - stretch.FromDays, Tolerances.ClosedForm));
        Assert.All(stretches.Zip(stretches.Skip(1)), step => Assert.Equal(step.First.HighShare, step.Second.LowShare, Tolerances.Mass));
        Assert.Equal(35.0 / 40, stretches[^1].HighShare, Tolerances.Mass);
    }

    [Fact]
    public void Of_SeedsUnknownInAStrip_TestsThePlantsUpOnly()
    {
        var trial = Trial(sooner: 0.3);
        var spots = trial.Emergence.ToArray();
        spots[0] = spots[0] with { Seeds = null };
        var strips = EmergenceTiming.Of(StripTrial.Create(SmallTrial.Draft with { Strips = trial.Strips, Emergence = [.. spots], Planting = SmallTrial.Draft.Planting with { Seeds = null } }));

        var test = TimeTest.Of(SmallTrial.Other, SmallTrial.Control, strips);

        Assert.Equal("plants up", Assert.Single(test.Scores).Of);
        Assert.NotNull(test.Pooled);
    }

    [Fact]
    public void Of_NothingUpInATreatment_GivesNoTimesAndDoesNotThrow()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence =
            [
                SmallTrial.Spot(SmallTrial.First, "a", 40, (6, 0), (8, 0)),
                SmallTrial.Spot(SmallTrial.Second, "a", 40, (6, 0), (8, 10), (9, 20), (10, 25), (11, 30)),
            ],
        });

        var review = TrialAnalysis.Of(trial).Emergence!;

        Assert.All(review.Treatments[0].Times, time => Assert.Null(time.Pooled));
        Assert.Empty(review.Treatments[0].Undefined);
    }

    [Fact]
    public void Of_AnyVisitsAndCounts_NeverThrowsAndGivesFiniteNumbers() =>
        // Seeds of 17 stand for unknown; fewer would break the rule of four plants to a seed.
        Gen.Select(Gen.Int[0, 12].Array[2, 6].Array[4], Gen.Double[0.2, 4].Array[6], Gen.Int[17, 50], Gen.Bool).Sample((counts, steps, seeds, falls) =>
        {
            var strips = Enumerable.Range(0, 4).Select(i => SmallTrial.Strip(FormattableString.Invariant($"{i}"), i % 2 == 0 ? SmallTrial.Control : SmallTrial.Other, i + 1) with { Block = FormattableString.Invariant($"{i / 2}") }).ToImmutableArray();
            var spots = counts.Select((plants, i) =>
            {
                var (day, up) = (4.0, 0);
                return SmallTrial.Spot(strips[i], "a", seeds == 17 ? null : seeds, [.. plants.Select((count, visit) => (day += steps[visit], up = falls ? count : up + count))]);
            }).ToImmutableArray();

            var analysis = TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with { Strips = strips, Emergence = spots, Planting = SmallTrial.Draft.Planting with { Seeds = null } }));

            Assert.All(analysis.Emergence!.Treatments.SelectMany(treatment => treatment.Times), time => Assert.True((time.Mean is null || double.IsFinite(time.Mean.Value)) && (time.Pooled is null || double.IsFinite(time.Pooled.Value)), time.ToString()));
            Assert.All(ResultTables.Of(analysis).SelectMany(table => table.Rows.SelectMany(row => row.Zip(table.Columns, (cell, column) => (table.Name, Column: column.Name, Cell: cell)))), at => Assert.True(at.Cell is not double cell || double.IsFinite(cell), at.ToString()));
        }, iter: 200);

    private static EmergenceReview Review(double sooner, int pairs = Pairs)
    {
        var trial = Trial(sooner, pairs);
        return EmergenceReview.Of(trial, EmergenceTiming.Of(trial), [(SmallTrial.Other, SmallTrial.Control)])!;
    }

    // The same plants in every strip, at visits that are earlier with the treatment and a little later from pair to pair.
    private static StripTrial Trial(double sooner, int pairs = Pairs, int spots = 1)
    {
        (double Day, int Plants)[] visits = [(5, 0), (6, 0), (7, 2), (8, 10), (9, 22), (10, 28), (11, 32), (12, 34), (13, 34), (14, 35)];
        var strips = ImmutableArray.CreateBuilder<Strip>();
        var watched = ImmutableArray.CreateBuilder<EmergenceSpot>();
        for (var pair = 0; pair < pairs; pair++)
        {
            foreach (var treatment in new[] { SmallTrial.Control, SmallTrial.Other })
            {
                var strip = SmallTrial.Strip(FormattableString.Invariant($"{treatment.Name}{pair}"), treatment, strips.Count + 1) with { Block = FormattableString.Invariant($"{pair}") };
                var shift = (0.1 * pair) - (treatment == SmallTrial.Other ? sooner * (1 + (0.05 * (pair % 3))) : 0);
                strips.Add(strip);
                watched.AddRange(Enumerable.Range(0, spots).Select(spot => SmallTrial.Spot(strip, FormattableString.Invariant($"{spot}"), 40, [.. visits.Select(visit => (visit.Day + shift, visit.Plants))])));
            }
        }

        return StripTrial.Create(SmallTrial.Draft with { Strips = strips.ToImmutable(), Emergence = watched.ToImmutable() });
    }
}
