using System.Collections.Immutable;
using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Stand;

/// <summary>The stand of one strip from its spots.</summary>
/// <param name="Strip">The strip; one that is left out of the analysis is summarised all the same.</param>
/// <param name="Spots">The spots used, one or more, in the order they were written down.</param>
/// <param name="Mean">The mean of the spots.</param>
/// <param name="StandardDeviation">Among spots, n - 1; null with one spot.</param>
/// <param name="PercentOfSeeds">The mean as percent of the seeds dropped, never clipped; null without a seeding rate.</param>
/// <param name="Findings">What a reader should know of it.</param>
/// <remarks>The interval is for the strip as planted. Spots are subsamples: treatments are compared on strips (Hurlbert 1984, Ecol. Monogr. 54:187-211).</remarks>
public sealed record StripStand(
    Strip Strip,
    ImmutableArray<SpotStand> Spots,
    PlantDensity Mean,
    PlantDensityDifference? StandardDeviation,
    double? PercentOfSeeds,
    ImmutableArray<Finding> Findings)
{
    /// <summary>Standard error of the mean; null with one spot.</summary>
    public PlantDensityDifference? StandardError => StandardDeviation is { } deviation
        ? PlantDensityDifference.FromPerHectare(deviation.PerHectare / Math.Sqrt(Spots.Length))
        : null;

    /// <summary>The standard deviation as percent of the mean; null with one spot or without plants.</summary>
    public double? CoefficientOfVariation => Mean.PerHectare > 0 ? 100 * StandardDeviation?.PerHectare / Mean.PerHectare : null;

    /// <summary>The t interval of the mean in plants per acre or per hectare; null with one spot. Its lower end may lie below zero.</summary>
    /// <param name="level">The level.</param>
    /// <param name="units">Acres or hectares.</param>
    public Interval? IntervalAt(ConfidenceLevel level, UnitSystem units)
    {
        if (StandardError is not { } error)
        {
            return null;
        }

        var half = StudentT.UpperQuantile(level.Alpha / 2, Spots.Length - 1) * (units == UnitSystem.Us ? error.PerAcre : error.PerHectare);
        var mean = units == UnitSystem.Us ? Mean.PerAcre : Mean.PerHectare;
        return new(mean - half, mean + half, level);
    }
}
