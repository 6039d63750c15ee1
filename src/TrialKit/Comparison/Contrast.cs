using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>A treatment against another: the difference, how sure it is, and what the trial could have seen.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with, the control where there is one.</param>
/// <param name="Difference">Treatment less baseline, in the measure's unit.</param>
/// <param name="Estimate">The difference with its standard error; null when it has none.</param>
/// <param name="P">The two-sided p that the verdict rests on, adjusted when several treatments are compared; null when no test could be made.</param>
/// <param name="Interval">The interval that belongs to that p; null when there is none.</param>
/// <param name="Detectable">The true difference that a trial with this spread and layout would show with a chance of <see cref="DetectablePower"/>; null when it cannot be said.</param>
/// <param name="Level">The level of the interval and the verdict.</param>
/// <param name="JudgedBy">The procedure behind p and interval.</param>
public sealed record Contrast(
    Treatment Treatment,
    Treatment Baseline,
    double Difference,
    TEstimate? Estimate,
    Probability? P,
    Interval? Interval,
    double? Detectable,
    ConfidenceLevel Level,
    Method JudgedBy)
{
    /// <summary>The chance at which <see cref="Detectable"/> is stated.</summary>
    public const double DetectablePower = 0.80;

    /// <summary>The tests against the margin of the measure; null without a margin or a standard error.</summary>
    public Equivalence? Equivalence { get; init; }

    /// <summary>The error of a trial of one replicate, from which that of any number follows; null without a standard error.</summary>
    public ReplicateError? OfOneReplicate { get; init; }

    /// <summary>The alpha that the adjustment for several treatments leaves to this comparison alone; null without an interval.</summary>
    internal double? OwnAlpha => this is { Estimate: { } estimate, Interval: { } interval }
        ? 2 * StudentT.UpperTail((interval.High - interval.Low) / 2 / estimate.StandardError, estimate.DegreesOfFreedom)
        : null;

    /// <summary>Whether the difference was shown to be smaller than a margin set beforehand.</summary>
    public bool IsWithinMargin => Equivalence is { } test && test.P.Value < Level.Alpha;

    /// <summary>The two treatments.</summary>
    public ComparedPair Pair => new(Treatment, Baseline);

    /// <summary>What the comparison showed at its level; a difference that was shown goes before equivalence.</summary>
    public Verdict Verdict => P is not { } p ? Verdict.NotJudged : p.Value < Level.Alpha ? Verdict.Shown : IsWithinMargin ? Verdict.Equivalent : Verdict.NotShown;
}
