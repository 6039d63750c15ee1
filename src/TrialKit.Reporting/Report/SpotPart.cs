using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>How much strips and spots vary, and what more of either would bring next time.</summary>
internal static class SpotPart
{
    private const double StripCostInSpots = 20;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        if (analysis.Spots.IsEmpty)
        {
            yield break;
        }

        yield return new Heading(2, "Strips and spots, next time");
        yield return new Table(
            Caption: null,
            [
                new("Measure"),
                new("Spots a strip", Alignment: ColumnAlignment.Right),
                new("SD between spots", Alignment: ColumnAlignment.Right),
                new("SD between strips", Alignment: ColumnAlignment.Right),
                new("p, strips", Alignment: ColumnAlignment.Right),
                new("p, spots (wrong)", Alignment: ColumnAlignment.Right),
                new("Best spots", Alignment: ColumnAlignment.Right),
            ],
            [.. analysis.Spots.Select(spots => TableRow.Of(
                MeasureText.Name(spots.Measure),
                NumberText.Number(spots.SpotsPerStrip, 1),
                MeasureText.Value(spots.Measure, Math.Sqrt(spots.SpotVariance)),
                MeasureText.Value(spots.Measure, Math.Sqrt(spots.StripVariance)),
                NumberText.PValue(spots.OverStrips?.P.Value),
                NumberText.PValue(spots.OverSpots?.P.Value),
                spots.BestSpots(StripCostInSpots) is { } best ? NumberText.Number(best, 0) : NumberText.Dash))],
            FormattableString.Invariant($"SD between strips is what strips of one treatment differ beyond their spots. The p over spots takes each spot for a replicate: it answers another question and is printed to show how far off it is. Best spots: if one more strip costs as much as {StripCostInSpots:0} spots."));
        yield return new Table(
            "What other numbers would have shown",
            [
                new("Measure"),
                new("Strips a treatment", Alignment: ColumnAlignment.Right),
                new("Spots a strip", Alignment: ColumnAlignment.Right),
                new("Error of a difference", Alignment: ColumnAlignment.Right),
                new("Usually shown", Alignment: ColumnAlignment.Right),
            ],
            [.. analysis.Spots.SelectMany(spots => spots.Plans.Select(plan => TableRow.Of(
                MeasureText.Name(spots.Measure),
                NumberText.Count(plan.StripsPerTreatment),
                NumberText.Count(plan.SpotsPerStrip),
                MeasureText.Value(spots.Measure, plan.StandardError),
                MeasureText.Value(spots.Measure, plan.Detectable))))],
            "The first line of a measure is this trial, with the error and the test of its verdicts on the comparison that lost the fewest strips; the other lines keep that test and rest on the variances above. More spots never stand in for strips: the error cannot fall below what strips alone give.");
    }
}
