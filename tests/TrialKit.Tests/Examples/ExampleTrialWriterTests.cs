using System.Globalization;
using CsCheck;

namespace TrialKit.Tests.Examples;

/// <summary>The committed example trials are what the seeded generator writes.</summary>
/// <remarks>
/// To write them anew after a change of a plan, run <c>Examples_AsCommitted_AreWhatTheGeneratorWrites</c> with the environment variable
/// <c>TRIALKIT_REWRITE=1</c>, look at the difference, and commit it together with the plan.
/// </remarks>
public class ExampleTrialWriterTests
{
    private static readonly ExamplePlan[] Plans = [DragChains.Plan, StarterPlacement.Plan, ClosingWheels.Plan];

    public static TheoryData<string> Names => [.. Plans.Select(plan => plan.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Examples_AsCommitted_AreWhatTheGeneratorWrites(string name) => CommittedExample.Check(PlanOf(name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_SameSeed_GivesTheSameBytes(string name) =>
        Assert.Equal(ExampleTrialWriter.Write(PlanOf(name)), ExampleTrialWriter.Write(PlanOf(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_AnySeed_ListsThePlantsThatTheVisitsCounted(string name) =>
        Gen.ULong.Sample(
            seed =>
            {
                var files = ExampleTrialWriter.Write(PlanOf(name) with { Seed = seed });
                var listed = Rows(files["plants.csv"])
                    .GroupBy(row => (row["strip"], row["spot"]))
                    .ToDictionary(spot => spot.Key, spot => (Seen: spot.Count(), Died: spot.Count(row => row["note"] == "died")));
                foreach (var spot in Rows(files["emergence.csv"]).GroupBy(row => (row["strip"], row["spot"])))
                {
                    var last = spot.First().ContainsKey("new_plants") ? spot.Sum(row => Whole(row["new_plants"])) : Whole(spot.Last()["plants"]);
                    var (seen, died) = listed[spot.Key];
                    Assert.InRange(last, seen - died, seen);
                }
            },
            iter: 5);

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_AnySeed_HoldsEachTreatmentOnceInABlock(string name) =>
        Gen.ULong.Sample(
            seed =>
            {
                var plan = PlanOf(name) with { Seed = seed };
                var strips = Rows(ExampleTrialWriter.Write(plan)["strips.csv"]).ToArray();
                Assert.Equal((plan.Blocks * plan.Treatments.Count) - plan.Troubles.Count(trouble => trouble.LeftOut is null), strips.Length);
                Assert.Distinct(strips.Select(row => (row["block"], row["treatment"])));
                Assert.Distinct(strips.Select(row => row["strip"]));
                Assert.Equal(Enumerable.Range(1, strips.Length), strips.Select(row => Whole(row["order"])));
            },
            iter: 20);

    [Theory]
    [MemberData(nameof(Names))]
    public void Draw_ManySeeds_FollowTheTruthOfTheirStrip(string name)
    {
        const int Seeds = 20000;
        var plan = PlanOf(name);
        var truth = plan.Treatments[^1];
        var strip = new StripTruth("S", 1, truth, 1, plan.Planted, plan.StripLength, truth.Share, truth.MedianDays, truth.Steepness, truth.Yield, plan.Field.Moisture, plan.Field.Depth, LeftOut: null);
        var up = SpotLottery.Draw(plan, strip, Seeds, new(plan.Seed)).Where(seed => double.IsFinite(seed.UpAt)).Select(seed => seed.UpAt).ToArray();

        AssertShare(truth.Share, up.Length, Seeds);
        AssertShare(0.5, up.Count(time => time <= truth.MedianDays), up.Length);
        AssertShare(0.9, up.Count(time => time <= truth.MedianDays * Math.Pow(9, 1 / truth.Steepness)), up.Length);
    }

    [Fact]
    public void SpreadDays_OfDragChains_IsNarrowerThanOfTheControl()
    {
        var (none, chains) = (DragChains.Plan.Treatments[0], DragChains.Plan.Treatments[1]);
        Assert.True(chains.SpreadDays < none.SpreadDays, "the chains' example is told as one in which the spread is truly narrower");
    }

    private static void AssertShare(double expected, int found, int of)
    {
        var error = Math.Sqrt(expected * (1 - expected) / of);
        Assert.InRange((double)found / of, expected - (Tolerances.SamplingErrors * error), expected + (Tolerances.SamplingErrors * error));
    }

    private static ExamplePlan PlanOf(string name) => Plans.Single(plan => plan.Name == name);

    private static int Whole(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);

    private static IEnumerable<Dictionary<string, string>> Rows(string csv)
    {
        var lines = csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#').ToArray();
        var header = lines[0].Split(',');
        return lines.Skip(1).Select(line => header.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
    }
}
