using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>Seed depth of each strip from plants dug.</summary>
/// <remarks>
/// A depth that was measured is used as it is. For corn without one, depth is the length of the mesocotyl plus 0.75 in, because the crown sets about
/// 0.75 in below the surface (Ohio State University Extension); it misleads where soil was washed on or off. The tolerance of 0.25 in is common practice.
/// </remarks>
public static class SeedDepth
{
    private const double CrownInches = 0.75;
    private const double NearInches = 0.25;

    // A depth read to 0.01 in on the limit must not fall out by a rounding error of the conversion.
    private const double RoundingInches = 1e-9;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Seed depth of plants dug",
        "Ohio State University Extension (corn: mesocotyl plus 0.75 in); within 0.25 in of target is common practice",
        "docs/methods/depth.md");

    /// <summary>How close to the target a depth counts as near it: 0.25 in.</summary>
    public static Length Near { get; } = Length.FromInches(NearInches);

    /// <summary>The depths, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a depth are not listed, volunteers are left out.</param>
    public static ImmutableArray<StripDepth> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var isCorn = Identifier.Same(trial.Crop.Name, "corn");
        var plants = trial.Plants
            .Where(plant => plant.Fate != PlantFate.Volunteer && (plant.Depth is not null || (isCorn && plant.Mesocotyl is not null)))
            .ToLookup(plant => plant.Strip.Name, Identifier.Comparer);
        return [.. trial.Strips
            .Where(strip => plants.Contains(strip.Name))
            .Select(strip => Of(strip, [.. plants[strip.Name]], trial.Planting.Depth))];
    }

    private static StripDepth Of(Strip strip, ImmutableArray<Plant> plants, Length? target)
    {
        var inches = plants
            .Select(plant => Guard.NotNegative((plant.Depth ?? (plant.Mesocotyl!.Value + Length.FromInches(CrownInches))).Inches, "seed depth, in", nameof(plants)))
            .Order()
            .ToArray();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var derived = plants.Count(plant => plant.Depth is null);
        if (derived > 0)
        {
            findings.Add(new(
                "depth-from-mesocotyl",
                FindingWeight.Note,
                string.Create(CultureInfo.InvariantCulture, $"The depth of {derived} of {plants.Length} plants is the length of the mesocotyl plus {CrownInches} in; it misleads where soil was washed on or off."),
                strip.Name));
        }

        return new(
            strip,
            inches.Length,
            Length.FromInches(Summary.Mean(inches)),
            inches.Length > 1 ? Length.FromInches(Summary.StandardDeviation(inches)) : null,
            target,
            target is { } aim ? 100.0 * inches.Count(depth => Math.Abs(depth - aim.Inches) <= NearInches + RoundingInches) / inches.Length : null,
            findings.ToImmutable());
    }
}
