using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>The first page: the question, a line of facts, and the answers as sentences with their intervals.</summary>
internal static class AnswerPage
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var trial = analysis.Trial;
        yield return new Heading(1, trial.Title);
        if (trial.Question is { } question)
        {
            yield return new Paragraph(question, TextSize.Lead);
        }

        yield return new KeyFacts(TrialFacts.Of(trial));
        foreach (var pair in analysis.ComparedPairs)
        {
            yield return new Heading(2, pair.ToString());
            yield return new MarkedSentences(Answers(analysis, pair), $"less with {pair.Treatment.Label}", "more");
            foreach (var worth in analysis.Money.Where(budget => budget.Treatment == pair.Treatment && budget.Baseline == pair.Baseline).Select(budget => MoneyWords.Answer(budget, trial)).OfType<string>())
            {
                yield return new Paragraph(worth);
            }
        }

        yield return new Paragraph(TrialWords.Level(trial.Design), TextSize.Small);
        foreach (var doubt in FindingNotes.Gravest(analysis))
        {
            yield return doubt;
        }
    }

    private static MarkedSentence[] Answers(TrialAnalysis analysis, ComparedPair pair) =>
        [.. analysis.ContrastsOf(pair).Where(entry => entry.Measure.Measure.IsHeadline).Select(entry => Sentence(entry.Measure.Measure, entry.Contrast, analysis.Trial))];

    private static MarkedSentence Sentence(Measure measure, Contrast contrast, StripTrial trial)
    {
        IntervalMark? mark = contrast.Interval is { } interval
            ? new(interval.Low, contrast.Difference, interval.High, contrast.Verdict == Verdict.Shown ? MarkTone.Shown : MarkTone.NotShown)
            : null;
        return new(VerdictSentence.Of(measure, contrast, TrialWords.Replicates(trial)), mark);
    }
}
