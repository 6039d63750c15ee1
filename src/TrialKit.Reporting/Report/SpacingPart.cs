using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>How plants stand in the row: the spacings of each treatment with the classes that the seed spacing gives.</summary>
internal static class SpacingPart
{
    private const int BinsPerSeed = 4;
    private const int SeedSpacingsShown = 4;

    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        var trial = analysis.Trial;
        var us = trial.Units == UnitSystem.Us;
        var gaps = InRowSpacing.Gaps(trial).Where(strip => strip.Strip.IsAnalysed && !strip.Gaps.IsEmpty).ToArray();
        if (gaps.Length == 0 || analysis.Strips.Spacings.Select(spacing => spacing.SeedSpacing).FirstOrDefault(spacing => spacing is not null) is not { } seed)
        {
            yield break;
        }

        var reference = us ? seed.Inches : seed.Centimeters;
        var width = reference / BinsPerSeed;
        var edges = Enumerable.Range(0, (BinsPerSeed * SeedSpacingsShown) + 1).Select(edge => edge * width).ToArray();
        var series = new List<SpacingSeries>();
        var beyond = 0;
        var words = new List<string>();
        foreach (var treatment in TreatmentTones.Ordered(trial))
        {
            var own = gaps.Where(strip => Identifier.Same(strip.Strip.Treatment.Name, treatment.Name)).SelectMany(strip => strip.Gaps).Select(gap => us ? gap.Inches : gap.Centimeters).ToArray();
            if (own.Length == 0)
            {
                continue;
            }

            beyond += own.Count(gap => gap > edges[^1]);
            series.Add(new(treatment.Label, tones[treatment], [.. edges.SkipLast(1).Select((edge, bin) => (double)own.Count(gap => gap >= edge && (bin == edges.Length - 2 ? gap <= edges[^1] : gap < edges[bin + 1])) / own.Length)]));
            words.Add($"{treatment.Label}: {NumberText.Percent((double)own.Count(gap => gap <= reference / 2) / own.Length)} of {NumberText.Count(own.Length)} spacings are half a seed spacing or less, {NumberText.Percent((double)own.Count(gap => gap > 1.5 * reference) / own.Length)} more than one and a half.");
        }

        var unit = us ? "inches" : "cm";
        yield return new Heading(2, "How plants stand in the row");
        yield return new FigureBlock(
            new SpacingFigure(
                $"space between plants, {unit}",
                edges,
                series,
                [new(0, reference / 2, "double"), new(reference / 2, 1.5 * reference, "single"), new(1.5 * reference, double.PositiveInfinity, "skip")],
                string.Join(" ", words)),
            "Spacings between neighbours",
            Note: $"All strips of a treatment together; shares by strip stand in the tables. A seed spacing is {NumberText.Number(reference, 1)}\u00A0{unit}."
                + (beyond > 0 ? $" {NumberText.CountWord(beyond)} {(beyond == 1 ? "spacing" : "spacings")} beyond {NumberText.Number(edges[^1], 0)}\u00A0{unit} {(beyond == 1 ? "is" : "are")} counted but not drawn." : ""))
        {
            Name = "spacing",
        };
    }
}
