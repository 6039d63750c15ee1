using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>The spacing of plants in the row of one strip, its spots together.</summary>
/// <param name="Strip">The strip; one that is left out of the analysis is summarised all the same.</param>
/// <param name="Spots">Spots with a plant on the tape.</param>
/// <param name="Gaps">Gaps between neighbours within spots.</param>
/// <param name="Mean">The mean gap; null with fewer than two.</param>
/// <param name="StandardDeviation">Of the gaps, n - 1; null with fewer than two.</param>
/// <param name="SeedSpacing">The distance between seeds at the seeding rate, which the classes refer to; null without a rate.</param>
/// <param name="Classes">The gaps by class; null without a seeding rate or with fewer than two gaps.</param>
/// <param name="Precision">Standard deviation of the single gaps as percent of the seed spacing, less is better, 29 when they are spread evenly over their class; null with fewer than two of them.</param>
/// <param name="Odd">Each multiple and each missed place, in the order of spots and tape; empty without classes.</param>
/// <param name="Findings">What a reader should know of it.</param>
public sealed record StripSpacing(
    Strip Strip,
    int Spots,
    int Gaps,
    Length? Mean,
    Length? StandardDeviation,
    Length? SeedSpacing,
    SpacingClasses? Classes,
    double? Precision,
    ImmutableArray<OddSpacing> Odd,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The standard deviation as percent of the mean; null with fewer than two gaps or a mean of zero.</summary>
    public double? CoefficientOfVariation => Mean?.Meters > 0 ? 100 * StandardDeviation?.Meters / Mean?.Meters : null;

    /// <summary>Plants on the tape per seed dropped, by the mean gap, never above 1; null without a seeding rate.</summary>
    public double? Survival => SeedSpacing is { } seeds && Mean is { Meters: > 0 } mean ? Math.Min(1, seeds.Meters / mean.Meters) : null;

    /// <summary>The standard deviation that a perfect drop would have with this survival, seed spacing x sqrt(1 - g) / g: no planter can do better.</summary>
    public Length? Floor => SeedSpacing is { } seeds && Survival is { } survival ? Length.FromMeters(SpacingLimits.FloorOfDeviation(seeds.Meters, survival)) : null;
}
