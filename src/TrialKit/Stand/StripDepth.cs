using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>Seed depth in one strip.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Plants">Plants dug, 1 or more.</param>
/// <param name="Mean">Their mean depth.</param>
/// <param name="StandardDeviation">n - 1; null with one plant.</param>
/// <param name="Target">The depth aimed at; null when not recorded.</param>
/// <param name="PercentNearTarget">Percent of plants within <see cref="SeedDepth.Near"/> of the target; null without a target.</param>
/// <param name="Findings">What a reader should know of it.</param>
public sealed record StripDepth(
    Strip Strip,
    int Plants,
    Length Mean,
    Length? StandardDeviation,
    Length? Target,
    double? PercentNearTarget,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The standard deviation as percent of the mean; null with one plant or a mean of zero.</summary>
    public double? CoefficientOfVariation => Mean.Meters > 0 ? 100 * StandardDeviation?.Meters / Mean.Meters : null;

    /// <summary>Mean less target: above zero when deeper than aimed at; null without a target.</summary>
    public Length? Bias => Mean - Target;
}
