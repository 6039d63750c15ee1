using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>One measure compared between the treatments of a trial.</summary>
/// <param name="Values">The measure and its strip values.</param>
/// <param name="Means">The treatments' means, in the trial's order; a treatment without a value is absent.</param>
/// <param name="Contrasts">Treatment less control, one per treatment; in blocks without a control, each pair of treatments.</param>
/// <param name="Pairs">The pairs and their exact tests; null in blocks.</param>
/// <param name="Blocks">The analysis of variance; null in pairs, and where it cannot be made.</param>
/// <param name="Findings">What to doubt about this measure.</param>
public sealed record MeasureComparison(
    StripMeasure Values,
    ImmutableArray<TreatmentMean> Means,
    ImmutableArray<Contrast> Contrasts,
    PairTests? Pairs,
    BlockTests? Blocks,
    ImmutableArray<Finding> Findings)
{
    /// <summary>What was measured.</summary>
    public Measure Measure => Values.Measure;
}
