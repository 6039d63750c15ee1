using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>What belongs to a comparison in blocks alone.</summary>
/// <param name="Anova">The analysis of variance.</param>
/// <param name="Residuals">Observed less fitted, with the strip.</param>
public sealed record BlockTests(AnovaTable Anova, ImmutableArray<StripValue> Residuals)
{
    /// <summary>The randomisation test of any difference between treatments; null without variation.</summary>
    public ExactP? Randomization { get; init; }

    /// <summary>Friedman's test on ranks within blocks; null with a strip missing, without variation within blocks or with fewer than three treatments.</summary>
    public FTest? Friedman { get; init; }

    /// <summary>Tukey's test that treatments differ alike in all blocks; null without two degrees of freedom of error, or where blocks or treatments do not differ.</summary>
    public FTest? NonAdditivity { get; init; }

    /// <summary>How many strips without blocks would do what one does in blocks; above 1 the blocks paid. Null with a strip missing or without an error.</summary>
    public double? Efficiency { get; init; }

    /// <summary>Every pair of treatments by every procedure, for the reader who wants another one than the verdict's; empty without an error.</summary>
    public ImmutableArray<PairwiseComparison> Pairwise { get; init; } = [];

    /// <summary>Letters of each treatment by each procedure; empty without an error.</summary>
    public ImmutableArray<TreatmentLetters> Letters { get; init; } = [];
}
