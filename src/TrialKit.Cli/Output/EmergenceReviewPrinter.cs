using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Prints the checks of the comparison on time; times, indices, lags and places are in the written tables.</summary>
internal static class EmergenceReviewPrinter
{
    public static void Print(TrialAnalysis analysis, Terminal terminal)
    {
        if (analysis.Emergence is not { Tests.IsEmpty: false } review)
        {
            return;
        }

        var level = analysis.Trial.Design.Level;
        ConsoleTable.Print(
            terminal,
            "Time compared in two further ways",
            [new("Comparison"), new("Method"), new("Times as long", IsNumber: true), new($"{level} interval", IsNumber: true), new("p", IsNumber: true)],
            review.Tests.SelectMany(test => test.Scores
                .Select(score => (string[])[$"{test.Treatment.Label} less {test.Baseline.Label}", $"score, {score.Of}", NumberText.Dash, NumberText.Dash, NumberText.PValue(score.P?.Value)])
                .Concat(test.Pooled is { } pooled
                    ? [[$"{test.Treatment.Label} less {test.Baseline.Label}", "pooled curve", NumberText.Number(pooled.Ratio, 3), TimingText.Ratio(pooled.IntervalAt(level)), NumberText.PValue(pooled.LogRatio.PTwoSided.Value)]]
                    : [])));
    }
}
