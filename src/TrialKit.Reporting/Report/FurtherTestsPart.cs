using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>For the reviewer: the tests beside the verdict's own. No verdict rests on them.</summary>
internal static class FurtherTestsPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        Table?[] tables = [PairTable(analysis), AllStripsTable(analysis), BlockTable(analysis), .. analysis.Measures.Where(measure => measure.Measure.IsHeadline).SelectMany(measure => new[] { PairwiseTable(measure, analysis.Trial.Design), LetterTable(measure) }), EquivalenceTable(analysis)];
        return tables.OfType<Table>().ToArray() is { Length: > 0 } shown ? [new Heading(2, "Beside the verdicts"), .. shown] : [];
    }

    private static Table? PairTable(TrialAnalysis analysis)
    {
        var rows = (
            from comparison in analysis.Measures
            where comparison.Pairs is { Median: not null }
            let pairs = comparison.Pairs!
            select TableRow.Of(
                MeasureText.Name(comparison.Measure),
                MeasureText.Difference(comparison.Measure, pairs.Median!.Value),
                NumberText.Range(pairs.Median.Low, pairs.Median.High, value => MeasureText.Difference(comparison.Measure, value)).Replace(' ', '\u00A0'),
                NumberText.Percent(pairs.Median.AchievedConfidence, 1),
                pairs.Signs is { } signs ? $"{NumberText.Count(signs.More)}, {NumberText.Count(signs.Less)}, {NumberText.Count(signs.Equal)}" : NumberText.Dash,
                NumberText.PValue(pairs.Signs?.Test?.P.Value),
                NumberText.PValue(pairs.SignedRankPratt?.P.Value))).ToArray();
        return rows.Length == 0
            ? null
            : new(
                "Pairs without the bell shape",
                [
                    new("Measure"),
                    new("Median shift", Alignment: ColumnAlignment.Right),
                    new("Interval", Alignment: ColumnAlignment.Right),
                    new("Confidence", Alignment: ColumnAlignment.Right),
                    new("More, less, equal", Alignment: ColumnAlignment.Right),
                    new("p, sign test", Alignment: ColumnAlignment.Right),
                    new("p, signed rank, zeros ranked", Alignment: ColumnAlignment.Right),
                ],
                rows,
                "Hodges and Lehmann's estimate; its interval has the confidence stated, the nearest the pairs can give. The sign test leaves out equal pairs; the last column ranks them first (Pratt).");
    }

    private static Table? AllStripsTable(TrialAnalysis analysis)
    {
        var rows = (
            from comparison in analysis.Measures
            where comparison.Pairs is { AllStrips: not null }
            let pairs = comparison.Pairs!
            let all = pairs.AllStrips!
            select TableRow.Of(
                MeasureText.Name(comparison.Measure),
                NumberText.Count(2 * pairs.Pairs.Length),
                NumberText.Count(all.Strips),
                MeasureText.Difference(comparison.Measure, comparison.Contrasts[0].Difference),
                MeasureText.Difference(comparison.Measure, all.Estimate.Value),
                MeasureText.Interval(comparison.Measure, all.Estimate.IntervalAt(analysis.Trial.Design.Level)).Replace(' ', '\u00A0'),
                NumberText.Number(all.Estimate.DegreesOfFreedom, 1),
                NumberText.PValue(all.Estimate.PTwoSided.Value))).ToArray();
        return rows.Length == 0
            ? null
            : new(
                "With the strips whose pair lost the other",
                [
                    new("Measure"),
                    new("Strips in pairs", Alignment: ColumnAlignment.Right),
                    new("Strips in the model", Alignment: ColumnAlignment.Right),
                    new("Difference, pairs", Alignment: ColumnAlignment.Right),
                    new("Difference, model", Alignment: ColumnAlignment.Right),
                    new($"{analysis.Trial.Design.Level} interval, model", Alignment: ColumnAlignment.Right),
                    new("df", Alignment: ColumnAlignment.Right),
                    new("p, model", Alignment: ColumnAlignment.Right),
                ],
                rows,
                "The verdict rests on whole pairs. The mixed model (pair random, REML, Satterthwaite's degrees of freedom) also takes the strips that are left alone.");
    }

    private static Table? BlockTable(TrialAnalysis analysis)
    {
        var rows = (
            from comparison in analysis.Measures
            where comparison.Blocks is not null
            let blocks = comparison.Blocks!
            select TableRow.Of(
                comparison.Measure.Label,
                NumberText.PValue(blocks.Anova.Treatments.P?.Value),
                NumberText.PValue(blocks.Randomization?.P.Value),
                NumberText.PValue(blocks.Friedman?.P.Value),
                NumberText.Number(blocks.Efficiency, 2),
                NumberText.PValue(blocks.NonAdditivity?.P.Value))).ToArray();
        var seed = analysis.Measures.Select(measure => measure.Blocks?.Randomization).FirstOrDefault(test => test?.Seed is not null);
        return rows.Length == 0
            ? null
            : new(
                "Any difference between treatments, and what the blocks did",
                [
                    new("Measure"),
                    new("p, F", Alignment: ColumnAlignment.Right),
                    new("p, rearranged", Alignment: ColumnAlignment.Right),
                    new("p, Friedman", Alignment: ColumnAlignment.Right),
                    new("Efficiency of blocks", Alignment: ColumnAlignment.Right),
                    new("p, non-additivity", Alignment: ColumnAlignment.Right),
                ],
                rows,
                "Rearranged: treatments exchanged within blocks, " + (seed is null ? "every arrangement counted." : FormattableString.Invariant($"{seed.Draws} arrangements drawn where there are too many to count, seed {seed.Seed}.")) + " An efficiency above 1 says that blocks saved strips. Non-additivity asks whether treatments differ more where the block's level is higher.");
    }

    private static Table? PairwiseTable(MeasureComparison comparison, Design design) => comparison.Blocks is { Pairwise: { IsEmpty: false } pairwise }
        ? new(
            $"{comparison.Measure.Label}: every pair by every procedure",
            [
                new("Compared"),
                new("Difference", comparison.Measure.Unit.Symbol, ColumnAlignment.Right),
                new($"LSD, {NumberText.Level(design.Level.Alpha)}", Alignment: ColumnAlignment.Right),
                new("p, LSD", Alignment: ColumnAlignment.Right),
                new("p, after F", Alignment: ColumnAlignment.Right),
                new("p, Holm", Alignment: ColumnAlignment.Right),
                new("p, Tukey", Alignment: ColumnAlignment.Right),
                new("p, Dunnett", Alignment: ColumnAlignment.Right),
            ],
            [.. pairwise.Select(pair => TableRow.Of(
                $"{pair.Treatment.Label} less {pair.Baseline.Label}",
                MeasureText.Difference(comparison.Measure, pair.Difference),
                MeasureText.Value(comparison.Measure, pair.Lsd),
                NumberText.PValue(pair.Unadjusted.Value),
                NumberText.PValue(pair.Protected.Value),
                NumberText.PValue(pair.Holm.Value),
                NumberText.PValue(pair.Tukey.Value),
                NumberText.PValue(pair.Dunnett?.Value)))])
        : null;

    private static Table? LetterTable(MeasureComparison comparison) => comparison.Blocks is { Letters.IsEmpty: false } blocks
        ? new(
            $"{comparison.Measure.Label}: letters by four procedures",
            [new("Treatment"), new("Mean", comparison.Measure.Unit.Symbol, ColumnAlignment.Right), new("LSD"), new("LSD after F"), new("Holm"), new("Tukey")],
            [.. blocks.Letters.Select(letters => (Letters: letters, comparison.Means.First(mean => mean.Treatment == letters.Treatment).Mean)).OrderByDescending(row => row.Mean).Select(row => TableRow.Of(
                row.Letters.Treatment.Label,
                MeasureText.Value(comparison.Measure, row.Mean),
                row.Letters.Lsd,
                row.Letters.Protected,
                row.Letters.Holm,
                row.Letters.Tukey))],
            "Sharing a letter means not shown to differ, never the same. LSD guards one comparison, not all of them; Holm and Tukey guard all.")
        : null;

    private static Table? EquivalenceTable(TrialAnalysis analysis)
    {
        var rows = (
            from comparison in analysis.Measures
            from contrast in comparison.Contrasts
            where contrast.Equivalence is not null
            let test = contrast.Equivalence!
            select TableRow.Of(
                MeasureText.Name(comparison.Measure),
                contrast.Pair.ToString(),
                MeasureText.Value(comparison.Measure, test.Margin),
                test.Interval is { } interval ? MeasureText.Interval(comparison.Measure, interval).Replace(' ', '\u00A0') : NumberText.Dash,
                NumberText.PValue(test.P.Value),
                contrast.IsWithinMargin ? "shown" : "not shown",
                NumberText.Percent(test.Below.Value, 1),
                NumberText.Percent(test.Above.Value, 1))).ToArray();
        return rows.Length == 0
            ? null
            : new(
                "Against the margins set beforehand",
                [
                    new("Measure"),
                    new("Compared"),
                    new("Margin", Alignment: ColumnAlignment.Right),
                    new("Interval of 1 − 2 alpha", Alignment: ColumnAlignment.Right),
                    new("p", Alignment: ColumnAlignment.Right),
                    new("Within the margin"),
                    new("Chance below", Alignment: ColumnAlignment.Right),
                    new("Chance above", Alignment: ColumnAlignment.Right),
                ],
                rows,
                "Two one-sided tests; p is the larger, and the interval lies within the margin just where p is below alpha. The chances are that the true difference lies beyond the margin on either side, under a flat prior.");
    }
}
