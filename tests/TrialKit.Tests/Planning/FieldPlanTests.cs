using TrialKit.Numerics.Distributions;
using TrialKit.Planning;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Planning;

public class FieldPlanTests
{
    private const int Plans = 1000;
    private static readonly Length Touch = Length.FromMillimeters(1);

    public static TheoryData<string, int, FieldSpace> Layouts() => new()
    {
        { "pairs", 2, PlanTrial.Field },
        { "pairs in one pass", 2, PlanTrial.Field with { Share = StripShare.PlanterHalf } },
        { "three treatments", 3, PlanTrial.Field with { Replicates = 4 } },
        { "four treatments, two passes, tracks, border", 4, PlanTrial.Field with { Replicates = 5, PassesPerStrip = 2, BorderPasses = 1, TramlineSpacing = Length.FromFeet(120) } },
    };

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Draw_ThousandSeeds_EachTreatmentOnceInABlockAndNoneTiedToASide(string layout, int treatments, FieldSpace field)
    {
        var trial = PlanTrial.Of(treatments, field);
        for (var seed = 0; seed < Plans; seed++)
        {
            var plan = FieldPlan.Draw(trial, seed);
            var what = $"{layout}, seed {seed}";
            var blocks = plan.Strips.GroupBy(strip => strip.Strip.Block).ToArray();
            Assert.True(blocks.Length == field.Replicates, what);
            Assert.All(blocks, block => Assert.Equal(trial.Treatments.Select(treatment => treatment.Name).Order(), block.Select(strip => strip.Strip.Treatment.Name).Order()));
            Assert.True(blocks.Select(Order).Distinct().Count() > 1, $"{what}: one order in every block");
            Assert.Equal(Enumerable.Range(1, plan.Strips.Length), plan.Strips.Select(strip => strip.Strip.Order!.Value));
            Assert.True(plan.Strips.Zip(plan.Strips.Skip(1)).All(pair => pair.First.Left + pair.First.Width <= pair.Second.Left + Touch), $"{what}: strips overlap");
            if (field.Share == StripShare.PlanterHalf)
            {
                Assert.All(trial.Treatments, treatment => Assert.Equal(2, plan.Strips.Where(strip => strip.Strip.Treatment == treatment).Select(strip => strip.Half).Distinct().Count()));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Draw_ThousandSeeds_EachOrderIsAsFrequentAsTheOthers(string layout, int treatments, FieldSpace field)
    {
        var trial = PlanTrial.Of(treatments, field);

        // One block of each plan: its orders are independent from plan to plan.
        var counts = Enumerable.Range(0, Plans)
            .Select(seed => DrawnOrder(FieldPlan.Draw(trial, seed).Strips.Where(strip => strip.Strip.Block == "2")))
            .CountBy(order => order)
            .ToArray();
        var orders = Enumerable.Range(1, treatments).Aggregate(1, (product, factor) => product * factor);
        var expected = (double)Plans / orders;
        var statistic = counts.Sum(count => (count.Value - expected) * (count.Value - expected) / expected) + ((orders - counts.Length) * expected);

        var p = ChiSquare.UpperTail(statistic, orders - 1);
        Assert.True(p > 0.001, FormattableString.Invariant($"{layout}: chi-square {statistic}, {orders - 1} df, p {p}"));
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Draw_Spots_LieApartAwayFromEndsInTheSameRowsOfABlock(string layout, int treatments, FieldSpace field)
    {
        var trial = PlanTrial.Of(treatments, field);
        for (var seed = 0; seed < 200; seed++)
        {
            var plan = FieldPlan.Draw(trial, seed);
            var what = $"{layout}, seed {seed}";
            foreach (var strip in plan.Strips)
            {
                var spots = plan.Spots.Where(place => place.Spot.Strip == strip.Strip).ToArray();
                Assert.True(spots.Length == field.Spots, what);
                Assert.True(spots[0].Spot.FromStart >= field.EndMargin, what);
                Assert.True(spots[^1].Spot.FromStart + spots[^1].Spot.Row!.Value <= plan.Length - field.EndMargin, what);
                Assert.True(spots.Zip(spots.Skip(1)).All(pair => pair.First.Spot.FromStart + pair.First.Spot.Row!.Value <= pair.Second.Spot.FromStart), $"{what}: spots overlap");
                Assert.All(spots, place => Assert.InRange(place.Across.Meters, strip.Left.Meters, (strip.Left + strip.Width).Meters));
            }

            foreach (var block in plan.Spots.GroupBy(place => (place.Spot.Strip.Block, place.Spot.Name)))
            {
                var rows = field.Share == StripShare.PlanterHalf ? block.Select(place => (place.Spot.PlanterRow!.Value - 1) % 4) : block.Select(place => place.Spot.PlanterRow!.Value);
                Assert.True(rows.Distinct().Count() == 1, what);
            }
        }
    }

    [Fact]
    public void Draw_TheSameSeed_GivesTheSamePlanAndAnotherGivesAnother()
    {
        var trial = PlanTrial.Of(3, PlanTrial.Field);

        Assert.Equal(Told(FieldPlan.Draw(trial, 42)), Told(FieldPlan.Draw(trial, 42)));
        Assert.NotEqual(Told(FieldPlan.Draw(trial, 42)), Told(FieldPlan.Draw(trial, 43)));
    }

    [Fact]
    public void Draw_Seed42_IsThePlanItAlwaysWas()
    {
        var plan = FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field), 42);

        // Computed once and kept: a seed that is written down must go on meaning the same plan.
        Assert.Equal("t1 control t1 control control t1 control t1 control t1 control t1", string.Join(' ', plan.Strips.Select(strip => strip.Strip.Treatment.Name)));
        Assert.Equal([348.0, 395, 770, 905], plan.Spots.Take(4).Select(place => Math.Round(place.Spot.FromStart.Feet, 6)));
        Assert.Equal([6, 7, 6, 5], plan.Spots.Take(4).Select(place => place.Spot.PlanterRow!.Value));
    }

    [Fact]
    public void Draw_PlanterHalves_FollowTheTurnsOfThePlanter()
    {
        var plan = FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { Share = StripShare.PlanterHalf }), 7);

        foreach (var pass in plan.Strips.GroupBy(strip => strip.FirstPass))
        {
            var expected = pass.Key % 2 == 1 ? [PlanterSide.Left, PlanterSide.Right] : new[] { PlanterSide.Right, PlanterSide.Left };
            Assert.Equal(expected, pass.OrderBy(strip => strip.Left.Meters).Select(strip => strip.Half!.Value));
            Assert.Equal(10, pass.First().Width.Feet, Tolerances.ClosedForm);
        }
    }

    [Fact]
    public void Draw_SprayerTracks_CrossNoStrip()
    {
        var plan = FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { TramlineSpacing = Length.FromFeet(90) }), 1);

        Assert.NotEmpty(plan.Tramlines);
        Assert.All(plan.Strips, strip => Assert.DoesNotContain(plan.Tramlines, track => track.Left + Touch < strip.Left + strip.Width && strip.Left + Touch < track.Right));
        Assert.Contains(plan.Findings, finding => finding.Id == "block-split");
    }

    [Fact]
    public void Draw_ThreePairs_SaysThatTheExactTestCannotReachTheLevel()
    {
        Assert.Contains(FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { Replicates = 3 }), 1).Findings, finding => finding.Id == "few-replicates");
        Assert.DoesNotContain(FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field), 1).Findings, finding => finding.Id == "few-replicates");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Draw_StripsOfSeveralPasses_NameThePassThatIsCounted(int passes)
    {
        var plan = FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { PassesPerStrip = passes }), 1);

        foreach (var place in plan.Spots)
        {
            var strip = plan.Strips.Single(planned => planned.Strip == place.Spot.Strip);
            Assert.Equal(strip.FirstPass + ((passes - 1) / 2), place.Spot.Pass);
            Assert.InRange(place.Across.Feet, 20 * (place.Spot.Pass!.Value - 1), 20 * place.Spot.Pass.Value);
        }
    }

    [Theory]
    [InlineData(2, true)]
    [InlineData(3, false)]
    public void Draw_HalvesOfThePlanter_SaysWhereATreatmentStaysOnOneSideOfTheField(int passes, bool said)
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var plan = FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { Share = StripShare.PlanterHalf, Replicates = passes }), seed);
            var isLeft = plan.Strips[0].Strip.Treatment.Name == "t1";
            var finding = plan.Findings.SingleOrDefault(each => each.Id == "one-side");

            Assert.Equal(said, finding is not null);
            Assert.True(finding is null || finding.Message.Contains(isLeft ? "Treatment 1 lies left" : "Treatment 1 lies right", StringComparison.Ordinal), finding?.Message);
        }
    }

    public static TheoryData<string, int, FieldSpace?> Refusals() => new()
    {
        { "no-field", 2, null },
        { "field-incomplete", 2, PlanTrial.Field with { Length = null } },
        { "field-incomplete", 2, PlanTrial.Field with { PlanterRows = null } },
        { "field-incomplete", 2, PlanTrial.Field with { Replicates = null } },
        { "corner-incomplete", 2, PlanTrial.Field with { Bearing = 0 } },
        { "one-treatment", 1, PlanTrial.Field },
        { "one-block", 2, PlanTrial.Field with { Replicates = 1 } },
        { "side-fixed", 2, PlanTrial.Field with { Share = StripShare.PlanterHalf, SidesAreFixed = true } },
        { "half-needs-pairs", 3, PlanTrial.Field with { Share = StripShare.PlanterHalf } },
        { "half-needs-even-rows", 2, PlanTrial.Field with { Share = StripShare.PlanterHalf, PlanterRows = 7 } },
        { "half-is-one-pass", 2, PlanTrial.Field with { Share = StripShare.PlanterHalf, PassesPerStrip = 2 } },
        { "strip-too-short", 2, PlanTrial.Field with { Length = Length.FromFeet(150) } },
        { "field-too-narrow", 2, PlanTrial.Field with { Width = Length.FromFeet(239) } },
        { "tramlines-too-close", 2, PlanTrial.Field with { TramlineSpacing = Length.FromFeet(15) } },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Draw_WhatCannotBeAnalysedOrDoesNotFit_IsRefused(string id, int treatments, FieldSpace? field)
    {
        var refused = Assert.Throws<PlanRefusedException>(() => FieldPlan.Draw(PlanTrial.Of(treatments, field), 1));

        Assert.Contains(refused.Reasons, reason => reason.Id == id);
    }

    [Fact]
    public void Draw_FieldThatJustFits_IsDrawn() =>
        Assert.Equal(12, FieldPlan.Draw(PlanTrial.Of(2, PlanTrial.Field with { Width = Length.FromFeet(240) }), 1).Strips.Length);

    private static string Order(IEnumerable<PlannedStrip> block) => string.Join(' ', block.OrderBy(strip => strip.Left.Meters).Select(strip => strip.Strip.Treatment.Name));

    // In halves of the planter the lot falls on the half, not on the side of the field.
    private static string DrawnOrder(IEnumerable<PlannedStrip> block) =>
        string.Join(' ', block.OrderBy(strip => strip.Half).ThenBy(strip => strip.Left.Meters).Select(strip => strip.Strip.Treatment.Name));

    private static string Told(TrialPlan plan) => string.Join('\n', plan.Strips.Select(strip => $"{strip.Strip.Name} {strip.Strip.Treatment.Name} {strip.Left}").Concat(plan.Spots.Select(spot => $"{spot.Spot.Strip.Name} {spot.Spot.Name} {spot.Spot.FromStart} {spot.Spot.PlanterRow}")));
}
