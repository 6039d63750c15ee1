using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>The first page, always one sheet: the question, the answers that matter most, one picture, what it is worth, what to doubt, what to do next time.</summary>
internal static class AnswerPage
{
    private const double PictureHeight = 215;
    private const double LeastPicture = 140;
    private const double PictureRowHeight = 12;
    private const double EmergenceShare = 1.5;
    private const int ReservedForNotShown = 2;
    private const int MostNamed = 6;
    private const int MostWorths = 4;
    private const int WholeTexts = 260;
    private const int MostOfADoubt = 170;

    /// <summary>The measures the page speaks of, the weightiest first; then the trial's own.</summary>
    private static readonly string[] Spoken = ["t50", "stand", "yield", "spread", "up-48h", "spacing-sd", "depth"];

    /// <summary>The measures that a trial is made for, which no other may crowd out, in the order in which those without a difference are told.</summary>
    private static readonly string[] Weighty = ["stand", "yield", "t50", "spread"];

    /// <summary>The measures whose differences the picture shows, the first that was compared.</summary>
    private static readonly string[] Pictured = ["t50", "stand", "yield"];

    /// <summary>How much each draft says, from the fullest to the shortest.</summary>
    private static readonly PageDraft[] Drafts =
    [
        new(Answers: 8, Doubts: 3),
        new(Answers: 7, Doubts: 3),
        new(Answers: 6, Doubts: 3),
        new(Answers: 5, Doubts: 3),
        new(Answers: 5, Doubts: 2),
        new(Answers: 4, Doubts: 2),
        new(Answers: 4, Doubts: 1),
        new(Answers: 3, Doubts: 1),
        new(Answers: 2, Doubts: 1),
        new(Answers: 4, Doubts: 1, Letters: 90),
        new(Answers: 3, Doubts: 1, Letters: 90),
        new(Answers: 2, Doubts: 1, Letters: 70),
        new(Answers: 1, Doubts: 0, Letters: 60),
    ];

    /// <summary>The page.</summary>
    /// <param name="analysis">The outcome of the trial.</param>
    /// <param name="tones">The tone of each treatment.</param>
    public static OnePage Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        var answers = Ordered(analysis);
        var picture = Picture(analysis, tones);
        var worth = MoneyWords.Answers(analysis.Money, analysis.Trial, MostWorths);
        var doubts = (Told: FindingNotes.FieldDoubts(analysis).ToArray(), All: FindingNotes.Doubts(analysis).Count());
        return new([.. Drafts.Select(draft => (IReadOnlyList<Block>)[.. Page(analysis, draft, answers, picture, worth, doubts)])]);
    }

    private static IEnumerable<Block> Page(TrialAnalysis analysis, PageDraft draft, Answer[] answers, PanelsFigure? picture, string? worth, (Func<int, Note>[] Told, int All) doubts)
    {
        var trial = analysis.Trial;
        yield return new Heading(1, Brief.Of(trial.Title, draft.Letters));
        if (trial.Question is { } question && question != trial.Title)
        {
            yield return new Paragraph(Brief.Of(question, draft.Letters), TextSize.Lead);
        }

        yield return new KeyFacts([.. TrialFacts.Of(trial).Where(fact => fact.Name != TrialFacts.Level).Select(fact => fact with { Value = Brief.Of(fact.Value, draft.Letters / 2) })]);
        foreach (var block in Answers(analysis, draft, answers))
        {
            yield return block;
        }

        if (picture is not null)
        {
            var least = LeastPicture + (PictureRowHeight * Math.Max(0, trial.Treatments.Length - 3));
            yield return new FigureBlock(picture, Height: Math.Max(least, PictureHeight), Note: PageWords.Picture(trial.Design.Layout == Layout.Pairs)) { LeastHeight = least };
        }

        if (worth is not null && draft.TellsWorth)
        {
            yield return new Paragraph(RichText.Of("Worth: ", Emphasis.Strong).Then(worth));
        }

        foreach (var doubt in doubts.Told.Take(draft.Doubts))
        {
            yield return doubt(draft.DoubtLetters);
        }

        if (PageWords.More(worth is not null && !draft.TellsWorth, doubts.All - Math.Min(doubts.Told.Length, draft.Doubts)) is { } more)
        {
            yield return new Paragraph(more, TextSize.Small);
        }

        if (Next(analysis) is { } next)
        {
            yield return new Paragraph(RichText.Of("Next time: ", Emphasis.Strong).Then(char.ToLowerInvariant(next[0]) + next[1..]));
        }
    }

    private static IEnumerable<Block> Answers(TrialAnalysis analysis, PageDraft draft, Answer[] answers)
    {
        var trial = analysis.Trial;
        var pairs = analysis.ComparedPairs.ToArray();
        var label = Math.Min(draft.Letters / 3, 60);
        if (answers.Length == 0)
        {
            yield return new Paragraph("These records hold no comparison of treatments; what each strip came to stands on the following pages.");
            yield break;
        }

        var (heading, left, right) = pairs.Length == 1
            ? ($"{Brief.Of(pairs[0].Treatment.Label, label)} against {Brief.Of(pairs[0].Baseline.Label, label)}", $"less with {Brief.Of(pairs[0].Treatment.Label, 24)}", "more")
            : trial.Design.Control is { } control
                ? ($"Against {Brief.Of(control.Label, label)}", "less", $"more than {Brief.Of(control.Label, 24)}")
                : ("The treatments against each other", "less with the first", "more");
        yield return new Heading(2, heading);
        var told = Chosen(answers, draft.Answers);
        MarkedSentence[] sentences = [.. told.Select(answer => AnswersPart.Sentence(answer.Measure, answer.Contrasts, trial, label, draft.Compared))];
        if (Array.Exists(sentences, sentence => sentence.Mark is not null))
        {
            yield return new MarkedSentences(sentences, left, right);
        }
        else
        {
            foreach (var sentence in sentences)
            {
                yield return new Paragraph(sentence.Text);
            }
        }

        var others = analysis.Measures.Where(measure => !measure.Contrasts.IsEmpty && !Array.Exists(told, answer => answer.Measure == measure.Measure)).ToArray();
        var rest = others.Length > 0 ? PageWords.Others([.. others.Select(measure => (measure.Measure, measure.Contrasts))], pairs.Length > 1, MostNamed) + " " : "";
        yield return new Paragraph(rest + PageWords.Level(trial.Design), TextSize.Small);
    }

    // Differences in what the trial is made for come first, then what of it showed none, then whatever there is room for.
    private static Answer[] Chosen(Answer[] answers, int most)
    {
        var weighty = answers.Where(answer => answer.IsWeighty).ToArray();
        var shown = weighty.Where(answer => answer.IsShown).ToArray();
        var reserved = Math.Min(Math.Min(ReservedForNotShown, weighty.Length - shown.Length), most / 2);
        Answer[] told = [.. shown.Take(most - reserved), .. weighty.Where(answer => !answer.IsShown).Take(Math.Max(reserved, most - shown.Length))];
        var rest = answers.Except(told).OrderBy(answer => answer.IsShown ? 0 : 1).Take(most - told.Length);
        return [.. answers.Intersect(told.Concat(rest))];
    }

    /// <summary>The answers in the order in which they are told: what was shown before what was not, the weightier measure before the other.</summary>
    private static Answer[] Ordered(TrialAnalysis analysis)
    {
        var answers =
            from measure in analysis.Measures
            let place = Place(measure.Measure)
            where place is not null && !measure.Contrasts.IsEmpty
            let answer = new Answer(measure.Measure, measure.Contrasts)
            orderby answer.IsShown ? 0 : 1, answer.IsShown ? place : Unshown(measure.Measure)
            select answer;
        return [.. answers];
    }

    private static int Unshown(Measure measure) => Array.IndexOf(Weighty, measure.Id) is >= 0 and var place ? place : Weighty.Length;

    // The trial's own measures have ids of their own; heat and the parts of timing stand in the tables.
    private static int? Place(Measure measure)
    {
        var place = Array.IndexOf(Spoken, measure.Id);
        return place >= 0 ? place : measure is { IsHeadline: true, Kind: MeasureKind.Other } ? Spoken.Length : null;
    }

    /// <summary>Emergence on the calendar, and the differences strip by strip of the weightiest measure; null where there is neither.</summary>
    private static PanelsFigure? Picture(TrialAnalysis analysis, TreatmentTones tones)
    {
        var panels = new List<FigurePanel>();
        if (EmergencePart.Figure(analysis, tones) is { } emergence)
        {
            panels.Add(new(analysis.Heat is { } heat ? $"Seeds up by day, and by heat ({heat.Clock.HeatMethod.Name})" : "Seeds up by day", emergence, EmergenceShare));
        }

        var compared = Pictured.Select(id => analysis.Measures.FirstOrDefault(measure => measure.Measure.Id == id && !measure.Contrasts.IsEmpty)).OfType<MeasureComparison>();
        foreach (var measure in compared.Take(panels.Count == 0 ? 2 : 1))
        {
            IFigure figure = measure.Pairs is { } pairs
                ? DifferencePart.Pairs(analysis.Trial, measure, pairs, tones)
                : DifferencePart.AgainstControl(analysis, measure, tones) ?? DifferencePart.Means(analysis, measure, tones);
            panels.Add(new($"{measure.Measure.Label}, {(measure.Pairs is null ? "block by block" : "pair by pair")}", figure));
        }

        return panels.Count == 0 ? null : new(panels, string.Join(" ", panels.Select(panel => panel.Figure.AltText).Distinct(StringComparer.Ordinal)));
    }

    // Of what was not shown, the measure that pays before the one that leads to it.
    private static string? Next(TrialAnalysis analysis)
    {
        string[] asked = ["yield", "stand", "t50", "spread"];
        var open =
            from id in asked
            from measure in analysis.Measures
            where measure.Measure.Id == id
            from contrast in measure.Contrasts
            where contrast is { Detectable: > 0, Estimate: not null }
            orderby contrast.Verdict == Verdict.Shown ? 1 : 0
            select PageWords.Next(measure.Measure, contrast, TrialWords.Replicates(analysis.Trial));
        return open.FirstOrDefault();
    }

    private sealed record Answer(Measure Measure, ImmutableArray<Contrast> Contrasts)
    {
        public bool IsShown => Contrasts.Any(contrast => contrast.Verdict == Verdict.Shown);

        public bool IsWeighty => Weighty.Contains(Measure.Id, StringComparer.Ordinal);
    }

    private sealed record PageDraft(int Answers, int Doubts, int Letters = WholeTexts)
    {
        /// <summary>Whether it says what the differences are worth.</summary>
        public bool TellsWorth => Doubts > 0;

        /// <summary>The most comparisons of one outcome of a measure that are named.</summary>
        public int Compared => Letters == WholeTexts ? 6 : 3;

        /// <summary>The letters of a doubt; all of it stands under the doubts.</summary>
        public int DoubtLetters => Math.Min(Letters, MostOfADoubt);
    }
}
