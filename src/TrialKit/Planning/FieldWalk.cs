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
        var plain = PlantDensity.RowOfThousandth(trial.Planting.RowSpacing, trial.Units);
        var counts = trial.StandCounts.Where(count => ReferenceEquals(count.Strip, strip)).ToArray();
        var watched = trial.Emergence.Where(spot => ReferenceEquals(spot.Strip, strip)).ToArray();
        var drawn = trial.PlannedSpots.Where(spot => ReferenceEquals(spot.Strip, strip)).OrderBy(spot => spot.FromStart.Meters).ToArray();
        if (drawn.Length > 0)
        {
            return drawn.Select(spot => Stop(spot.Name, spot.Row ?? plain) with { FromStart = spot.FromStart, PlanterRow = spot.PlanterRow, Pass = spot.Pass });
        }

        var known = watched.Select(spot => spot.Spot)
            .Concat(counts.Select(count => count.Spot).OfType<string>())
            .Distinct(Identifier.Comparer)
            .Order(StringComparer.OrdinalIgnoreCase)
            .ToArray();
        return (known.Length > 0 ? known : [OnlySpot]).Select(spot => Stop(spot, plain));

        // A stand is counted as it was before: at this spot, else elsewhere in the strip; visits have a row of their own.
        WalkStop Stop(string spot, UnitsNet.Length length)
        {
            var before = Array.Find(counts, count => count.Spot is { } name && Identifier.Same(name, spot)) ?? counts.FirstOrDefault();
            var row = before?.Row ?? length;
            return new(strip, spot, FromStart: null, PlanterRow: null, row)
            {
                Rows = before?.Rows ?? 1,
                Watched = Array.Find(watched, each => Identifier.Same(each.Spot, spot))?.Row ?? length,
            };
        }
    }
}
