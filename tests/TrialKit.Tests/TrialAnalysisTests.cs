using TrialKit.Comparison;
using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Results;

namespace TrialKit.Tests;

/// <summary>The whole analysis on the example trials, whose truth is known.</summary>
public class TrialAnalysisTests
{
    public static TheoryData<string> Examples => ["drag-chains", "starter-placement", "closing-wheels"];

    internal static TrialAnalysis Example(string name) =>
        TrialAnalysis.Of(TrialReader.Read(Path.Combine(ReferenceData.Repository, "example-trials", name)).Trial!);

    [Fact]
    public void Money_SeveralComparisons_SaysForHowManyTheIntervalHolds()
    {
        Assert.All(Example("starter-placement").Money, budget => Assert.Equal(2, budget.Response!.Comparisons));
        Assert.All(Example("drag-chains").Money, budget => Assert.Equal(1, budget.Response!.Comparisons));
    }

    [Fact]
    public void Of_DragChains_ShowsWhatIsTrueAndNoMore()
    {
        var analysis = Example("drag-chains");

        Assert.Equal(Verdict.Shown, One(analysis, "t50").Verdict);
        Assert.Equal(Verdict.Shown, One(analysis, "spread").Verdict);
        Assert.Equal(Verdict.NotShown, One(analysis, "stand").Verdict);
        Assert.True(One(analysis, "t50").Interval!.Value.Holds(-0.35));
        Assert.True(One(analysis, "spread").Interval!.Value.Holds(-0.98));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_EveryMeasureHasOneValueAStripAndAUniqueId(string name)
    {
        var analysis = Example(name);

        Assert.Equal(analysis.Measures.Length, analysis.Measures.Select(measure => measure.Measure.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(analysis.Measures, measure => Assert.Equal(analysis.Trial.Strips, measure.Values.Values.Select(entry => entry.Strip)));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_VerdictIntervalAndPAgree(string name) => Assert.All(
        Example(name).Measures.SelectMany(measure => measure.Contrasts).Where(contrast => contrast.Interval is not null),
        contrast => Assert.Equal(contrast.Verdict == Verdict.Shown, !contrast.Interval!.Value.Holds(0)));

    [Fact]
    public void Of_StripLeftOut_IsSummarisedSaidAndNotCompared()
    {
        var analysis = Example("closing-wheels");
        var strip = analysis.Trial.Strips.Single(candidate => !candidate.IsAnalysed);

        Assert.Contains(analysis.Strips.Stands, stand => stand.Strip == strip);
        Assert.Contains(analysis.Findings, finding => finding.Id == "strip-left-out" && finding.Where == strip.Name);
        Assert.All(analysis.Measures, measure => Assert.DoesNotContain(measure.Blocks?.Residuals ?? [], entry => entry.Strip == strip));
    }

    [Fact]
    public void Of_MetricTrial_PrintsMetricUnits() =>
        Assert.Equal(Unit.PlantsPerHectare, Example("closing-wheels").Measures.Single(measure => measure.Measure.Id == "stand").Measure.Unit);

    [Fact]
    public void Of_Blocks_AreJudgedByDunnettAgainstTheControl() => Assert.All(
        Example("closing-wheels").Measures.SelectMany(measure => measure.Contrasts),
        contrast => Assert.StartsWith("Dunnett", contrast.JudgedBy.Name, StringComparison.Ordinal));

    [Fact]
    public void Of_SoilTemperature_IsUsedInsteadOfAirAndSaid()
    {
        var analysis = Example("closing-wheels");

        Assert.True(analysis.Heat!.IsSoil);
        Assert.Contains(analysis.AllFindings, finding => finding.Id == "soil-temperature-used");
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Tables_OfAnExample_HoldOnlyFiniteNumbersUnderUniqueNames(string name)
    {
        var tables = ResultTables.Of(Example(name));

        Assert.Equal(tables.Length, tables.Select(table => table.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(tables, table =>
        {
            Assert.Equal(table.Columns.Length, table.Columns.Select(column => column.Name).Distinct(StringComparer.Ordinal).Count());
            Assert.All(table.Rows, row => Assert.Equal(table.Columns.Length, row.Length));
            Assert.All(table.Rows.SelectMany(row => row).OfType<double>(), number => Assert.True(double.IsFinite(number), $"{table.Name} holds {number}"));
        });
    }

    private static Contrast One(TrialAnalysis analysis, string id) => analysis.Measures.Single(measure => measure.Measure.Id == id).Contrasts.Single();
}
