using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Linear;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>All pairs of treatments of an analysis in blocks, by every procedure, and the letters that follow.</summary>
internal static class PairwiseComparisons
{
    /// <summary>The pairs; none without an error to judge them by.</summary>
    /// <param name="anova">The analysis.</param>
    /// <param name="strips">Its strips.</param>
    /// <param name="design">The design.</param>
    /// <param name="contrasts">The comparisons of the verdict, whose p need not be integrated again.</param>
    public static ImmutableArray<PairwiseComparison> Of(BlockAnova anova, JoinedStrips strips, Design design, ImmutableArray<Contrast> contrasts)
    {
        if (anova.Error.Status != FStatus.Defined || anova.Treatments.P is not { } overall)
        {
            return [];
        }

        var degrees = anova.Error.DegreesOfFreedom;
        var isAgainstControl = strips.ControlIndex(design) >= 0;
        var tukey = ContrastFamily.AllPairs(anova, design.Level);
        var pairs = Pairs(strips.Treatments.Length).ToArray();
        var errors = pairs.Select(pair => anova.DifferenceStandardError(pair.Treatment, pair.Baseline)!.Value).ToArray();
        var t = pairs.Select((pair, index) => Math.Abs(anova.Difference(pair.Treatment, pair.Baseline)) / errors[index]).ToArray();
        double[] alone = [.. t.Select(value => Math.Min(1, 2 * StudentT.UpperTail(value, degrees)))];
        var holm = Multiplicity.Holm(alone);
        return [.. pairs.Select((pair, index) => new PairwiseComparison(
            strips.Treatments[pair.Treatment],
            strips.Treatments[pair.Baseline],
            anova.Difference(pair.Treatment, pair.Baseline),
            errors[index],
            LeastSignificantDifference.Of(errors[index], degrees, design.Level.Alpha),
            Probability.Of(alone[index]),
            Probability.Of(Math.Max(alone[index], overall)),
            (isAgainstControl ? null : Judged(pair)) ?? Probability.Of(tukey.P(t[index])),
            Probability.Of(holm[index]),
            isAgainstControl ? Judged(pair) : null))];

        Probability? Judged((int Treatment, int Baseline) pair)
        {
            var (treatment, baseline) = (strips.Treatments[pair.Treatment], strips.Treatments[pair.Baseline]);
            return contrasts.FirstOrDefault(contrast => (contrast.Treatment == treatment && contrast.Baseline == baseline) || (contrast.Treatment == baseline && contrast.Baseline == treatment))?.P;
        }
    }

    /// <summary>The letters of each treatment.</summary>
    public static ImmutableArray<TreatmentLetters> Letters(BlockAnova anova, JoinedStrips strips, ImmutableArray<PairwiseComparison> pairwise, ConfidenceLevel level)
    {
        if (pairwise.IsEmpty)
        {
            return [];
        }

        var places = Pairs(strips.Treatments.Length).Select((pair, index) => (pair, index)).ToDictionary(entry => (entry.pair.Baseline, entry.pair.Treatment), entry => entry.index);
        var lsd = By(pair => pair.Unadjusted);
        var guarded = By(pair => pair.Protected);
        var tukey = By(pair => pair.Tukey);
        var holm = By(pair => pair.Holm);
        return [.. strips.Treatments.Select((treatment, index) => new TreatmentLetters(treatment, lsd[index], guarded[index], tukey[index], holm[index]))];

        ImmutableArray<string> By(Func<PairwiseComparison, Probability> p) =>
            Numerics.Linear.Letters.Of(anova.Means.AsSpan(), (first, second) => p(pairwise[places[(first, second)]]).Value < level.Alpha);
    }

    private static IEnumerable<(int Treatment, int Baseline)> Pairs(int treatments) =>
        from treatment in Enumerable.Range(0, treatments)
        from baseline in Enumerable.Range(0, treatment)
        select (treatment, baseline);
}
