using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>Every measure with its means, difference, interval and tests.</summary>
internal static class ComparisonPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var compared = analysis.Measures.Where(measure => !measure.Contrasts.IsEmpty).ToArray();
        if (compared.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Every comparison");
        yield return new Paragraph(TrialWords.Level(analysis), TextSize.Small);
        foreach (var pair in analysis.ComparedPairs)
        {
            if (AnswersPart.Forest(analysis, pair) is { } forest)
            {
                yield return forest;
            }

            yield return analysis.Trial.Design.Layout == Layout.Pairs ? PairTable(analysis, pair) : BlockTable(analysis, pair);
        }

        if (analysis.Trial.Design.Layout == Layout.Blocks)
        {
            yield return AnovaTable(compared);
        }
    }

    private static Table PairTable(TrialAnalysis analysis, ComparedPair pair)
    {
        var rows =
            from entry in analysis.ContrastsOf(pair)
            let measure = entry.Measure
            let contrast = entry.Contrast
            select TableRow.Of(
                MeasureText.Name(measure.Measure),
                Mean(measure, pair.Treatment),
                Mean(measure, pair.Baseline),
                MeasureText.Difference(measure.Measure, contrast.Difference),
                Interval(measure.Measure, contrast),
                NumberText.Count(measure.Pairs!.Pairs.Length),
                NumberText.Number(contrast.Estimate?.T, 2),
                NumberText.PValue(contrast.P?.Value),
                NumberText.PValue(measure.Pairs.SignFlips?.P.Value),
                NumberText.PValue(measure.Pairs.SignedRank?.P.Value));
        return new(
            $"{pair.Treatment.Label} less {pair.Baseline.Label}",
            [
                new("Measure"),
                new(pair.Treatment.Label, Alignment: ColumnAlignment.Right),
                new(pair.Baseline.Label, Alignment: ColumnAlignment.Right),
                new("Difference", Alignment: ColumnAlignment.Right),
                new($"{analysis.Trial.Design.Level} interval", Alignment: ColumnAlignment.Right),
                new("Pairs", Alignment: ColumnAlignment.Right),
                new("t", Alignment: ColumnAlignment.Right),
                new("p, t test", Alignment: ColumnAlignment.Right),
                new("p, sign flips", Alignment: ColumnAlignment.Right),
                new("p, signed rank", Alignment: ColumnAlignment.Right),
            ],
            [.. rows],
            "Paired t with one degree of freedom fewer than pairs. Sign flips and signed rank are exact and two-sided; zero differences leave the signed rank.");
    }

    private static Table BlockTable(TrialAnalysis analysis, ComparedPair pair)
    {
        var rows =
            from entry in analysis.ContrastsOf(pair)
            let measure = entry.Measure
            let contrast = entry.Contrast
            select TableRow.Of(
                MeasureText.Name(measure.Measure),
                Mean(measure, pair.Treatment),
                Mean(measure, pair.Baseline),
                MeasureText.Difference(measure.Measure, contrast.Difference),
                Interval(measure.Measure, contrast),
                NumberText.Number(contrast.Estimate?.T, 2),
                contrast.Estimate is { } estimate ? NumberText.Number(estimate.DegreesOfFreedom, 0) : NumberText.Dash,
                NumberText.PValue(contrast.P?.Value));
        return new(
            $"{pair.Treatment.Label} less {pair.Baseline.Label}",
            [
                new("Measure"),
                new(pair.Treatment.Label, Alignment: ColumnAlignment.Right),
                new(pair.Baseline.Label, Alignment: ColumnAlignment.Right),
                new("Difference", Alignment: ColumnAlignment.Right),
                new($"{analysis.Trial.Design.Level} interval", Alignment: ColumnAlignment.Right),
                new("t", Alignment: ColumnAlignment.Right),
                new("df", Alignment: ColumnAlignment.Right),
                new("p", Alignment: ColumnAlignment.Right),
            ],
            [.. rows],
            $"p and intervals are those of {analysis.ContrastsOf(pair).Select(entry => entry.Contrast).OrderBy(contrast => contrast.P is null ? 1 : 0).First().JudgedBy.Name}: adjusted, so that all comparisons of one measure together raise a false alarm at the level stated. Means are adjusted for blocks where strips are missing.");
    }

    private static Table AnovaTable(MeasureComparison[] compared)
    {
        var rows =
            from measure in compared
            where measure.Blocks is not null
            let anova = measure.Blocks!.Anova
            from line in anova.Rows
            select TableRow.Of(
                line == anova.Rows[0] ? MeasureText.Name(measure.Measure) : "",
                line.Source,
                NumberText.Count(line.DegreesOfFreedom),
                NumberText.Figures(line.SumOfSquares, 4),
                line.MeanSquare is { } square ? NumberText.Figures(square, 4) : NumberText.Dash,
                line == anova.Error ? "" : NumberText.Number(line.F, 2),
                line == anova.Error ? "" : NumberText.PValue(line.P?.Value),
                line == anova.Error ? NumberText.Number(anova.CoefficientOfVariation, 1) : "");
        return new(
            "Analysis of variance",
            [
                new("Measure"),
                new("Source"),
                new("df", Alignment: ColumnAlignment.Right),
                new("Sum of squares", Alignment: ColumnAlignment.Right),
                new("Mean square", Alignment: ColumnAlignment.Right),
                new("F", Alignment: ColumnAlignment.Right),
                new("p", Alignment: ColumnAlignment.Right),
                new("CV", "%", ColumnAlignment.Right),
            ],
            [.. rows],
            "One line each for blocks, treatments adjusted for them, and error, whose root is the SD of a strip; squares are in the square of the unit.");
    }

    // On one line: the two ends of an interval are read together.
    private static string Interval(Measure measure, Contrast contrast) =>
        contrast.Interval is { } interval ? MeasureText.Interval(measure, interval).Replace(' ', '\u00A0') : NumberText.Dash;

    private static string Mean(MeasureComparison measure, Treatment treatment) =>
        MeasureText.Value(measure.Measure, measure.Means.FirstOrDefault(mean => Identifier.Same(mean.Treatment.Name, treatment.Name))?.Mean);
}
