using TrialKit.Emergence;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>For the reviewer: the curve chosen, each treatment's times with intervals, checks of the comparison on time, and the table of indices.</summary>
internal static class EmergenceReviewPart
{
    // Scores are shares of one; sums of them are zero to this.
    private const double Rounding = 1e-12;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        if (analysis.Emergence is not { } review)
        {
            yield break;
        }

        yield return new Heading(2, "Emergence, for the reviewer");
        yield return new Table(
            "Shapes of curve tried, one for all strips",
            [new("Curve"), new("AIC", Alignment: ColumnAlignment.Right), new("Strips", Alignment: ColumnAlignment.Right), new("Used")],
            [.. review.Curve.Candidates.Select(candidate => TableRow.Of(
                candidate.Model,
                NumberText.Number(candidate.Aic, 1),
                NumberText.Count(review.Curve.Strips),
                candidate.Model == review.Curve.Model ? "yes" : ""))],
            review.Curve.Reason);
        yield return Times(analysis, review);
        if (review.Tests.Any())
        {
            yield return Tests(analysis, review);
        }

        if (Indices(analysis) is { } indices)
        {
            yield return indices;
        }
    }

    private static Table Times(TrialAnalysis analysis, EmergenceReview review)
    {
        var level = analysis.Trial.Design.Level;
        var rows =
            from treatment in review.Treatments
            from time in treatment.Times
            select TableRow.Of(
                treatment.Treatment.Label,
                time.Label,
                $"{NumberText.Count(time.Strips)} of {NumberText.Count(treatment.Strips)}",
                NumberText.Number(time.Mean, 2),
                TimingText.Range(time.ByStrips?.IntervalAt(level)),
                NumberText.Number(time.Pooled, 2),
                TimingText.Range(time.PooledInterval));
        return new(
            "Times of each treatment, days after planting",
            [
                new("Treatment"),
                new("Time"),
                new("Strips", Alignment: ColumnAlignment.Right),
                new("Mean", "d", ColumnAlignment.Right),
                new($"{level} interval", "d", ColumnAlignment.Right),
                new("Pooled", "d", ColumnAlignment.Right),
                new($"{level} interval", "d", ColumnAlignment.Right),
            ],
            [.. rows],
            "Mean and first interval rest on the strips' own times and their spread: they are the default. Pooled is one curve fitted to all seeds of the treatment, its interval a sandwich with strips as clusters, which with few strips is too narrow. Where a strip never reaches a share of its seeds, no mean is given.");
    }

    private static Table Tests(TrialAnalysis analysis, EmergenceReview review)
    {
        var level = analysis.Trial.Design.Level;
        var rows = review.Tests.SelectMany(test => test.Scores
            .Select(score => TableRow.Of(
                $"{test.Treatment.Label} less {test.Baseline.Label}",
                $"score test, {score.Of}",
                NumberText.Count(score.Blocks),
                Direction(score),
                NumberText.Dash,
                score.IsExact ? NumberText.PValue(score.P?.Value) : $"{NumberText.PValue(score.P?.Value)} (normal)",
                NumberText.PValue(score.SmallestP.Value)))
            .Concat(test.Pooled is { } pooled
                ? [TableRow.Of(
                    $"{test.Treatment.Label} less {test.Baseline.Label}",
                    $"pooled {review.Curve.Model} curve",
                    NumberText.Count(pooled.LogRatio.Replicates),
                    $"{NumberText.Number(pooled.Ratio, 3)} times as long",
                    TimingText.Ratio(pooled.IntervalAt(level)),
                    NumberText.PValue(pooled.LogRatio.PTwoSided.Value),
                    NumberText.Dash)]
                : []));
        return new(
            "Time compared in two further ways",
            [
                new("Comparison"),
                new("Method"),
                new("Blocks", Alignment: ColumnAlignment.Right),
                new("With the treatment"),
                new($"{level} interval", Alignment: ColumnAlignment.Right),
                new("p", Alignment: ColumnAlignment.Right),
                new("Smallest p possible", Alignment: ColumnAlignment.Right),
            ],
            [.. rows],
            "The verdicts rest on strip values; these are checks. The score test exchanges whole strips within blocks: of seeds sown it sees share and time together, of plants up time alone. The pooled curve gives each block a time of its own and takes strips as clusters.");
    }

    private static Table? Indices(TrialAnalysis analysis)
    {
        var treatments = analysis.Trial.Treatments;
        var strips = analysis.Strips.Emergence.Where(strip => strip.Strip.IsAnalysed && !strip.Indices.IsEmpty).ToArray();
        var rows = strips
            .SelectMany(strip => strip.Indices.Select(index => (strip.Strip.Treatment, Index: index)))
            .Where(entry => !IsHeatToShare(entry.Index.Id))
            .GroupBy(entry => entry.Index.Id, StringComparer.Ordinal)
            .Select(kind => TableRow.Of(
            [
                kind.First().Index.Method.Name,
                kind.First().Index.Unit.Symbol,
                .. treatments.Select(treatment => Mean([.. kind.Where(entry => Trials.Identifier.Same(entry.Treatment.Name, treatment.Name)).Select(entry => entry.Index.Value)])),
            ]))
            .ToArray();
        return rows.Length == 0
            ? null
            : new(
                "Timing indices, mean of strips",
                [new("Index"), new("Unit"), .. treatments.Select(treatment => new TableColumn(treatment.Label, Alignment: ColumnAlignment.Right))],
                rows,
                "They read a plant as up at the visit that found it and may be compared only between strips with the same visits. A dash: not defined, or not reached, in some strip. Sources, each strip's values and the times to shares in heat stand in the written tables.");
    }

    private static bool IsHeatToShare(string id) =>
        id.StartsWith("heat-", StringComparison.Ordinal) && (id.EndsWith("-of-up", StringComparison.Ordinal) || id.EndsWith("-of-sown", StringComparison.Ordinal));

    // Without a p nothing was scored; a sum of zero leans to neither side.
    internal static string Direction(TimeScoreTest score) => score.P is null ? NumberText.Dash
        : Math.Abs(score.Statistic) < Rounding ? "neither"
        : score.Statistic > 0 ? "sooner" : "later";

    private static string Mean(double?[] values) =>
        values.Length == 0 || values.Any(value => value is null) ? NumberText.Dash : NumberText.Figures(values.Average()!.Value, 4);
}
