using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Report;

/// <summary>Every headline answer with its interval: in words for two treatments, as a figure for each comparison.</summary>
internal static class AnswersPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        // With several treatments the sentences would fill pages; the figure of each comparison has them as its words.
        if (analysis.ComparedPairs.ToArray() is not [var pair])
        {
            yield break;
        }

        var told = analysis.ContrastsOf(pair).Where(entry => entry.Measure.Measure.IsHeadline).ToArray();
        if (told.Length > 0)
        {
            yield return new Heading(2, "The answers in words");
            yield return new MarkedSentences([.. told.Select(entry => Sentence(entry.Measure.Measure, entry.Contrast, analysis))], $"less with {Brief.Of(pair.Treatment.Label, 40)}", "more");
        }
    }

    /// <summary>The headline differences of two treatments around one zero line.</summary>
    public static FigureBlock? Forest(TrialAnalysis analysis, ComparedPair pair)
    {
        var told = analysis.ContrastsOf(pair).Where(entry => entry.Measure.Measure.IsHeadline).ToArray();
        if (told.Length == 0)
        {
            return null;
        }

        var tone = Math.Max(1, TreatmentTones.Of(analysis.Trial)[pair.Treatment]);
        var rows = told.Select(entry => new ForestRow(entry.Measure.Measure.Label, Text(entry.Measure.Measure, entry.Contrast), Mark(entry.Contrast)));
        var sentences = told.Select(entry => VerdictSentence.Of(entry.Measure.Measure, entry.Contrast, TrialWords.Replicates(analysis.Trial)));
        return new(new ForestOfMeasuresFigure($"less with {Brief.Of(pair.Treatment.Label, 24)}", "more", [.. rows], string.Join(" ", sentences), tone), $"Headline differences, {pair}", Note: "Each measure has a scale of its own; bars are intervals.")
        {
            Name = FigureName.Of("forest", pair),
        };
    }

    private static MarkedSentence Sentence(Measure measure, Contrast contrast, TrialAnalysis analysis) =>
        new(VerdictSentence.Of(measure, contrast, TrialWords.Replicates(analysis.Trial)), Mark(contrast));

    private static string Text(Measure measure, Contrast contrast) => contrast.Interval is { } interval
        ? $"{MeasureText.Difference(measure, contrast.Difference)} ({MeasureText.Interval(measure, interval)}) {measure.Unit}".TrimEnd()
        : $"{MeasureText.Difference(measure, contrast.Difference)}, no interval";

    /// <summary>The interval of a comparison as a mark; null where it has none.</summary>
    public static IntervalMark? Mark(Contrast contrast) => contrast.Interval is { } interval
        ? new(interval.Low, contrast.Difference, interval.High, contrast.Verdict == Verdict.Shown ? MarkTone.Shown : MarkTone.NotShown)
        : null;
}
