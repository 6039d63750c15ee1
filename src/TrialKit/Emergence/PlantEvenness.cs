using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>Lags of single plants behind the first, the median and the neighbours of their spot.</summary>
/// <remarks>
/// A plant is dated by the visit that found it; the same delay is in what it is compared with, so it leaves the lag. Where any plant of the trial has
/// the date it was first seen, those records are used for all strips; else the counts of the visits, each new plant a plant. Volunteers are left out.
/// </remarks>
public static class PlantEvenness
{
    /// <summary>Days behind the first plant beyond which a plant is called late: little yield was lost within 3 days (Nemergut et al. 2021, Agron. J.).</summary>
    public const double LateDays = 3;

    /// <summary>Days by which a visit may miss a full number of days: 3 h.</summary>
    internal const double Slack = (3.0 / 24) + 1e-9;

    private const double DailyVisits = 1.25;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Lags of plants behind the first, the median and the neighbours of their spot",
        "late: more than 3 days behind the first, Nemergut et al. 2021, Agron. J.; 24 and 48 h are common practice",
        "docs/methods/evenness.md");

    /// <summary>The evenness of each strip, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a dated plant are not listed.</param>
    public static ImmutableArray<StripEvenness> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var dated = trial.Plants.Where(plant => plant.Fate != PlantFate.Volunteer).ToLookup(plant => plant.Strip.Name, Identifier.Comparer);
        var watched = trial.Emergence.Where(spot => spot.IsTimed).ToLookup(spot => spot.Strip.Name, spot => WatchedSpot.Of(spot, trial.Planting), Identifier.Comparer);
        var byPlant = trial.Plants.Any(plant => plant is { FirstSeen: not null, Fate: not PlantFate.Volunteer });
        return [.. from strip in trial.Strips
                   let lags = byPlant
                       ? dated[strip.Name].GroupBy(plant => plant.Spot, Identifier.Comparer).SelectMany(spot => OfPlants(strip, spot)).ToImmutableArray()
                       : watched[strip.Name].SelectMany(OfCounts).ToImmutableArray()
                   where lags.Length > 0
                   select new StripEvenness(strip, lags, [.. Findings(strip, watched[strip.Name])])];
    }

    private static IEnumerable<PlantLag> OfPlants(Strip strip, IEnumerable<Plant> spot)
    {
        var tape = spot.OrderBy(plant => plant.Position?.Inches ?? double.PositiveInfinity).ThenBy(plant => plant.Name, StringComparer.Ordinal).ToArray();
        var days = tape.Select(plant => plant.FirstSeen is { } seen ? strip.DaysAfterPlanting(seen) : (double?)null).ToArray();
        var known = days.OfType<double>().Order().ToArray();
        for (var i = 0; i < tape.Length; i++)
        {
            if (days[i] is { } day)
            {
                yield return new(tape[i].Spot, tape[i].Name, tape[i].Position, day, day - known[0], day - Summary.MedianOfSorted(known), day - Neighbours(i));
            }
        }

        double? Neighbours(int i) => i > 0 && i + 1 < tape.Length && tape[i].Position is not null && tape[i + 1].Position is not null ? (days[i - 1] + days[i + 1]) / 2 : null;
    }

    private static IEnumerable<PlantLag> OfCounts(WatchedSpot spot)
    {
        var newly = WatchedSpot.NewlyUp(Array.ConvertAll(spot.Up, count => (double)count));
        var days = spot.Days.SelectMany((day, i) => Enumerable.Repeat(day, (int)newly[i])).ToArray();
        return days.Select(day => new PlantLag(spot.Spot.Spot, Plant: null, Position: null, day, day - days[0], day - Summary.MedianOfSorted(days), BehindNeighbours: null));
    }

    private static IEnumerable<Finding> Findings(Strip strip, IEnumerable<WatchedSpot> spots)
    {
        var widest = spots.SelectMany(spot => spot.Days.Zip(spot.Days.Skip(1), (from, to) => to - from).Where((_, i) => spot.Up[i] > 0 && spot.Up[i + 1] > spot.Up[i])).DefaultIfEmpty(0).Max();
        if (widest > DailyVisits)
        {
            yield return new("lags-coarse", FindingWeight.Note, string.Create(CultureInfo.InvariantCulture, $"Visits were up to {widest:0.#} days apart while plants came up, so lags between plants are known to within that."), strip.Name);
        }
    }
}
