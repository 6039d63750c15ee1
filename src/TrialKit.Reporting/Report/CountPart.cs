using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Report;

/// <summary>Counts compared as counts, beside the comparison of the same measure by t.</summary>
internal static class CountPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var rows = (
            from counts in analysis.Counts
            from contrast in counts.Contrasts
            let judged = analysis.Measures.First(measure => measure.Measure.Id == counts.Measure.Id).Contrasts.FirstOrDefault(other => other.Treatment == contrast.Treatment && other.Baseline == contrast.Baseline)
            select TableRow.Of(
                counts.Measure.Label,
                $"{contrast.Treatment.Label} against {contrast.Baseline.Label}",
                counts.IsShare ? "odds" : "rate",
                NumberText.Number(contrast.Ratio, 2),
                NumberText.Range(contrast.Low, contrast.High, value => NumberText.Number(value, 2)).Replace(' ', '\u00A0'),
                NumberText.PValue(contrast.Holm.Value),
                NumberText.PValue(judged?.P?.Value),
                NumberText.Number(counts.Dispersion, 2))).ToArray();
        return rows.Length == 0
            ? []
            :
            [
                new Heading(2, "Counts as counts"),
                new Table(
                    Caption: null,
                    [
                        new("Measure"),
                        new("Compared"),
                        new("Ratio of"),
                        new("Ratio", Alignment: ColumnAlignment.Right),
                        new($"{analysis.Trial.Design.Level} interval, alone", Alignment: ColumnAlignment.Right),
                        new("p, counts", Alignment: ColumnAlignment.Right),
                        new("p, verdict", Alignment: ColumnAlignment.Right),
                        new("Dispersion", Alignment: ColumnAlignment.Right),
                    ],
                    rows,
                    "Shares on the logit, plants along row on the logarithm, blocks taken out, one count a strip. Dispersion 1 is the scatter of chance; above it strips differ by more, and the errors here are widened by its root; below it they stand more evenly than chance, and the errors are narrowed by its root, which with few strips can itself be chance. An interval is of its comparison alone, p is Holm's over all comparisons of the measure, so an interval may leave out 1 where p shows nothing. The verdict stays with the other p."),
            ];
    }
}
