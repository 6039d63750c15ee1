using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Prints what stands beside the verdicts: the analysis of variance of blocks, and the model of all strips where pairs lost one.</summary>
internal static class BlockTestPrinter
{
    public static void Print(TrialAnalysis analysis, Terminal terminal)
    {
        var blocked = analysis.Measures.Where(measure => measure.Blocks is not null).Select(measure => (measure.Measure, Blocks: measure.Blocks!)).ToArray();
        if (blocked.Length > 0)
        {
            ConsoleTable.Print(
                terminal,
                "Any difference between treatments: analysis of variance",
                [new("Measure"), new("df", IsNumber: true), new("F", IsNumber: true), new("p", IsNumber: true), new("p, rearranged", IsNumber: true), new("CV %", IsNumber: true)],
                blocked.Select(row => (string[])
                [
                    row.Measure.Label,
                    $"{NumberText.Count(row.Blocks.Anova.Treatments.DegreesOfFreedom)}, {NumberText.Count(row.Blocks.Anova.Error.DegreesOfFreedom)}",
                    NumberText.Number(row.Blocks.Anova.Treatments.F, 2),
                    NumberText.PValue(row.Blocks.Anova.Treatments.P?.Value),
                    NumberText.PValue(row.Blocks.Randomization?.P.Value),
                    NumberText.Number(row.Blocks.Anova.CoefficientOfVariation, 1),
                ]));
            Letters(blocked.Where(row => row.Measure.IsHeadline && Parts(row.Blocks)), terminal);
        }

        AllStrips(analysis, terminal);
    }

    // Where no procedure parts any two treatments every letter is the same, and says nothing.
    private static bool Parts(BlockTests blocks) => blocks.Letters.Select(letters => (letters.Lsd, letters.Tukey)).Distinct().Skip(1).Any();

    private static void Letters(IEnumerable<(Results.Measure Measure, BlockTests Blocks)> blocked, Terminal terminal)
    {
        var rows = blocked.SelectMany(row => row.Blocks.Letters.Select((letters, index) => (string[])[index == 0 ? row.Measure.Label : "", letters.Treatment.Label, letters.Lsd, letters.Tukey])).ToArray();
        if (rows.Length > 0)
        {
            ConsoleTable.Print(terminal, "Letters: treatments that share one were not shown to differ", [new("Measure"), new("Treatment"), new("LSD"), new("Tukey")], rows);
        }
    }

    private static void AllStrips(TrialAnalysis analysis, Terminal terminal)
    {
        var lost = analysis.Measures.Where(measure => measure.Pairs?.AllStrips is not null).ToArray();
        if (lost.Length == 0)
        {
            return;
        }

        ConsoleTable.Print(
            terminal,
            "Mixed model of all strips, those that lost the other of their pair included",
            [new("Measure"), new("Strips", IsNumber: true), new("Difference", IsNumber: true), new($"{analysis.Trial.Design.Level} interval", IsNumber: true), new("p", IsNumber: true)],
            lost.Select(measure => (measure.Measure, All: measure.Pairs!.AllStrips!)).Select(row => (string[])
            [
                MeasureText.Name(row.Measure),
                NumberText.Count(row.All.Strips),
                MeasureText.Difference(row.Measure, row.All.Estimate.Value),
                MeasureText.Interval(row.Measure, row.All.Estimate.IntervalAt(analysis.Trial.Design.Level)),
                NumberText.PValue(row.All.Estimate.PTwoSided.Value),
            ]));
    }
}
