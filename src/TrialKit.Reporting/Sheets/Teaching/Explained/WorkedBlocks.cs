using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;
using TrialKit.Trials;

namespace TrialKit.Reporting.Sheets.Teaching.Explained;

/// <summary>The analysis of a real measure in blocks, worked anew from its strip values when no strip is missing, else from the mean squares of the fit.</summary>
internal sealed class WorkedBlocks
{
    private readonly MeasureComparison comparison;
    private readonly BlockTests tests;
    private readonly ConfidenceLevel level;
    private readonly (Strip Strip, double Value)[] strips;
    private readonly string[] blocks;
    private readonly Treatment[] treatments;

    // A search over a double integral, the same for every comparison.
    private readonly Lazy<double> critical;

    public WorkedBlocks(MeasureComparison comparison, BlockTests tests, ConfidenceLevel level)
    {
        (this.comparison, this.tests, this.level) = (comparison, tests, level);
        var used = tests.Residuals.Select(residual => residual.Strip.Name).ToHashSet(Identifier.Comparer);
        strips = [.. comparison.Values.Analysed.Where(entry => used.Contains(entry.Entry.Strip.Name)).Select(entry => (entry.Entry.Strip, entry.Value))];
        blocks = [.. strips.Select(strip => strip.Strip.Block).Distinct(Identifier.Comparer)];
        treatments = [.. comparison.Means.Select(mean => mean.Treatment)];
        critical = new(Critical);
    }

    /// <summary>Whether every treatment stands once in every block, so that the sums by hand hold.</summary>
    public bool IsComplete => strips.Length == blocks.Length * treatments.Length;

    /// <summary>The steps from the strips to F.</summary>
    public IReadOnlyList<WorkedStep> AnovaSteps()
    {
        if (!IsComplete)
        {
            return [];
        }

        var (b, t) = (blocks.Length, treatments.Length);
        var mean = strips.Sum(strip => strip.Value) / strips.Length;
        var total = strips.Sum(strip => Square(strip.Value - mean));
        var byBlock = t * blocks.Sum(block => Square(MeanOf(strip => Identifier.Same(strip.Block, block)) - mean));
        var byTreatment = b * treatments.Sum(treatment => Square(MeanOf(strip => Identifier.Same(strip.Treatment.Name, treatment.Name)) - mean));

        // The residuals themselves are squared: a difference of sums would lose figures where the error is small.
        var error = strips.Sum(strip => Square(
            strip.Value
            - MeanOf(other => Identifier.Same(other.Block, strip.Strip.Block))
            - MeanOf(other => Identifier.Same(other.Treatment.Name, strip.Strip.Treatment.Name))
            + mean));
        var degrees = (b - 1) * (t - 1);
        List<WorkedStep> steps =
        [
            new("grand-mean", "Mean of all strips", $"their sum ÷ {strips.Length}", mean),
            new("ss-total", "Total sum of squares", "each strip less the mean of all, squared, added up", total),
            new("ss-blocks", "Sum of squares, blocks", $"{t} × each block's mean less the mean of all, squared, added up", byBlock),
            new("ss-treatments", "Sum of squares, treatments", $"{b} × each treatment's mean less the mean of all, squared, added up", byTreatment),
            new("ss-error", "Sum of squares, error", "what blocks and treatments leave of each strip, squared, added up", error),
            new("df-treatments", "Degrees of freedom, treatments", $"{t} − 1", t - 1),
            new("df-error", "Degrees of freedom, error", $"({b} − 1) × ({t} − 1)", degrees),
            new("ms-treatments", "Mean square, treatments", $"{Text(byTreatment)} ÷ {t - 1}", byTreatment / (t - 1)),
            new("ms-error", "Mean square, error", $"{Text(error)} ÷ {degrees}", error / degrees),
        ];
        if (tests.Anova.Treatments.F is not null)
        {
            var f = byTreatment / (t - 1) / (error / degrees);
            steps.Add(new("f", "F", $"{Text(byTreatment / (t - 1))} ÷ {Text(error / degrees)}", f));
            steps.Add(new("p-f", "p of F", $"upper tail of F beyond {Text(f)}, {t - 1} and {degrees} df", PrintedTables.PofF(f, t - 1, degrees).Value));
        }

        return steps;
    }

    /// <summary>The steps of one comparison; empty when no test could be made.</summary>
    public IReadOnlyList<WorkedStep> Steps(Contrast contrast)
    {
        if (contrast.Estimate is not { } estimate)
        {
            return [];
        }

        var degrees = (int)estimate.DegreesOfFreedom;
        var (treated, baseline) = (MeanOf(contrast.Treatment), MeanOf(contrast.Baseline));
        var difference = treated - baseline;
        var meanSquare = IsComplete ? AnovaSteps().Single(step => step.Id == "ms-error").Value : tests.Anova.Error.MeanSquare!.Value;
        var error = IsComplete ? Math.Sqrt(2 * meanSquare / blocks.Length) : estimate.StandardError;
        var t = difference / error;
        var p = AgainstControl ? PrintedTables.PofDunnett(t, Strips(contrast.Baseline), Others(contrast.Baseline), degrees) : PrintedTables.PofRange(Math.Abs(t) * Math.Sqrt(2), treatments.Length, degrees);
        var family = AgainstControl ? $"Dunnett's t, {treatments.Length - 1} against one" : $"studentized range of {treatments.Length} ÷ √2";
        var half = critical.Value * error;
        return
        [
            new("difference", "Difference", $"{Text(treated)} − {Text(baseline)}", difference),
            new("error", "Standard error of the difference", IsComplete ? $"√(2 × {Text(meanSquare)} ÷ {blocks.Length})" : "from the fit, since strips are missing", error),
            new("t", "t", $"{Text(difference)} ÷ {Text(error)}", t),
            new("p", "p, for all comparisons together", $"{family}, beyond {Text(Math.Abs(t))}, {degrees} df", p.Value),
            new("critical", $"Value for the {level} interval", $"{family}, passed by chance in {NumberText.Level(level.Alpha)}, {degrees} df", critical.Value),
            new("half", "Half the interval", $"{Text(critical.Value)} × {Text(error)}", half),
            new("low", "Lower end", $"{Text(difference)} − {Text(half)}", difference - half),
            new("high", "Upper end", $"{Text(difference)} + {Text(half)}", difference + half),
        ];
    }

    /// <summary>The working as blocks of a document.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new Paragraph("Each strip gives one value. What a whole block has in common is taken out first; what then remains beside the treatments is the error that they are judged by.");
        yield return new Table(
            "Strip by strip",
            [new("Block"), .. treatments.Select(treatment => Number(treatment.Label)), Number("Mean")],
            [.. blocks.Select(Row), new TableRow([IsComplete ? "Mean" : "Plain mean", .. treatments.Select(treatment => Text(MeanOf(strip => Identifier.Same(strip.Treatment.Name, treatment.Name)))), Text(MeanOf(_ => true))], Strong: true)]);
        if (IsComplete)
        {
            yield return WorkedComparison.Table("From the strips to F", AnovaSteps());
        }
        else
        {
            yield return new Paragraph("Strips are missing, so blocks and treatments overlap and their sums of squares cannot be added up by hand: they come from fitting blocks and treatments together by least squares, treatments after blocks. The means of treatments below are those of the fit, as if every block held every treatment.");
            yield return new Table(
                "The fit",
                [new("Source"), Number("Sum of squares"), Number("Degrees of freedom"), Number("Mean square"), Number("F")],
                [.. tests.Anova.Rows.Select(row => TableRow.Of(row.Source, Text(row.SumOfSquares), NumberText.Count(row.DegreesOfFreedom), row.MeanSquare is { } square ? Text(square) : NumberText.Dash, row.F is { } f ? Text(f) : NumberText.Dash))]);
        }

        foreach (var contrast in comparison.Contrasts)
        {
            if (Steps(contrast) is { Count: > 0 } steps)
            {
                yield return WorkedComparison.Table($"{contrast.Treatment.Label} less {contrast.Baseline.Label}", steps);
            }
        }
    }

    private bool AgainstControl => comparison.Contrasts.All(contrast => contrast.Baseline == comparison.Contrasts[0].Baseline) && comparison.Contrasts.Length == treatments.Length - 1;

    private double Critical()
    {
        var (baseline, degrees) = (comparison.Contrasts[0].Baseline, tests.Anova.Error.DegreesOfFreedom);
        return AgainstControl
            ? PrintedTables.Dunnett(Strips(baseline), Others(baseline), degrees, level.Alpha)
            : PrintedTables.Range(treatments.Length, degrees, level.Alpha) / Math.Sqrt(2);
    }

    private static string Text(double value) => WorkedComparison.Text(value);

    private static TableColumn Number(string header) => new(header, Alignment: ColumnAlignment.Right);

    private static double Square(double value) => value * value;

    private TableRow Row(string block) => TableRow.Of(
    [
        block,
        .. treatments.Select(treatment => strips.Where(strip => Identifier.Same(strip.Strip.Block, block) && Identifier.Same(strip.Strip.Treatment.Name, treatment.Name)).Select(strip => Text(strip.Value)).FirstOrDefault(NumberText.Dash)),
        Text(MeanOf(strip => Identifier.Same(strip.Block, block))),
    ]);

    private double MeanOf(Func<Strip, bool> isWanted) => strips.Where(strip => isWanted(strip.Strip)).Average(strip => strip.Value);

    // With strips missing the mean is the fit's, adjusted for the blocks a treatment stands in.
    private double MeanOf(Treatment treatment) => IsComplete
        ? MeanOf(strip => Identifier.Same(strip.Treatment.Name, treatment.Name))
        : comparison.Means.Single(mean => mean.Treatment == treatment).Mean;

    private int Strips(Treatment treatment) => strips.Count(strip => Identifier.Same(strip.Strip.Treatment.Name, treatment.Name));

    private int[] Others(Treatment control) => [.. treatments.Where(treatment => treatment != control).Select(Strips)];
}
