using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>Every headline answer with its interval: in words measure by measure, and as a figure for each comparison.</summary>
internal static class AnswersPart
{
    private const int WholeLabels = 120;
    private const int MostInWords = 11;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var told = analysis.Measures.Where(measure => measure.Measure.IsHeadline && !measure.Contrasts.IsEmpty).ToArray();
        if (told.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "The answers in words");
        if (analysis.ComparedPairs.ToArray() is [var pair])
        {
            yield return new MarkedSentences([.. told.Select(measure => Sentence(measure.Measure, measure.Contrasts, analysis.Trial, WholeLabels, MostInWords))], $"less with {Brief.Of(pair.Treatment.Label, 40)}", "more");
            yield break;
        }

        foreach (var measure in told)
        {
            yield return new Paragraph(Sentence(measure.Measure, measure.Contrasts, analysis.Trial, WholeLabels, MostInWords).Text);
        }
    }

    /// <summary>What one measure showed, in one sentence whatever the number of treatments.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="contrasts">Its comparisons, one or more.</param>
    /// <param name="trial">The trial.</param>
    /// <param name="label">The most letters of a treatment's label.</param>
    /// <param name="most">The most comparisons of one outcome that are named.</param>
    public static MarkedSentence Sentence(Measure measure, ImmutableArray<Contrast> contrasts, StripTrial trial, int label, int most)
    {
        var replicates = TrialWords.Replicates(trial);
        if (contrasts is [var contrast])
        {
            return new(VerdictSentence.Of(measure, contrast, replicates), Mark(contrast));
        }

        return contrasts.All(each => each is { Verdict: Verdict.NotShown, Detectable: not null })
            ? new(PageWords.NoneShown(measure, contrasts, replicates))
            : new(PageWords.Several(measure, contrasts, each => Name(each, trial, label), replicates, most));
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

    private static string Name(Contrast contrast, StripTrial trial, int label) => trial.Design.Control is not null
        ? Brief.Of(contrast.Treatment.Label, label)
        : $"{Brief.Of(contrast.Treatment.Label, label)} against {Brief.Of(contrast.Baseline.Label, label)}";

    private static string Text(Measure measure, Contrast contrast) => contrast.Interval is { } interval
        ? $"{MeasureText.Difference(measure, contrast.Difference)} ({MeasureText.Interval(measure, interval)}) {measure.Unit}".TrimEnd()
        : $"{MeasureText.Difference(measure, contrast.Difference)}, no interval";

    /// <summary>The interval of a comparison as a mark; null where it has none.</summary>
    public static IntervalMark? Mark(Contrast contrast) => contrast.Interval is { } interval
        ? new(interval.Low, contrast.Difference, interval.High, contrast.Verdict == Verdict.Shown ? MarkTone.Shown : MarkTone.NotShown)
        : null;
}
