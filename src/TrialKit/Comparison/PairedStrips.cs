using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Pairs;
using TrialKit.Numerics.Power;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Compares two treatments strip by strip within pairs.</summary>
internal static class PairedStrips
{
    /// <summary>The paired t with its interval, the exact tests, and what to doubt.</summary>
    /// <param name="values">The measure on each strip.</param>
    /// <param name="treatment">The treatment.</param>
    /// <param name="control">The control.</param>
    /// <param name="trial">The trial, whose design gives level and margins.</param>
    public static MeasureComparison Compare(StripMeasure values, Treatment treatment, Treatment control, StripTrial trial)
    {
        var level = trial.Design.Level;
        var pairs = Pairs(values, treatment, control);
        var differences = pairs.Select(pair => pair.Difference).ToArray();
        var findings = new List<Finding>();
        var allStrips = PairModel.Of(values, pairs, treatment);
        findings.AddRange(PairFindings.Of(values, pairs, level, allStrips));
        findings.AddRange(PairChecks.Of(values.Measure, pairs));
        findings.AddRange(MeasureMargin.Findings(values.Measure, trial));
        if (pairs.IsEmpty)
        {
            return new(values, StripMeans(values, [treatment, control]), [], new PairTests(pairs), Blocks: null, [.. findings]);
        }

        var estimate = Spread.Exists(pairs) ? Estimate(differences, values.Measure.Unit) : null;
        var contrast = new Contrast(
            treatment,
            control,
            Summary.Mean(differences),
            estimate,
            estimate?.PTwoSided,
            estimate?.IntervalAt(level),
            estimate is null ? null : PairedPower.DetectableDifference(Summary.StandardDeviation(differences), differences.Length, level.Alpha, Contrast.DetectablePower),
            level,
            Methods.PairedT)
        {
            Equivalence = estimate is not null && MeasureMargin.Of(values.Measure, trial) is { } margin
                ? Equivalence.Of(estimate, margin, level, t => (estimate with { Value = t * estimate.StandardError }).PTwoSided.Value, () => StudentT.UpperQuantile(level.Alpha, estimate.DegreesOfFreedom))
                : null,
            OfOneReplicate = estimate is null ? null : new(Summary.StandardDeviation(differences), 1),
        };
        var isTested = pairs.Length > 1;
        var tests = new PairTests(pairs)
        {
            SignFlips = isTested ? SignFlipsOf(differences) : null,
            SignedRank = isTested ? SignedRankOf(differences, ZeroTreatment.Drop, Methods.SignedRank) : null,
            SignedRankPratt = isTested ? SignedRankOf(differences, ZeroTreatment.Pratt, Methods.SignedRankPratt) : null,
            Signs = isTested ? SignsOf(differences) : null,
            Median = isTested ? MedianOf(differences, level) : null,
            AllStrips = allStrips,
        };
        return new(values, PairMeans(pairs, treatment, control), [contrast], tests, Blocks: null, [.. findings]);
    }

    /// <summary>The pairs that have both strips, in field order where it is known, else in the order of the record.</summary>
    internal static ImmutableArray<PairDifference> Pairs(StripMeasure values, Treatment treatment, Treatment control)
    {
        var pairs =
            from entry in values.Analysed
            group entry by entry.Entry.Strip.Block.Trim() into block
            let treated = Find(block, treatment)
            let untreated = Find(block, control)
            where treated is not null && untreated is not null
            select new PairDifference(block.Key, treated.Value.Entry.Strip, untreated.Value.Entry.Strip, treated.Value.Value, untreated.Value.Value);
        return [.. pairs.OrderBy(pair => Math.Min(pair.Treated.Order ?? int.MaxValue, pair.Control.Order ?? int.MaxValue))];

        static (StripValue Entry, double Value)? Find(IEnumerable<(StripValue Entry, double Value)> block, Treatment wanted) =>
            block.Where(entry => Identifier.Same(entry.Entry.Strip.Treatment.Name, wanted.Name)).Select(entry => ((StripValue, double)?)entry).FirstOrDefault();
    }

    private static TEstimate Estimate(double[] differences, Unit unit)
    {
        var error = Summary.StandardDeviation(differences) / Math.Sqrt(differences.Length);
        return new(Summary.Mean(differences), error, differences.Length - 1, differences.Length, unit, Methods.PairedT);
    }

    private static ExactP SignFlipsOf(double[] differences)
    {
        var result = SignFlips.Test(differences);
        return new(
            Probability.Of(result.P),
            Probability.Of(result.IsExact ? SignFlips.SmallestP(differences) : 1 / (1.0 + result.Total)),
            differences.Length,
            Methods.SignFlips)
        {
            Draws = result.Draws,
            Seed = result.Seed,
        };
    }

    private static ExactP? SignedRankOf(double[] differences, ZeroTreatment zeros, Method method)
    {
        var result = SignedRank.Exact(differences, zeros);
        return result.Used == 0 ? null : new(Probability.Of(result.P), Probability.Of(SignFlips.SmallestP(result.Used)), result.Used, method);
    }

    private static SignCount SignsOf(double[] differences)
    {
        var result = SignTest.Exact(differences);
        var used = result.Plus + result.Minus;
        return new(
            result.Plus,
            result.Minus,
            result.Zeros,
            used == 0 ? null : new ExactP(Probability.Of(result.P), Probability.Of(SignFlips.SmallestP(used)), used, Methods.SignTest));
    }

    private static MedianDifference MedianOf(double[] differences, ConfidenceLevel level)
    {
        var result = HodgesLehmann.Estimate(differences, level.Confidence);
        return new(result.Estimate, result.Lower, result.Upper, result.AchievedLevel, result.AchievedLevel >= level.Confidence, Methods.HodgesLehmann);
    }

    private static ImmutableArray<TreatmentMean> PairMeans(ImmutableArray<PairDifference> pairs, Treatment treatment, Treatment control) =>
    [
        new(treatment, pairs.Length, Summary.Mean([.. pairs.Select(pair => pair.TreatedValue)])),
        new(control, pairs.Length, Summary.Mean([.. pairs.Select(pair => pair.ControlValue)])),
    ];

    /// <summary>Plain means over the strips that have a value.</summary>
    internal static ImmutableArray<TreatmentMean> StripMeans(StripMeasure values, IEnumerable<Treatment> treatments) =>
    [
        .. from treatment in treatments
           let own = values.Analysed.Where(entry => Identifier.Same(entry.Entry.Strip.Treatment.Name, treatment.Name)).Select(entry => entry.Value).ToArray()
           where own.Length > 0
           select new TreatmentMean(treatment, own.Length, Summary.Mean(own)),
    ];
}
