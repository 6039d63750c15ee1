using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>The report of trials put together: the answers, a forest for each measure, the tables, doubts and methods.</summary>
public static class PoolReport
{
    /// <summary>The report as plain data.</summary>
    /// <param name="pooled">The trials put together.</param>
    /// <param name="settings">Sheet, inputs and warnings.</param>
    public static ReportDocument Of(PooledTrials pooled, ReportSettings settings)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        ArgumentNullException.ThrowIfNull(settings);
        var title = $"{NumberText.CountWord(pooled.Sites.Length)} trials together";
        Block[] blocks =
        [
            new Heading(1, title),
            new KeyFacts([.. pooled.Sites.Select(site => new KeyFact(site.Name, $"{site.Trial.Title}; {TrialWords.Layout(site.Trial)}"))]),
            .. pooled.ComparedPairs.SelectMany(pair => Answers(pooled, pair)),
            new Paragraph(TrialWords.Level(pooled), TextSize.Small),
            new PageBreak(),
            .. pooled.ComparedPairs.SelectMany(pair => Forests(pooled, pair)),
            .. pooled.ComparedPairs.SelectMany(pair => Tables(pooled, pair)),
            .. Doubts(pooled),
            .. MethodPart.Of(pooled.Methods, settings),
        ];
        return new(title, $"The same comparison at {string.Join(", ", pooled.Sites.Select(site => site.Name))}", "en-US", settings.PageSize, new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(settings.Inputs)), blocks);
    }

    private static IEnumerable<PooledComparison> Headlines(PooledTrials pooled, ComparedPair pair) => pooled.Comparisons.Where(comparison => comparison.Pair == pair && comparison.Measure.IsHeadline);

    private static IEnumerable<Block> Answers(PooledTrials pooled, ComparedPair pair) =>
    [
        new Heading(2, pair.ToString()),
        new MarkedSentences(
            [.. Headlines(pooled, pair).Select(comparison => new MarkedSentence(
                VerdictSentence.Of(comparison),
                new IntervalMark(comparison.Interval.Low, comparison.Reml.Estimate.Value, comparison.Interval.High, comparison.Verdict == Verdict.Shown ? MarkTone.Shown : MarkTone.NotShown)))],
            $"less with {pair.Treatment.Label}",
            "more"),
    ];

    private static IEnumerable<Block> Forests(PooledTrials pooled, ComparedPair pair) =>
    [
        new Heading(2, $"Site by site: {pair}"),
        .. Headlines(pooled, pair).Select(Forest),
    ];

    private static FigureBlock Forest(PooledComparison comparison)
    {
        var measure = comparison.Measure;
        var (reml, interval, another) = (comparison.Reml.Estimate, comparison.Interval, comparison.Reml.Prediction!.Value);
        var figure = new ForestOfSitesFigure(
            $"{comparison.Pair.Treatment.Label} less {comparison.Pair.Baseline.Label}, {measure.Unit}",
            [.. comparison.Sites.Select(site => Row(site.Site, site.Estimate.Value, site.Estimate.IntervalAt(comparison.Level), site.Weight))],
            Row("together", reml.Value, interval, 1),
            new FigureInterval(another.Low, reml.Value, another.High),
            VerdictSentence.Of(comparison));
        return new(figure, measure.Label, Note: $"{comparison.Level} intervals; a larger dot weighs more. The pale bar is where another site like these would lie.");

        SiteRow Row(string name, double value, Results.Interval range, double weight) =>
            new(name, $"{MeasureText.Difference(measure, value)} ({MeasureText.Interval(measure, range)})", new FigureInterval(range.Low, value, range.High), weight);
    }

    private static IEnumerable<Block> Tables(PooledTrials pooled, ComparedPair pair)
    {
        var compared = pooled.Comparisons.Where(comparison => comparison.Pair == pair).ToArray();
        yield return new Heading(2, $"Every measure: {pair}");
        yield return new Table(
            "Sites weighed in three ways, and all strips in one model",
            [
                new("Measure"),
                new("Sites", Alignment: ColumnAlignment.Right),
                new("REML", Alignment: ColumnAlignment.Right),
                new($"{pooled.Level} interval", Alignment: ColumnAlignment.Right),
                new("p", Alignment: ColumnAlignment.Right),
                new("Moments", Alignment: ColumnAlignment.Right),
                new("Common", Alignment: ColumnAlignment.Right),
                new("Mixed model", Alignment: ColumnAlignment.Right),
                new("its df", Alignment: ColumnAlignment.Right),
                new("its p", Alignment: ColumnAlignment.Right),
                new("Q, p", Alignment: ColumnAlignment.Right),
                new("Between sites", "%", ColumnAlignment.Right),
            ],
            [.. compared.Select(comparison => TableRow.Of(
                MeasureText.Name(comparison.Measure),
                NumberText.Count(comparison.Sites.Length),
                MeasureText.Difference(comparison.Measure, comparison.Reml.Estimate.Value),
                MeasureText.Interval(comparison.Measure, comparison.Interval).Replace(' ', '\u00A0'),
                NumberText.PValue(comparison.Reml.Estimate.PTwoSided.Value),
                MeasureText.Difference(comparison.Measure, comparison.Moments.Estimate.Value),
                MeasureText.Difference(comparison.Measure, comparison.Common.Estimate.Value),
                comparison.Mixed?.Estimate is { } mixed ? MeasureText.Difference(comparison.Measure, mixed.Value) : NumberText.Dash,
                NumberText.Number(comparison.Mixed?.Estimate?.DegreesOfFreedom, 1),
                NumberText.PValue(comparison.Mixed?.Estimate?.PTwoSided.Value),
                $"{NumberText.Number(comparison.Heterogeneity.Statistic, 1)}, {NumberText.PValue(comparison.Heterogeneity.P.Value)}",
                NumberText.Number(100 * comparison.Inconsistency, 0)))],
            "The verdict is that of REML. Moments and common effect weigh the same sites otherwise; the mixed model takes every strip, with Satterthwaite's degrees of freedom. Q asks whether sites differ by more than their errors; the last column is the share of the spread that lies between sites.");
    }

    private static IEnumerable<Block> Doubts(PooledTrials pooled)
    {
        var notes = FindingNotes.Of(pooled.AllFindings, [.. pooled.Comparisons.Select(comparison => comparison.Measure)]).ToArray();
        return notes.Length == 0 ? [] : [new Heading(2, "Doubts and notes"), .. notes];
    }
}
