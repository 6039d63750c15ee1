using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Prints trials put together: the answers in words, site by site, and what to doubt.</summary>
internal static class PoolPrinter
{
    public static void Print(PooledTrials pooled, Terminal terminal)
    {
        terminal.WriteWrapped($"{NumberText.CountWord(pooled.Sites.Length)} trials together: {string.Join(", ", pooled.Sites.Select(site => site.Name))}", indent: 0);
        terminal.Out.WriteLine();
        foreach (var pair in pooled.ComparedPairs)
        {
            terminal.WriteHeading(pair.ToString());
            foreach (var comparison in pooled.Comparisons.Where(comparison => comparison.Pair == pair && comparison.Measure.IsHeadline))
            {
                terminal.WriteWrapped(VerdictSentence.Of(comparison), indent: 2);
            }

            terminal.Out.WriteLine();
        }

        terminal.WriteWrapped(TrialWords.Level(pooled), indent: 0);
        terminal.Out.WriteLine();
        foreach (var pair in pooled.ComparedPairs)
        {
            Sites(pooled, pair, terminal);
        }

        FindingPrinter.Print(pooled.AllFindings, [.. pooled.Comparisons.Select(comparison => comparison.Measure)], terminal);
    }

    private static void Sites(PooledTrials pooled, ComparedPair pair, Terminal terminal) => ConsoleTable.Print(
        terminal,
        $"{pair.Treatment.Label} less {pair.Baseline.Label}",
        [new("Measure"), new("Site"), new("Difference", IsNumber: true), new($"{pooled.Level} interval", IsNumber: true), new("p", IsNumber: true)],
        pooled.Comparisons.Where(comparison => comparison.Pair == pair && comparison.Measure.IsHeadline).SelectMany(comparison => comparison.Sites
            .Select((site, index) => (string[])
            [
                index == 0 ? MeasureText.Name(comparison.Measure) : "",
                site.Site,
                MeasureText.Difference(comparison.Measure, site.Estimate.Value),
                MeasureText.Interval(comparison.Measure, site.Estimate.IntervalAt(comparison.Level)),
                NumberText.PValue(site.Estimate.PTwoSided.Value),
            ])
            .Append(
            [
                "",
                "together",
                MeasureText.Difference(comparison.Measure, comparison.Reml.Estimate.Value),
                MeasureText.Interval(comparison.Measure, comparison.Interval),
                NumberText.PValue(comparison.P.Value),
            ])));
}
