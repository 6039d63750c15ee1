using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Two treatments of blocks by every procedure.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with.</param>
/// <param name="Difference">Treatment less baseline, in the measure's unit.</param>
/// <param name="StandardError">Of the difference.</param>
/// <param name="Lsd">The least significant difference at the trial's level.</param>
/// <param name="Unadjusted">Two-sided p of this pair alone, Fisher's LSD: it guards one comparison, and over more than three treatments not the family.</param>
/// <param name="Protected">The larger of that and the p of F: LSD made only after F.</param>
/// <param name="Tukey">Adjusted for all pairs.</param>
/// <param name="Holm">Adjusted for all pairs, step-down.</param>
/// <param name="Dunnett">Adjusted for all comparisons with the control; null for a pair without it.</param>
public sealed record PairwiseComparison(
    Treatment Treatment,
    Treatment Baseline,
    double Difference,
    double StandardError,
    double Lsd,
    Probability Unadjusted,
    Probability Protected,
    Probability Tukey,
    Probability Holm,
    Probability? Dunnett);
