using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>Stand of each strip from counts along measured lengths of row.</summary>
/// <remarks>
/// Plants per area is plants over row length times row spacing; a strip's stand is the plain mean of its spots.
/// Of several dates at a spot the last is used. Counts of one spot on one date (row by row) are added up.
/// </remarks>
public static class StandCounts
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Plants per area of counted row, mean of spots",
        "Thousandth-acre counts as printed in extension tables (University of Tennessee 2011; University of Nebraska 2009); the strip is the unit, Hurlbert 1984, Ecol. Monogr. 54:187-211",
        "docs/methods/stand.md");

    /// <summary>The stands, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a count are not listed.</param>
    public static ImmutableArray<StripStand> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var counts = trial.StandCounts.ToLookup(count => count.Strip.Name, Identifier.Comparer);
        return [.. trial.Strips
            .Where(strip => counts.Contains(strip.Name))
            .Select(strip => Of(strip, [.. counts[strip.Name]], trial.Planting))];
    }

    private static StripStand Of(Strip strip, ImmutableArray<StandCount> counts, Planting planting)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var spots = counts
            .GroupBy(count => count.Spot ?? string.Empty, Identifier.Comparer)
            .Select(spot => Of(strip, [.. spot], planting.RowSpacing, findings))
            .ToImmutableArray();
        var densities = spots.Select(spot => spot.Density.PerHectare).Order().ToArray();
        var mean = PlantDensity.FromPerHectare(Summary.Mean(densities));
        PlantDensityDifference? deviation = densities.Length > 1
            ? PlantDensityDifference.FromPerHectare(Summary.StandardDeviation(densities))
            : null;
        var percent = planting.Seeds is { } seeds ? 100 * mean.PerHectare / seeds.PerHectare : (double?)null;

        // Lengths converted between units leave a rounding error in the percent of a full stand.
        if (percent > 100 + 1e-6)
        {
            findings.Add(new(
                "stand-over-seeds",
                FindingWeight.Caution,
                string.Create(CultureInfo.InvariantCulture, $"More plants stand than seeds were dropped ({percent:0.0} %): doubles, another seeding rate than recorded, or a row length that is off."),
                strip.Name));
        }

        return new(strip, spots, mean, deviation, percent, findings.ToImmutable());
    }

    private static SpotStand Of(Strip strip, ImmutableArray<StandCount> counts, Length spacing, ImmutableArray<Finding>.Builder findings)
    {
        // A count without a date is taken to come before any that has one.
        var last = counts.Max(count => count.Date);
        var used = counts.Where(count => count.Date == last).ToImmutableArray();
        var spot = counts[0].Spot;
        var place = spot is null ? strip.Name : $"{strip.Name}, spot {spot}";
        if (used.Length < counts.Length)
        {
            findings.Add(new(
                "stand-several-dates",
                FindingWeight.Note,
                string.Create(CultureInfo.InvariantCulture, $"Counted on several dates; the count of {last:yyyy-MM-dd} is used."),
                place));
        }

        if (spot is null && used.Length > 1)
        {
            findings.Add(new(
                "stand-spots-unnamed",
                FindingWeight.Note,
                string.Create(CultureInfo.InvariantCulture, $"{used.Length} counts without a spot were added up as one place; with a spot for each, the strip's own variation would show."),
                place));
        }

        var plants = used.Sum(count => count.Plants);
        var row = Length.FromMeters(Summary.Sum([.. used.Select(count => count.TotalRow.Meters).Order()]));
        return new(spot, last, plants, row, PlantDensity.FromRowCount(plants, row, spacing));
    }
}
