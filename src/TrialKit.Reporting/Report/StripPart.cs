using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Report;

/// <summary>What each strip came to, the trial's own measures in tables of their own.</summary>
internal static class StripPart
{
    /// <summary>The measures shown, as many as a page's width holds; every one stands in the written tables.</summary>
    private static readonly string[] Shown = ["stand", "emergence-share", "t50", "spread", "heat-t50", "spacing-sd", "depth", "yield"];

    private const int MostColumns = 8;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        MeasureComparison[][] tables =
        [
            [.. analysis.Measures.Where(measure => Shown.Contains(measure.Measure.Id, StringComparer.Ordinal))],
            .. analysis.Measures.Where(measure => measure.Measure is { IsHeadline: true, Kind: MeasureKind.Other }).Chunk(MostColumns),
        ];
        var filled = tables.Where(table => table.Length > 0).ToArray();
        if (filled.Length > 0)
        {
            yield return new Heading(2, "Strip by strip, in numbers");
        }

        foreach (var measures in filled)
        {
            yield return Table(analysis, measures);
        }
    }

    private static Table Table(TrialAnalysis analysis, MeasureComparison[] measures) => new(
        Caption: null,
        [new("Strip"), new("Block"), new("Treatment"), .. measures.Select(measure => new TableColumn(measure.Measure.Label, measure.Measure.Unit.Symbol, ColumnAlignment.Right))],
        [.. analysis.Trial.Strips.Select((strip, index) => TableRow.Of(
            [strip.IsAnalysed ? strip.Name : $"{strip.Name} *", strip.Block, strip.Treatment.Label, .. measures.Select(measure => MeasureText.Value(measure.Measure, measure.Values.Values[index].Value))]))],
        analysis.Trial.Strips.All(strip => strip.IsAnalysed) ? null : "* left out of the comparison; the reason stands under doubts and notes.");
}
