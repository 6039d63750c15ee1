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
        yield return new Paragraph(TrialWords.Level(analysis.Trial.Design), TextSize.Small);
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
            $"p and intervals are those of {analysis.ContrastsOf(pair).First().Contrast.JudgedBy.Name}: adjusted, so that all comparisons of one measure together raise a false alarm at the level stated. Means are adjusted for blocks where strips are missing.");
    }

    private static Table AnovaTable(MeasureComparison[] compared)
    {
        var rows =
            from measure in compared
            let anova = measure.Blocks?.Anova
            where anova is not null
            select TableRow.Of(
                measure.Measure.Label,
                Degrees(anova),
                NumberText.Number(anova.Treatments.F, 2),
                NumberText.PValue(anova.Treatments.P?.Value),
                anova.Error.MeanSquare is { } error ? NumberText.Figures(Math.Sqrt(error), 3) : NumberText.Dash,
                NumberText.Number(anova.CoefficientOfVariation, 1));
        return new(
            "Analysis of variance, treatments",
            [
                new("Measure"),
                new("df", Alignment: ColumnAlignment.Right),
                new("F", Alignment: ColumnAlignment.Right),
                new("p", Alignment: ColumnAlignment.Right),
                new("SD of a strip", Alignment: ColumnAlignment.Right),
                new("CV", "%", ColumnAlignment.Right),
            ],
            [.. rows]);
    }

    // On one line: the two ends of an interval are read together.
    private static string Interval(Measure measure, Contrast contrast) =>
        contrast.Interval is { } interval ? MeasureText.Interval(measure, interval).Replace(' ', '\u00A0') : NumberText.Dash;

    private static string Degrees(AnovaTable anova) => $"{NumberText.Count(anova.Treatments.DegreesOfFreedom)}, {NumberText.Count(anova.Error.DegreesOfFreedom)}";

    private static string Mean(MeasureComparison measure, Treatment treatment) =>
        MeasureText.Value(measure.Measure, measure.Means.FirstOrDefault(mean => Identifier.Same(mean.Treatment.Name, treatment.Name))?.Mean);
}
