using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Cli.Output;

/// <summary>Prints an analysis: the answers in words, the comparisons, the strips, and what to doubt by weight.</summary>
internal static class AnalysisPrinter
{
    /// <summary>The strip values shown on the console, as many as 80 columns hold; every one is in the written tables.</summary>
    private static readonly string[] StripColumns = ["stand", "t50", "spread", "yield"];

    public static void Print(TrialAnalysis analysis, Terminal terminal)
    {
        terminal.WriteWrapped(analysis.Trial.Title, indent: 0);
        if (analysis.Trial.Question is { } question)
        {
            terminal.WriteWrapped(question, indent: 0);
        }

        terminal.Out.WriteLine();
        foreach (var pair in analysis.ComparedPairs)
        {
            Answers(analysis, pair, terminal);
        }

        terminal.WriteWrapped(TrialWords.Level(analysis.Trial.Design), indent: 0);
        terminal.Out.WriteLine();
        foreach (var pair in analysis.ComparedPairs)
        {
            Comparisons(analysis, pair, terminal);
        }

        EmergenceReviewPrinter.Print(analysis, terminal);
        Strips(analysis, terminal);
        if (analysis.Heat is { } heat)
        {
            terminal.WriteHeading("Heat");
            terminal.WriteWrapped(HeatWords.Method(heat), indent: 2);
            terminal.Out.WriteLine();
        }

        SpotPrinter.Print(analysis, terminal);
        if (analysis.Starter is { } starter)
        {
            StarterPrinter.Print(starter, analysis.Flows, analysis.Trial.Units, terminal);
        }

        MoneyPrinter.Print(analysis, terminal);
        FindingPrinter.Print(analysis.AllFindings, [.. analysis.Measures.Select(measure => measure.Measure)], terminal);
    }

    private static void Answers(TrialAnalysis analysis, ComparedPair pair, Terminal terminal)
    {
        terminal.WriteHeading(pair.ToString());
        foreach (var (measure, contrast) in analysis.ContrastsOf(pair).Where(entry => entry.Measure.Measure.IsHeadline))
        {
            terminal.WriteWrapped(VerdictSentence.Of(measure.Measure, contrast, TrialWords.Replicates(analysis.Trial)), indent: 2);
        }

        terminal.Out.WriteLine();
    }

    private static void Comparisons(TrialAnalysis analysis, ComparedPair pair, Terminal terminal) => ConsoleTable.Print(
        terminal,
        $"{pair.Treatment.Label} less {pair.Baseline.Label}",
        [new("Measure"), new("Difference", IsNumber: true), new($"{analysis.Trial.Design.Level} interval", IsNumber: true), new("p", IsNumber: true), .. Exact(analysis)],
        analysis.ContrastsOf(pair).Select(entry => (string[])
        [
            MeasureText.Name(entry.Measure.Measure),
            MeasureText.Difference(entry.Measure.Measure, entry.Contrast.Difference),
            entry.Contrast.Interval is { } interval ? MeasureText.Interval(entry.Measure.Measure, interval) : NumberText.Dash,
            NumberText.PValue(entry.Contrast.P?.Value),
            .. ExactCells(entry.Measure),
        ]));

    private static IEnumerable<ConsoleColumn> Exact(TrialAnalysis analysis) =>
        analysis.Trial.Design.Layout == Layout.Pairs ? [new("exact p", IsNumber: true)] : [];

    private static IEnumerable<string> ExactCells(MeasureComparison measure) =>
        measure.Pairs is { } pairs ? [NumberText.PValue(pairs.SignFlips?.P.Value)] : [];

    private static void Strips(TrialAnalysis analysis, Terminal terminal)
    {
        var measures = analysis.Measures.Where(measure => StripColumns.Contains(measure.Measure.Id, StringComparer.Ordinal)).ToArray();
        ConsoleTable.Print(
            terminal,
            "Strips",
            [new("Strip"), new("Block"), new("Treatment"), .. measures.Select(measure => new ConsoleColumn(MeasureText.Name(measure.Measure), IsNumber: true))],
            analysis.Trial.Strips.Select((strip, index) => (string[])[strip.IsAnalysed ? strip.Name : $"{strip.Name} (out)", strip.Block, strip.Treatment.Label, .. measures.Select(measure => MeasureText.Value(measure.Measure, measure.Values.Values[index].Value))]));
    }
}
