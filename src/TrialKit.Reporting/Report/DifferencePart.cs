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
            yield return measure.Pairs is { } pairs ? Pairs(analysis.Trial, measure, pairs, tones) : Means(analysis, measure, tones);
        }
    }

    private static FigureBlock Pairs(StripTrial trial, MeasureComparison comparison, PairTests pairs, TreatmentTones tones)
    {
        var contrast = comparison.Contrasts[0];
        var measure = comparison.Measure;
        var interval = contrast.Interval;
        var figure = new PairedDifferencesFigure(
            $"{contrast.Treatment.Label} less {contrast.Baseline.Label}, {measure.Unit}",
            pairs.Pairs.Any(pair => pair.Treated.Order is null) ? "pairs in the order of the record" : "pairs in field order",
            [.. pairs.Pairs.Select(pair => new Figures.PairDifference(pair.Block, pair.Difference))],
            interval is { } range ? new FigureInterval(range.Low, contrast.Difference, range.High) : null,
            $"mean {MeasureText.Difference(measure, contrast.Difference)}",
            interval is { } stated ? $"{contrast.Level}: {MeasureText.Interval(measure, stated)}" : "no interval",
            tones[contrast.Treatment],
            VerdictSentence.Of(measure, contrast, TrialWords.Replicates(trial)));
        return new(figure, measure.Label);
    }

    private static FigureBlock Means(TrialAnalysis analysis, MeasureComparison comparison, TreatmentTones tones)
    {
        var measure = comparison.Measure;
        var treatments =
            from treatment in TreatmentTones.Ordered(analysis.Trial)
            from mean in comparison.Means
            where Identifier.Same(mean.Treatment.Name, treatment.Name)
            let strips = comparison.Values.Analysed.Where(entry => Identifier.Same(entry.Entry.Strip.Treatment.Name, treatment.Name)).Select(entry => entry.Value).ToArray()
            select new Figures.TreatmentMean(treatment.Label, tones[treatment], strips, new FigureInterval(mean.Mean, mean.Mean, mean.Mean), MeasureText.Value(measure, mean.Mean));
        var sentences = comparison.Contrasts.Select(contrast => $"{contrast.Treatment.Label} against {contrast.Baseline.Label}: {VerdictSentence.Of(measure, contrast, TrialWords.Replicates(analysis.Trial))}");
        return new(new TreatmentMeansFigure($"{measure.Label}, {measure.Unit}", 0, [.. treatments], string.Join(" ", sentences)), measure.Label);
    }
}
