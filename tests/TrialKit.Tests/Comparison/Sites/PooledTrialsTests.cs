using TrialKit.Comparison;
using TrialKit.Export;
using TrialKit.Quantities;
using TrialKit.Tests.Numerics;

namespace TrialKit.Tests.Comparison.Sites;

/// <summary>Whole trials put together.</summary>
public class PooledTrialsTests
{
    [Fact]
    public void Of_ThreeTrials_GivesTablesOfNumbersOnly()
    {
        var pooled = PooledTrials.Of([Site("north", 1), Site("south", 2), Site("east", 0.5)]);
        var tables = PoolTables.Of(pooled);

        FiniteTables.Check(tables, "three trials");
        Assert.Equal(["pooled", "sites", "mixed-model", "methods"], tables.Select(table => table.Name).Where(name => name != "findings"));
        Assert.Equal(3, Assert.Single(pooled.Comparisons).Sites.Length);
    }

    [Fact]
    public void Of_SeveralTreatments_AdjustsForAllComparisonsOfAMeasureAndCountsThem()
    {
        var pooled = PooledTrials.Of([Blocks("north", 0), Blocks("south", 0.3), Blocks("east", -0.2)]);

        Assert.Equal(3, pooled.Comparisons.Length);
        Assert.All(pooled.Comparisons, comparison =>
        {
            Close.Relative(Math.Min(1, 3 * comparison.Reml.Estimate.PTwoSided.Value), comparison.P.Value, Tolerances.ClosedForm, "p");
            Assert.Equal(comparison.Verdict == Verdict.Shown, !comparison.Interval.Holds(0));
            Assert.Equal(pooled.Level, comparison.Interval.Level);
        });
        Assert.Contains(pooled.Comparisons, comparison => comparison.Reml.Estimate.PTwoSided.Value < 0.1 && comparison.Verdict == Verdict.NotShown);
        Assert.StartsWith("3 comparisons of one measure were tested", Assert.Single(pooled.Findings, finding => finding.Id == "tests-run").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_SameTrialsTwice_WritesTheSameBytes() => Assert.Equal(Written(), Written());

    [Fact]
    public void Mismatches_OtherControl_NamesTheSiteAndBothControls()
    {
        var other = ComparisonTrial.Blocks([1, 2, 3, 2, 4, 5], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 0, 1], ["bare", "new"], control: 0);

        var mismatch = Assert.Single(PooledTrials.Mismatches([Site("north", 1), PooledSite.Of("south", TrialAnalysis.Of(other))]));

        Assert.Contains("south: the control is 'bare' where north has 'none'", mismatch, StringComparison.Ordinal);
    }

    [Fact]
    public void Mismatches_OtherUnits_NamesTheSite()
    {
        var mismatches = PooledTrials.Mismatches([PooledSite.Of("north", TrialAnalysisTests.Example("drag-chains")), PooledSite.Of("south", TrialAnalysisTests.Example("closing-wheels"))]);

        Assert.Contains(mismatches, mismatch => mismatch.StartsWith("south: prints metric units where north prints us", StringComparison.Ordinal));
    }

    [Fact]
    public void Mismatches_OneTrialOrOneNameTwice_IsSaid()
    {
        Assert.Contains("only north", Assert.Single(PooledTrials.Mismatches([Site("north", 1)])), StringComparison.Ordinal);
        Assert.Contains("north: the name is there twice", Assert.Single(PooledTrials.Mismatches([Site("north", 1), Site("north", 2)])), StringComparison.Ordinal);
        Assert.Contains("two trials", Assert.Single(PooledTrials.Mismatches([])), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TrialsThatDoNotFit_IsRefusedWithTheReasons()
    {
        var error = Assert.Throws<ArgumentException>(() => PooledTrials.Of([Site("north", 1)]));

        Assert.Contains("only north", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OtherLevelAndASiteWithoutAnEstimate_IsSaid()
    {
        var one = PooledSite.Of("west", TrialAnalysis.Of(ComparisonTrial.Pairs([1], [0], alpha: 0.05)));
        var pooled = PooledTrials.Of([Site("north", 1), Site("south", 2), one]);

        Assert.Equal(default(ConfidenceLevel), pooled.Level);
        Assert.Contains(pooled.AllFindings, finding => finding.Id == "pool-other-level" && finding.Where == "west");
        Assert.Contains(pooled.AllFindings, finding => finding.Id == "sites-without-estimate");
    }

    private static PooledSite Site(string name, double difference) => PooledSite.Of(
        name,
        TrialAnalysis.Of(ComparisonTrial.Pairs([10 + difference, 12.5 + difference, 9 + difference, 11.2 + difference, 10.4 + difference], [10.2, 12, 9.1, 11, 10.8])));

    private static PooledSite Blocks(string name, double shift)
    {
        double[] effects = [0, 1 + shift, 0.55 - shift, 0.1];
        double[] noise = [0.2, -0.3, 0.1, 0.0, -0.2, 0.3, 0.1, -0.1, 0.05, 0.15, -0.25, 0.2];
        int[] strips = [.. Enumerable.Range(0, 12)];
        return PooledSite.Of(name, TrialAnalysis.Of(ComparisonTrial.Blocks([.. strips.Select(strip => 10 + (strip / 4) + effects[strip % 4] + noise[strip])], [.. strips.Select(strip => strip / 4)], [.. strips.Select(strip => strip % 4)], ["none", "a", "b", "c"], control: 0)));
    }

    private static byte[] Written()
    {
        using var stream = new MemoryStream();
        JsonResult.Write(PooledTrials.Of([Site("north", 1), Site("south", 2)]), [("north/trial.toml", "00")], stream);
        return stream.ToArray();
    }
}
