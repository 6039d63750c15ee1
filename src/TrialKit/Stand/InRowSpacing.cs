using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>Spacing of plants in the row of each strip, from their places on a tape.</summary>
/// <remarks>
/// A gap is the distance between neighbours on the tape of one spot; volunteers and plants that died are left out. Gaps of a strip's spots are pooled.
/// The classes refer to the spacing of the seeds, not of the plants that stand.
/// </remarks>
public static class InRowSpacing
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "In-row spacing: standard deviation and classes by seed spacing",
        "Kachman & Smith 1995, Trans. ASAE 38:379-387, after ISO 7256-1:1984; shares of gaps unless said to be by place",
        "docs/methods/spacing.md");

    /// <summary>The spacings, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a plant on the tape are not listed.</param>
    public static ImmutableArray<StripSpacing> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var seedSpacing = trial.Planting.Seeds?.SeedSpacing(trial.Planting.RowSpacing);
        var plants = OnTheTape(trial);
        return [.. trial.Strips
            .Where(strip => plants.Contains(strip.Name))
            .Select(strip => Of(strip, [.. plants[strip.Name].GroupBy(plant => plant.Spot, Identifier.Comparer)], seedSpacing))];
    }

    /// <summary>The gaps between neighbours of each strip, in the order of the strips, the narrowest first.</summary>
    /// <param name="trial">The trial; strips without a plant on the tape are not listed.</param>
    public static ImmutableArray<StripGaps> Gaps(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var plants = OnTheTape(trial);
        return [.. trial.Strips
            .Where(strip => plants.Contains(strip.Name))
            .Select(strip => new StripGaps(strip, [.. plants[strip.Name].GroupBy(plant => plant.Spot, Identifier.Comparer).SelectMany(Neighbours).Select(pair => pair.Inches).Order().Select(inches => Length.FromInches(inches))]))];
    }

    private static ILookup<string, Plant> OnTheTape(StripTrial trial) => trial.Plants
        .Where(plant => plant.Position is not null && plant.Fate is not (PlantFate.Volunteer or PlantFate.Died))
        .ToLookup(plant => plant.Strip.Name, Identifier.Comparer);

    private static StripSpacing Of(Strip strip, ImmutableArray<IGrouping<string, Plant>> spots, Length? seedSpacing)
    {
        var neighbours = spots.SelectMany(Neighbours).ToImmutableArray();
        var gaps = neighbours.Select(pair => pair.Inches).Order().ToArray();
        if (gaps.Length < 2)
        {
            Finding few = new("spacing-few-gaps", FindingWeight.Caution, "Fewer than two gaps between plants were measured, so their spacing is not summarised.", strip.Name);
            return new(strip, spots.Length, gaps.Length, Mean: null, StandardDeviation: null, seedSpacing, Classes: null, Precision: null, Odd: [], [few]);
        }

        var mean = Length.FromInches(Summary.Mean(gaps));
        var deviation = Length.FromInches(Summary.StandardDeviation(gaps));
        if (seedSpacing?.Inches is not { } reference)
        {
            Finding rate = new("spacing-no-seeding-rate", FindingWeight.Caution, "The seeding rate is not recorded, so gaps cannot be told apart as multiples, singles and missed places.", strip.Name);
            return new(strip, spots.Length, gaps.Length, mean, deviation, SeedSpacing: null, Classes: null, Precision: null, Odd: [], [rate]);
        }

        var singles = gaps.Where(gap => SpacingClasses.Kind(gap / reference) == SpacingKind.Single).ToArray();
        return new(
            strip,
            spots.Length,
            gaps.Length,
            mean,
            deviation,
            seedSpacing,
            SpacingClasses.Of([.. gaps.Select(gap => gap / reference)]),
            singles.Length > 1 ? 100 * Summary.StandardDeviation(singles) / reference : null,
            [.. neighbours
                .Select(pair => new OddSpacing(SpacingClasses.Kind(pair.Inches / reference), pair.Before, pair.After, Length.FromInches(pair.Inches), pair.Inches / reference))
                .Where(odd => odd.Kind != SpacingKind.Single)],
            Findings: []);
    }

    private static IEnumerable<(Plant Before, Plant After, double Inches)> Neighbours(IEnumerable<Plant> spot)
    {
        var tape = spot
            .OrderBy(plant => Guard.Finite(plant.Position!.Value.Inches, "position on the tape, in", nameof(spot)))
            .ThenBy(plant => plant.Name, StringComparer.Ordinal)
            .ToArray();
        return tape.Zip(tape.Skip(1), (before, after) => (before, after, after.Position!.Value.Inches - before.Position!.Value.Inches));
    }
}
