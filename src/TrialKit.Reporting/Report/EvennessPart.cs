using TrialKit.Emergence;
using TrialKit.Reporting.Document;
using TrialKit.Results;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>How evenly plants came up: lags by strip, leaf stage, the map of the row, and what is published on late plants.</summary>
internal static class EvennessPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var strips = analysis.Strips.Evenness;
        if (strips.IsEmpty && analysis.Strips.Stages.IsEmpty)
        {
            yield break;
        }

        yield return new Heading(2, "How even, plant by plant");
        if (strips.Any(strip => strip.VisitsTellLags || strip.PercentWithin24HoursOfFirst is not null || strip.PercentWithin48HoursOfFirst is not null))
        {
            yield return Lags(strips);
        }
        else if (!strips.IsEmpty)
        {
            yield return new Paragraph("How far plants lag behind each other is not told: that takes a visit a day while plants come up, from before the first of every spot on.");
        }

        foreach (var map in RowMapPart.Of(analysis))
        {
            yield return map;
        }

        if (!analysis.Strips.Stages.IsEmpty)
        {
            yield return Stages(analysis);
        }

        if (Identifier.Same(analysis.Trial.Crop.Name, "corn"))
        {
            yield return Published("Published on late plants and yield, elsewhere", LatePlants.Published, "A range with its sources. None of it is this field's loss: seasons, hybrids and stands differ. That a plant two leaves behind is a weed is a saying, not a finding.");
        }
    }

    /// <summary>What studies found, as a table.</summary>
    public static Table Published(string caption, IEnumerable<PublishedFinding> findings, string note) => new(
        caption,
        [new("Study"), new("Compared"), new("Found")],
        [.. findings.Select(finding => TableRow.Of(finding.Study, finding.Setting, finding.Found))],
        note);

    private static Table Lags(IEnumerable<StripEvenness> strips) => new(
        "Days behind the first plant of the spot",
        [
            new("Strip"),
            new("Treatment"),
            new("Plants", Alignment: ColumnAlignment.Right),
            new("Mean", "d", ColumnAlignment.Right),
            new("SD", "d", ColumnAlignment.Right),
            new("24 h of first", "%", ColumnAlignment.Right),
            new("48 h of first", "%", ColumnAlignment.Right),
            new("24 h of median", "%", ColumnAlignment.Right),
            new("48 h of median", "%", ColumnAlignment.Right),
            new("Over 3 days", "%", ColumnAlignment.Right),
        ],
        [.. strips.Select(strip => TableRow.Of(
            strip.Strip.Name,
            strip.Strip.Treatment.Label,
            NumberText.Count(strip.Lags.Length),
            NumberText.Number(strip.MeanLag, 1),
            NumberText.Number(strip.StandardDeviation, 1),
            NumberText.Number(strip.PercentWithin24HoursOfFirst, 0),
            NumberText.Number(strip.PercentWithin48HoursOfFirst, 0),
            NumberText.Number(strip.PercentWithin24HoursOfMedian, 0),
            NumberText.Number(strip.PercentWithin48HoursOfMedian, 0),
            NumberText.Number(strip.PercentLate, 0)))],
        "A plant is dated by the visit that found it; a dash where visits were too far apart, or too few, to tell. Of the median: within so many hours before or after the middle plant of the spot. Each plant's lag, also behind its two neighbours, stands in the written tables.");

    private static Table Stages(TrialAnalysis analysis)
    {
        var units = analysis.Trial.Units;
        return new(
            "Leaf stage behind the commonest of the spot",
            [
                new("Strip"),
                new("Treatment"),
                new("Plants", Alignment: ColumnAlignment.Right),
                new("One leaf or more", "%", ColumnAlignment.Right),
                new("Two or more", "%", ColumnAlignment.Right),
                new("Mean lag", "leaves", ColumnAlignment.Right),
                new("Mean lag", units == UnitSystem.Us ? "F-days" : "C-days", ColumnAlignment.Right),
                new("Mean lag", "d", ColumnAlignment.Right),
            ],
            [.. analysis.Strips.Stages.Select(strip => TableRow.Of(
                strip.Strip.Name,
                strip.Strip.Treatment.Label,
                NumberText.Count(strip.Plants),
                NumberText.Number(strip.PercentOneBehind, 1),
                NumberText.Number(strip.PercentTwoBehind, 1),
                NumberText.Number(strip.MeanLeavesBehind, 2),
                NumberText.Number(strip.MeanHeatBehind?.In(units), 1),
                NumberText.Number(strip.MeanDaysBehind, 1)))],
            "A stage is read to one leaf, some four days. In corn a leaf is taken as 82 F-days to the tenth and 50 after; Iowa State University prints 84 and 56. The days are those that this heat took in the air after half of the plants were up.");
    }
}
