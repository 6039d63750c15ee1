using System.Collections.Concurrent;
using TrialKit.Comparison;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Sheets.Teaching.Explained;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>The working of a real trial ends in the figures of its analysis.</summary>
public class WorkedComparisonTests
{
    // Both ways are sums of a few dozen numbers; the critical value of Dunnett's test is searched for to nine figures.
    private const double Relative = 1e-8;
    private const double SmallestP = 1e-3;

    private static readonly ConcurrentDictionary<string, TrialAnalysis> Analyses = new(StringComparer.Ordinal);

    public static TheoryData<string> Examples() => ["closing-wheels", "drag-chains", "starter-placement"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Steps_OfEveryHeadline_EndWhereTheAnalysisDoes(string example)
    {
        var analysis = Analysis(example);
        var worked = 0;
        foreach (var measure in analysis.Measures.Where(measure => measure.Measure.IsHeadline))
        {
            foreach (var contrast in measure.Contrasts.Where(contrast => contrast.Estimate is not null))
            {
                var steps = Steps(analysis, measure, contrast).ToDictionary(step => step.Id, step => step.Value, StringComparer.Ordinal);
                var where = $"{example}, {measure.Measure.Id}";
                var error = contrast.Estimate!.StandardError;
                Near(contrast.Difference, steps.TryGetValue("mean", out var mean) ? mean : steps["difference"], error, where);
                Near(error, steps["error"], error, where);
                Near(contrast.Estimate.T, steps["t"], 1, where);
                Near(contrast.P!.Value.Value, steps["p"], SmallestP, where);
                Near(contrast.Interval!.Value.Low, steps["low"], error, where);
                Near(contrast.Interval.Value.High, steps["high"], error, where);
                worked++;
            }
        }

        Assert.True(worked > 3, $"{example}: only {worked} comparisons were worked.");
    }

    [Theory]
    [InlineData("closing-wheels")]
    [InlineData("starter-placement")]
    public void AnovaSteps_OfCompleteBlocks_EndWhereTheAnalysisDoes(string example)
    {
        var analysis = Analysis(example);
        foreach (var measure in analysis.Measures.Where(measure => measure.Blocks is not null))
        {
            var blocks = new WorkedBlocks(measure, measure.Blocks!, analysis.Trial.Design.Level);
            var steps = blocks.AnovaSteps().ToDictionary(step => step.Id, step => step.Value, StringComparer.Ordinal);
            Assert.Equal(blocks.IsComplete, steps.Count > 0);
            if (blocks.IsComplete && measure.Blocks!.Anova.Treatments is { F: { } f, P: { } p })
            {
                Near(f, steps["f"], 1, measure.Measure.Id);
                Near(p.Value, steps["p-f"], SmallestP, measure.Measure.Id);
                Near(measure.Blocks.Anova.Error.SumOfSquares, steps["ss-error"], 0, measure.Measure.Id);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_AMeasure_PrintsTheAnalysisLastFigures(string example)
    {
        var analysis = Analysis(example);
        foreach (var measure in analysis.Measures.Where(measure => !measure.Contrasts.IsEmpty))
        {
            var text = SheetText.Of(WorkedComparison.Of(analysis, measure, PageSize.Letter, []));
            foreach (var contrast in measure.Contrasts)
            {
                Assert.Contains(MeasureText.Difference(measure.Measure, contrast.Difference), text, StringComparison.Ordinal);
                Assert.Contains(contrast.JudgedBy.Source, text, StringComparison.Ordinal);
                if (contrast.Interval is { } interval)
                {
                    Assert.Contains(MeasureText.Interval(measure.Measure, interval), text, StringComparison.Ordinal);
                    Assert.Contains(NumberText.PValue(contrast.P!.Value.Value), text, StringComparison.Ordinal);
                }
            }
        }
    }

    private static IReadOnlyList<WorkedStep> Steps(TrialAnalysis analysis, MeasureComparison measure, Contrast contrast) => measure.Pairs is { } pairs
        ? new WorkedPairs(measure, pairs, analysis.Trial.Design.Level).Steps()
        : new WorkedBlocks(measure, measure.Blocks!, analysis.Trial.Design.Level).Steps(contrast);

    // A difference may be zero; then it is held against its standard error, and t against 1.
    private static void Near(double expected, double found, double scale, string where) =>
        Assert.True(Math.Abs(expected - found) <= Relative * Math.Max(Math.Abs(expected), scale), $"{where}: the analysis has {expected}, the working {found}.");

    private static TrialAnalysis Analysis(string example) => Analyses.GetOrAdd(example, Read);

    private static TrialAnalysis Read(string example) => TrialAnalysis.Of(TrialReader.Read(Path.Combine(Repository.Root, "example-trials", example)).Trial!);
}
