using TrialKit.Ingest;
using TrialKit.Trials;

namespace TrialKit.Tests.Examples;

/// <summary>The committed example trials are read without an error, and hold what their plans say.</summary>
public class ExampleTrialsTests
{
    private static readonly ExamplePlan[] Plans = [DragChains.Plan, StarterPlacement.Plan, ClosingWheels.Plan];

    public static TheoryData<string> Names => [.. Plans.Select(plan => plan.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Read_Example_FindsNoErrorAndOnlyFallingCountsToWarnOf(string name)
    {
        var reading = TrialReader.Read(ExampleTrialWriter.FolderOf(PlanOf(name)));
        Assert.NotNull(reading.Trial);
        Assert.All(reading.Problems, problem => Assert.True(problem.Code == "TK334", $"{name}: {problem}"));
        Assert.Equal(PlanOf(name).Field.Deaths > 0, reading.Problems.Count > 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Read_Example_HoldsThePlan(string name)
    {
        var plan = PlanOf(name);
        var trial = TrialReader.Read(ExampleTrialWriter.FolderOf(plan)).Trial!;
        Assert.Equal(plan.Planted, trial.Planting.Date);
        Assert.Equal(plan.Treatments.Select(treatment => treatment.Name), trial.Treatments.Select(treatment => treatment.Name));
        Assert.Equal(plan.Treatments[0].Name, trial.Design.Control?.Name);
        Assert.Equal(plan.Treatments.Count == 2 ? Layout.Pairs : Layout.Blocks, trial.Design.Layout);
        Assert.Equal(plan.Blocks, trial.Blocks.Length);
        Assert.Equal(trial.Strips.Length * plan.FlaggedSpots.Count, trial.Emergence.Length);
        Assert.Equal(trial.Strips.Length * plan.StandSpots, trial.StandCounts.Length);
        Assert.Equal(trial.Strips.Length, trial.Harvests.Length);
        Assert.All(trial.Emergence, spot => Assert.Equal(plan.VisitDays.Count, spot.Visits.Length));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Read_Example_SeedingRateGivesTheSeedsOfASpot(string name)
    {
        var plan = PlanOf(name);
        var planting = TrialReader.Read(ExampleTrialWriter.FolderOf(plan)).Trial!.Planting;
        var row = plan.Units == ExampleUnits.Metric ? UnitsNet.Length.FromMeters(plan.SpotLength) : UnitsNet.Length.FromFeet(plan.SpotLength);
        Assert.Equal(plan.SpotSeeds, Math.Round(planting.Seeds!.Value.SeedsAlong(row, planting.RowSpacing)));
    }

    private static ExamplePlan PlanOf(string name) => Plans.Single(plan => plan.Name == name);
}
