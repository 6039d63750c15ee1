using TrialKit.Comparison;
using TrialKit.Ingest;

namespace TrialKit.Tests.Examples;

/// <summary>The three farms that are pooled: as committed, read without a problem, and what they show together.</summary>
public class ThreeFarmsTests
{
    public static TheoryData<string> Names => [.. ThreeFarms.Plans.Select(plan => plan.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Farm_AsCommitted_IsWhatTheGeneratorWrites(string name) => CommittedExample.Check(ThreeFarms.Plans.Single(plan => plan.Name == name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Read_Farm_HoldsThePlanAndNoProblem(string name)
    {
        var plan = ThreeFarms.Plans.Single(candidate => candidate.Name == name);
        var reading = TrialReader.Read(ExampleTrialWriter.FolderOf(plan));

        Assert.Empty(reading.Problems);
        Assert.Equal((plan.Blocks, plan.Planted), (reading.Trial!.Blocks.Length, reading.Trial.Planting.Date));
        Assert.Equal("none", reading.Trial.Design.Control?.Name);
    }

    [Fact]
    public void Pool_ThreeFarms_HoldsTheMeanTruthInEveryRange()
    {
        var pooled = PooledTrials.Of([.. ThreeFarms.Plans.Select(plan => PooledSite.Of(plan.Name, TrialAnalysis.Of(TrialReader.Read(ExampleTrialWriter.FolderOf(plan)).Trial!)))]);
        var yield = pooled.Comparisons.Single(comparison => comparison.Measure.Id == "yield");
        var truth = ThreeFarms.Plans.Average(plan => plan.Treatments[1].Yield - plan.Treatments[0].Yield);

        Assert.Equal(3, yield.Sites.Length);
        Assert.True(yield.Interval.Holds(truth), $"{yield.Interval} was to hold {truth}");
        Assert.NotEqual(Verdict.NotJudged, yield.Verdict);
    }
}
