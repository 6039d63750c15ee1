using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Explained;

/// <summary>The paired t of a real measure, worked anew from its strip values.</summary>
/// <param name="Comparison">A comparison of pairs.</param>
/// <param name="Tests">Its pairs.</param>
/// <param name="Level">The level of interval and verdict.</param>
internal sealed record WorkedPairs(MeasureComparison Comparison, PairTests Tests, ConfidenceLevel Level)
{
    private double[] Differences { get; } = [.. Tests.Pairs.Select(pair => pair.TreatedValue - pair.ControlValue)];

    private int Count => Differences.Length;

    private double Mean => Differences.Sum() / Count;

    /// <summary>The steps from the differences to p; empty with fewer than two pairs, or when nothing varies.</summary>
    public IReadOnlyList<WorkedStep> Steps()
    {
        var squares = Differences.Sum(each => (each - Mean) * (each - Mean));
        if (Comparison.Contrasts is not [{ Estimate: not null }])
        {
            return [];
        }

        var variance = squares / (Count - 1);
        var deviation = Math.Sqrt(variance);
        var error = deviation / Math.Sqrt(Count);
        var t = Mean / error;
        var critical = PrintedTables.T(Count - 1, Level.Alpha);
        var half = critical * error;
        return
        [
            new("sum", "Sum of the differences", "the column above, added up", Differences.Sum()),
            new("mean", "Mean difference", $"{Text(Differences.Sum())} ÷ {Count}", Mean),
            new("squares", "Sum of squares", "the last column above, added up", squares),
            new("variance", "Variance of the differences", $"{Text(squares)} ÷ ({Count} − 1)", variance),
            new("deviation", "Standard deviation", $"√{Text(variance)}", deviation),
            new("error", "Standard error of the mean", $"{Text(deviation)} ÷ √{Count}", error),
            new("df", "Degrees of freedom", $"{Count} − 1", Count - 1),
            new("t", "t", $"{Text(Mean)} ÷ {Text(error)}", t),
            new("p", "p, two-sided", $"both tails of t beyond {Text(Math.Abs(t))}, {Count - 1} df", PrintedTables.PofT(t, Count - 1).Value),
            new("critical", $"t of the {Level} interval", $"passed by chance in {NumberText.Level(Level.Alpha)}, {Count - 1} df", critical),
            new("half", "Half the interval", $"{Text(critical)} × {Text(error)}", half),
            new("low", "Lower end", $"{Text(Mean)} − {Text(half)}", Mean - half),
            new("high", "Upper end", $"{Text(Mean)} + {Text(half)}", Mean + half),
        ];
    }

    /// <summary>The working as blocks of a document.</summary>
    public IEnumerable<Block> Blocks()
    {
        var contrast = Comparison.Contrasts[0];
        yield return new Paragraph($"Each pair gives one difference: the strip with {contrast.Treatment.Label} less the strip with {contrast.Baseline.Label}. The spots, plants and visits behind a strip's value were summed up before; from here on there is one number a strip, and one a pair.");
        yield return new Table(
            "Pair by pair",
            [new("Pair"), Number(contrast.Treatment.Label), Number(contrast.Baseline.Label), Number("Difference d"), Number("d less the mean"), Number("Squared")],
            [.. Tests.Pairs.Select((pair, i) => TableRow.Of(pair.Block, Text(pair.TreatedValue), Text(pair.ControlValue), Text(Differences[i]), Text(Differences[i] - Mean), Text((Differences[i] - Mean) * (Differences[i] - Mean))))],
            LeftOut());
        if (Steps() is { Count: > 0 } steps)
        {
            yield return WorkedComparison.Table("From the differences to interval and p", steps);
        }
        else
        {
            yield return new Paragraph("With fewer than two pairs, or with differences that are all the same, there is no spread to judge the mean difference by: no t, no interval, no p.");
        }

        if (Tests.SignFlips is { } exact)
        {
            yield return new Paragraph($"Beside it stands the exact test that assumes nothing of how values scatter: of all ways in which the signs of the {NumberText.Count(Count)} differences could be turned, the share whose sum is as far from zero, {NumberText.P(exact.P.Value)}.");
        }
    }

    private static string Text(double value) => WorkedComparison.Text(value);

    private static TableColumn Number(string header) => new(header, Alignment: ColumnAlignment.Right);

    private string? LeftOut()
    {
        var used = Tests.Pairs.SelectMany(pair => new[] { pair.Treated.Name, pair.Control.Name }).ToHashSet(StringComparer.Ordinal);
        string[] others = [.. Comparison.Values.Values.Select(value => value.Strip.Name).Where(name => !used.Contains(name))];
        return others.Length == 0 ? null : $"Not used, for want of a value or of its partner, or left out of the analysis: {string.Join(", ", others)}.";
    }
}
