using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>What each strip came to.</summary>
internal static class StripPart
{
    /// <summary>The measures shown, as many as a page's width holds; every one stands in the written tables.</summary>
    private static readonly string[] Shown = ["stand", "emergence-share", "t50", "spread", "heat-t50", "spacing-sd", "depth", "yield"];

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var measures = analysis.Measures.Where(measure => Shown.Contains(measure.Measure.Id, StringComparer.Ordinal)).ToArray();
        if (measures.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Strip by strip, in numbers");
        yield return new Table(
            Caption: null,
            [new("Strip"), new("Block"), new("Treatment"), .. measures.Select(measure => new TableColumn(measure.Measure.Label, measure.Measure.Unit.Symbol, ColumnAlignment.Right))],
            [.. analysis.Trial.Strips.Select((strip, index) => TableRow.Of(
                [strip.IsAnalysed ? strip.Name : $"{strip.Name} *", strip.Block, strip.Treatment.Label, .. measures.Select(measure => MeasureText.Value(measure.Measure, measure.Values.Values[index].Value))]))],
            analysis.Trial.Strips.All(strip => strip.IsAnalysed) ? null : "* left out of the comparison; the reason stands under doubts and notes.");
    }
}
