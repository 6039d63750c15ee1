using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>The strips behind the answers: paired differences in field order, or every strip around its treatment's mean.</summary>
internal static class DifferencePart
{
    /// <summary>The measures drawn, the weightiest first; the others stand in the tables.</summary>
    private static readonly string[] Drawn = ["stand", "t50", "spread", "yield"];

    private const double PairsHeight = 120;

    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        var drawn = analysis.Measures
            .Where(measure => Drawn.Contains(measure.Measure.Id, StringComparer.Ordinal) && !measure.Contrasts.IsEmpty)
            .ToArray();
        if (drawn.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, analysis.Trial.Design.Layout == Layout.Pairs ? "Pair by pair" : "Strip by strip");
        foreach (var measure in drawn)
        {
            yield return measure.Pairs is { } pairs
                ? new FigureBlock(Pairs(analysis.Trial, measure, pairs, tones), measure.Measure.Label, PairsHeight) { Name = Name(measure) }
                : new FigureBlock(Means(analysis, measure, tones), measure.Measure.Label, Note: Adjusted(measure)) { Name = Name(measure) };
        }
    }

    /// <summary>The paired differences of a measure in field order.</summary>
    public static PairedDifferencesFigure Pairs(StripTrial trial, MeasureComparison comparison, PairTests pairs, TreatmentTones tones)
    {
        var contrast = comparison.Contrasts[0];
        var measure = comparison.Measure;
        var interval = contrast.Interval;
        return new(
            $"{contrast.Treatment.Label} less {contrast.Baseline.Label}, {MeasureText.UnitWord(measure)}",
            pairs.Pairs.Any(pair => pair.Treated.Order is null) ? "pairs in the order of the record" : "pairs in field order",
            [.. pairs.Pairs.Select(pair => new Figures.PairDifference(pair.Block, pair.Difference))],
            interval is { } range ? new FigureInterval(range.Low, contrast.Difference, range.High) : null,
            $"mean {MeasureText.Difference(measure, contrast.Difference)}",
            interval is { } stated ? $"{contrast.Level}: {MeasureText.Interval(measure, stated)}" : "no interval",
            tones[contrast.Treatment],
            VerdictSentence.Of(measure, contrast, TrialWords.Replicates(trial)));
    }

    /// <summary>Every strip around its treatment's mean.</summary>
    public static TreatmentMeansFigure Means(TrialAnalysis analysis, MeasureComparison comparison, TreatmentTones tones)
    {
        var measure = comparison.Measure;
        var treatments =
            from treatment in TreatmentTones.Ordered(analysis.Trial)
            from mean in comparison.Means
            where Identifier.Same(mean.Treatment.Name, treatment.Name)
            let strips = comparison.Values.Analysed.Where(entry => Identifier.Same(entry.Entry.Strip.Treatment.Name, treatment.Name)).Select(entry => entry.Value).ToArray()
            select new Figures.TreatmentMean(treatment.Label, tones[treatment], strips, new FigureInterval(mean.Mean, mean.Mean, mean.Mean), MeasureText.Value(measure, mean.Mean));
        return new($"{measure.Label}, {measure.Unit}", 0, [.. treatments], Sentences(analysis, comparison));
    }

    /// <summary>For each treatment its difference from the control block by block, around the interval; null without a control.</summary>
    public static TreatmentMeansFigure? AgainstControl(TrialAnalysis analysis, MeasureComparison comparison, TreatmentTones tones)
    {
        if (analysis.Trial.Design.Control is not { } control || comparison.Contrasts.Any(contrast => !Identifier.Same(contrast.Baseline.Name, control.Name)))
        {
            return null;
        }

        var measure = comparison.Measure;
        var values = comparison.Values.Analysed.ToLookup(entry => entry.Entry.Strip.Block.Trim(), Identifier.Comparer);
        var rows =
            from contrast in comparison.Contrasts
            let differences = (
                from block in values
                from treated in block
                where Identifier.Same(treated.Entry.Strip.Treatment.Name, contrast.Treatment.Name)
                from untreated in block
                where Identifier.Same(untreated.Entry.Strip.Treatment.Name, control.Name)
                select treated.Value - untreated.Value).ToArray()
            where differences.Length > 0
            select new Figures.TreatmentMean(
                contrast.Treatment.Label,
                tones[contrast.Treatment],
                differences,
                contrast.Interval is { } interval ? new FigureInterval(interval.Low, contrast.Difference, interval.High) : null,
                MeasureText.Difference(measure, contrast.Difference));
        Figures.TreatmentMean[] drawn = [.. rows];
        return drawn.Length == 0 ? null : new($"less {control.Label}, {MeasureText.UnitWord(measure)}", 0, drawn, Sentences(analysis, comparison), aroundZero: true);
    }

    private static string Sentences(TrialAnalysis analysis, MeasureComparison comparison) =>
        string.Join(" ", comparison.Contrasts.Select(contrast => $"{contrast.Treatment.Label} against {contrast.Baseline.Label}: {VerdictSentence.Of(comparison.Measure, contrast, TrialWords.Replicates(analysis.Trial))}"));

    private static string Name(MeasureComparison measure) => $"differences-{measure.Measure.Id}";

    private static string? Adjusted(MeasureComparison comparison) =>
        comparison.Means.Select(mean => mean.Strips).Distinct().Count() > 1
            ? "The large dot is the mean adjusted for blocks; where strips are missing it can lie beside the middle of its points."
            : null;
}
