using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Planning;

/// <summary>The way through a trial on foot: up the first strip, down the next.</summary>
public static class FieldWalk
{
    private const string OnlySpot = "A";

    /// <summary>The strips in the order across the field; those without a place follow as they are listed.</summary>
    /// <param name="trial">The trial.</param>
    public static ImmutableArray<Strip> Strips(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return [.. trial.Strips.OrderBy(strip => strip.Order ?? int.MaxValue)];
    }

    /// <summary>The stops in walking order: the spots that were drawn; else those counted before; else one in each strip.</summary>
    /// <param name="trial">The trial.</param>
    public static ImmutableArray<WalkStop> Stops(StripTrial trial)
    {
        var stops = ImmutableArray.CreateBuilder<WalkStop>();
        var away = true;
        foreach (var strip in Strips(trial))
        {
            var spots = Spots(trial, strip).ToList();
            if (!away)
            {
                spots.Reverse();
            }

            stops.AddRange(spots);
            away = !away;
        }

        return stops.ToImmutable();
    }

    private static IEnumerable<WalkStop> Spots(StripTrial trial, Strip strip)
    {
        var row = PlantDensity.RowOfThousandth(trial.Planting.RowSpacing, trial.Units);
        var drawn = trial.PlannedSpots.Where(spot => ReferenceEquals(spot.Strip, strip)).OrderBy(spot => spot.FromStart.Meters).ToArray();
        if (drawn.Length > 0)
        {
            return drawn.Select(spot => new WalkStop(strip, spot.Name, spot.FromStart, spot.PlanterRow, spot.Row ?? row));
        }

        var known = trial.Emergence.Where(spot => ReferenceEquals(spot.Strip, strip)).Select(spot => (spot.Spot, spot.Row))
            .Concat(trial.StandCounts.Where(count => ReferenceEquals(count.Strip, strip) && count.Spot is not null).Select(count => (Spot: count.Spot!, Row: (UnitsNet.Length?)count.Row)))
            .DistinctBy(spot => spot.Spot, Identifier.Comparer)
            .OrderBy(spot => spot.Spot, StringComparer.OrdinalIgnoreCase)
            .ToArray();
        return known.Length > 0
            ? known.Select(spot => new WalkStop(strip, spot.Spot, FromStart: null, PlanterRow: null, spot.Row ?? row))
            : [new(strip, OnlySpot, FromStart: null, PlanterRow: null, row)];
    }
}
