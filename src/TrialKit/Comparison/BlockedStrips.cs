using System.Collections.Immutable;
using TrialKit.Numerics.Linear;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Compares treatments in blocks: analysis of variance, then each treatment with the control (Dunnett), or all pairs (Tukey) where there is none.</summary>
internal static class BlockedStrips
{
    /// <summary>The comparison of one measure.</summary>
    /// <param name="values">The measure on each strip.</param>
    /// <param name="trial">The trial.</param>
    public static MeasureComparison Compare(StripMeasure values, StripTrial trial)
    {
        var (design, measure) = (trial.Design, values.Measure);
        var all = JoinedStrips.Of(values, trial.Treatments, design.Control);
        var findings = BlockFindings.Of(values, all, trial).ToList();
        if (all.Blocks.Length < 2 || all.Treatments.Length < 2)
        {
            return new(values, PairedStrips.StripMeans(values, trial.Treatments), [], Pairs: null, Blocks: null, [.. findings]);
        }

        // A treatment on one strip is fitted by its own mean and changes nothing for the others, which are tested without it.
        var whole = Anova(all);
        ImmutableArray<TreatmentMean> means = [.. all.Treatments.Select((treatment, index) => new TreatmentMean(treatment, whole.Design.Replicates[index], whole.Means[index]))];
        var strips = all.Replicated(design.Control);
        if (strips.Blocks.Length < 2 || strips.Treatments.Length < 2)
        {
            findings.Add(BlockFindings.NoReplicates(measure));
            return new(values, means, [.. Untested(all, whole, design, Methods.BlockAnova)], Pairs: null, Blocks: null, [.. findings]);
        }

        var anova = strips == all ? whole : Anova(strips);
        findings.AddRange(BlockFindings.Of(values, anova));
        findings.AddRange(ResidualChecks.Of(measure, anova, strips));
        findings.AddRange(MeasureMargin.Findings(measure, trial));
        var tested = Contrasts(anova, strips, design, measure.Unit, MeasureMargin.Of(measure, trial));
        var asked = Untested(all, whole, design, tested[0].JudgedBy).ToArray();
        ImmutableArray<Contrast> contrasts =
        [
            .. asked.Select(contrast => tested.FirstOrDefault(other => other.Pair == contrast.Pair) ?? contrast),
            .. tested.Where(contrast => asked.All(other => other.Pair != contrast.Pair)),
        ];
        return new(values, means, contrasts, Pairs: null, Tests(anova, strips, measure.Unit, design, tested), [.. findings]);
    }

    private static BlockAnova Anova(JoinedStrips strips) => BlockAnova.Of(
        [.. strips.Entries.Select(entry => entry.Value)],
        [.. strips.Entries.Select(entry => strips.BlockIndex(entry.Strip))],
        [.. strips.Entries.Select(entry => strips.TreatmentIndex(entry.Strip))]);

    private static IEnumerable<Contrast> Untested(JoinedStrips strips, BlockAnova anova, Design design, Method judgedBy) =>
        from pair in strips.ComparedPairs(design)
        select Untested(strips, pair.Treatment, pair.Baseline, anova.Difference(pair.Treatment, pair.Baseline), design.Level, judgedBy);

    private static Contrast Untested(JoinedStrips strips, int treatment, int baseline, double difference, ConfidenceLevel level, Method judgedBy) =>
        new(strips.Treatments[treatment], strips.Treatments[baseline], difference, Estimate: null, P: null, Interval: null, Detectable: null, level, judgedBy);

    private static BlockTests Tests(BlockAnova anova, JoinedStrips strips, Unit unit, Design design, ImmutableArray<Contrast> contrasts)
    {
        double[] observed = [.. strips.Entries.Select(entry => entry.Value)];
        var pairwise = PairwiseComparisons.Of(anova, strips, design, contrasts);
        return new(Table(anova, unit), [.. strips.Entries.Select((entry, index) => new StripValue(entry.Strip, anova.Residuals[index]))])
        {
            Randomization = BlockRankTests.Randomization(anova, observed),
            Friedman = BlockRankTests.Friedman(anova, observed),
            NonAdditivity = NonAdditivity.Of(anova) is { F: { } f, P: { } p } test ? new(f, 1, test.DegreesOfFreedom, Probability.Of(p), Methods.NonAdditivity) : null,
            Efficiency = anova.BlockEfficiency,
            Pairwise = pairwise,
            Letters = PairwiseComparisons.Letters(anova, strips, pairwise, design.Level),
        };
    }

    private static ImmutableArray<Contrast> Contrasts(BlockAnova anova, JoinedStrips strips, Design design, Unit unit, double? margin)
    {
        var control = strips.ControlIndex(design);
        var family = control >= 0 ? ContrastFamily.AgainstControl(anova, control, design.Level) : ContrastFamily.AllPairs(anova, design.Level);
        return [.. strips.ComparedPairs(design).Select(pair => Contrast(anova, strips, pair.Treatment, pair.Baseline, family, design.Level, unit, margin))];
    }

    private static Contrast Contrast(BlockAnova anova, JoinedStrips strips, int treatment, int baseline, ContrastFamily family, ConfidenceLevel level, Unit unit, double? margin)
    {
        var difference = anova.Difference(treatment, baseline);
        if (anova.Error.Status != FStatus.Defined || anova.DifferenceStandardError(treatment, baseline) is not { } error)
        {
            return Untested(strips, treatment, baseline, difference, level, family.Method);
        }

        var replicates = Math.Min(anova.Design.Replicates[treatment], anova.Design.Replicates[baseline]);
        var estimate = new TEstimate(difference, error, anova.Error.DegreesOfFreedom, replicates, unit, Methods.BlockAnova);
        var half = family.CriticalValue * error;
        return new(
            strips.Treatments[treatment],
            strips.Treatments[baseline],
            difference,
            estimate,
            Probability.Of(family.P(Math.Abs(estimate.T))),
            new Interval(difference - half, difference + half, level),
            family.DetectableInErrors(Comparison.Contrast.DetectablePower) * error,
            level,
            family.Method)
        {
            Equivalence = margin is { } known ? Equivalence.Of(estimate, known, level, family.P, () => family.CriticalValueOfBothSides) : null,
            OfOneReplicate = new(Math.Sqrt(2 * anova.ErrorMeanSquare!.Value), anova.Design.Treatments - 1),
        };
    }

    private static AnovaTable Table(BlockAnova anova, Unit unit) => new(
        [Row("blocks", anova.Blocks), Row("treatments", anova.Treatments), Row("error", anova.Error)],
        anova.GrandMean,
        anova.CoefficientOfVariation,
        unit,
        Methods.BlockAnova);

    private static AnovaRow Row(string source, VarianceLine line) =>
        new(source, line.SumOfSquares, line.DegreesOfFreedom, line.F, line.P is { } p ? Probability.Of(p) : null);
}
