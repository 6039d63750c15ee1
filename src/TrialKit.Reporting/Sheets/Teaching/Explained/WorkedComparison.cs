using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Sheets.Teaching.Explained;

/// <summary>The comparison of a real trial worked step by step, from strip values to interval and p.</summary>
public static class WorkedComparison
{
    // What is left of differences that are zero, beside values that are not.
    private const double Dust = 1e-12;

    /// <summary>The working of one measure as a document.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <param name="measure">One of its measures.</param>
    /// <param name="size">The sheet of paper.</param>
    /// <param name="inputs">The files the trial was read from.</param>
    public static ReportDocument Of(TrialAnalysis analysis, MeasureComparison measure, PageSize size, IReadOnlyList<ReportInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(inputs);
        return new(
            $"Worked step by step: {measure.Measure.Label}",
            $"{analysis.Trial.Title}: {measure.Measure.Label}, worked step by step",
            "en-US",
            size,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(inputs)),
            [
                new Heading(1, $"Worked step by step: {measure.Measure.Label}"),
                new KeyFacts([new("Trial", analysis.Trial.Title), new("Measure", MeasureText.Name(measure.Measure)), new("Layout", TrialWords.Layout(analysis.Trial))]),
                new Paragraph("Nothing is rounded on the way; seven figures of each number are shown."),
                new Heading(2, "The working"),
                .. Working(analysis, measure),
                new Heading(2, "What the analysis prints"),
                .. Printed(measure),
                new Heading(2, "Source"),
                new BulletList([.. measure.Contrasts.Select(contrast => contrast.JudgedBy).Distinct().Select(method => RichText.Of($"{method.Name}: {method.Source}"))]),
            ]);
    }

    /// <summary>A number in the working.</summary>
    internal static string Text(double value) => NumberText.Full(Math.Abs(value) < Dust ? 0 : value);

    /// <summary>Steps as a table.</summary>
    internal static Table Table(string caption, IReadOnlyList<WorkedStep> steps) => new(
        caption,
        [new("Step"), new("Working"), new("Value", Alignment: ColumnAlignment.Right)],
        [.. steps.Select(step => TableRow.Of(step.Label, step.Work, Text(step.Value)))]);

    private static IEnumerable<Block> Working(TrialAnalysis analysis, MeasureComparison measure) => measure switch
    {
        { Pairs: { } pairs, Contrasts: [_] } => new WorkedPairs(measure, pairs, analysis.Trial.Design.Level).Blocks(),
        { Blocks: { } blocks, Contrasts: [_, ..] } => new WorkedBlocks(measure, blocks, analysis.Trial.Design.Level).Blocks(),
        _ => [new Paragraph("Too few strips have a value: there is nothing to compare.")],
    };

    private static IEnumerable<Block> Printed(MeasureComparison measure)
    {
        if (measure.Contrasts.IsEmpty)
        {
            yield return new Paragraph("No comparison.");
            yield break;
        }

        var level = measure.Contrasts[0].Level;
        yield return new Table(
            "The last figures, rounded as in the report",
            [new("Comparison"), new("Difference", Alignment: ColumnAlignment.Right), new($"{level} interval", Alignment: ColumnAlignment.Right), new("p", Alignment: ColumnAlignment.Right)],
            [.. measure.Contrasts.Select(contrast => TableRow.Of(
                $"{contrast.Treatment.Label} less {contrast.Baseline.Label}",
                MeasureText.Difference(measure.Measure, contrast.Difference),
                contrast.Interval is { } interval ? MeasureText.Interval(measure.Measure, interval) : NumberText.Dash,
                NumberText.PValue(contrast.P?.Value)))],
            $"Shown at {NumberText.Level(level.Alpha)} means that p is below it and the interval leaves out zero; the two always agree.");
    }
}
