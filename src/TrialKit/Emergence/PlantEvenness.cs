using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>Lags of single plants behind the first, the median and the neighbours of their spot.</summary>
/// <remarks>
/// A plant is dated by the visit that found it, and so is what it is compared with. With a visit a day the two delays are alike on average; with visits
/// further apart they hang on where the visits fall, and nothing is summed up. Where any plant of the trial has
/// the date it was first seen, those records are used for all strips; else the counts of the visits, each new plant a plant. Volunteers are left out.
/// </remarks>
public static class PlantEvenness
{
    /// <summary>Days behind the first plant beyond which a plant is called late: little yield was lost within 3 days (Nemergut et al. 2021, Agron. J.).</summary>
    public const double LateDays = 3;

    /// <summary>Days by which a visit may miss a full number of days: 3 h.</summary>
    internal const double Slack = (3.0 / 24) + 1e-9;

    private const double MostUnequal = 1.25;

    // Stragglers are found late however the visits fall; a tenth of the plants moves a mean lag by little.
    private const double MostFoundLong = 0.1;

    // A standard deviation hangs on the last plants far more than a mean.
    private const double MostFoundLongOfSpread = 0.02;

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

        // The moments at which a plant of the trial was found: the visits of a spot that has none on record.
        DateTime[] seen = [.. trial.Plants.Select(plant => plant.FirstSeen).OfType<DateTime>().Distinct()];
        Finding[] unequal = [.. Unequal(trial.Strips.Where(strip => strip.IsAnalysed).SelectMany(strip => watched[strip.Name]))];
        var strips =
            (from strip in trial.Strips
             let spots = byPlant ? OfPlants(strip, dated[strip.Name], [.. watched[strip.Name]], seen) : watched[strip.Name].Select(OfCounts)
             let known = spots.Where(spot => spot.Visits.Final > 0).ToArray()
             where known.Length > 0
             select (Strip: strip, Spots: known)).ToArray();

        // Judged over the trial: strips with many stragglers must not drop out of a comparison of evenness one by one.
        UpAtVisits[] all = [.. strips.SelectMany(strip => strip.Spots).Select(spot => spot.Visits)];
        int found = all.Sum(spot => spot.Final), foundLong = all.Sum(spot => spot.FoundLong);
        return [.. from entry in strips
                   let tell = foundLong <= MostFoundLong * found && entry.Spots.All(spot => spot.Visits.TellsFirst)
                   select new StripEvenness(entry.Strip, [.. entry.Spots.SelectMany(spot => spot.Lags)], [.. entry.Spots.Select(spot => spot.Visits)], tell, foundLong <= MostFoundLongOfSpread * found, [.. Findings(entry.Strip, entry.Spots, tell, byPlant), .. unequal])];
    }

    private static IEnumerable<Spot> OfPlants(Strip strip, IEnumerable<Plant> plants, WatchedSpot[] watched, DateTime[] seen) =>
        from spot in plants.GroupBy(plant => plant.Spot, Identifier.Comparer)
        let visits = Array.Find(watched, own => Identifier.Same(own.Spot.Spot, spot.Key))?.Visits.Days ?? [.. seen.Select(strip.DaysAfterPlanting).Where(day => day >= 0)]
        let lags = OfPlants(strip, spot).ToArray()
        where lags.Length > 0
        select new Spot(spot.Key, lags, UpAtVisits.Of(visits, [.. lags.Select(lag => lag.Days)]));

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

    private static Spot OfCounts(WatchedSpot spot)
    {
        var newly = WatchedSpot.NewlyUp(Array.ConvertAll(spot.Visits.Up, count => (double)count));
        var days = spot.Visits.Days.SelectMany((day, i) => Enumerable.Repeat(day, (int)newly[i])).ToArray();
        return new(spot.Spot.Spot, [.. days.Select(day => new PlantLag(spot.Spot.Spot, Plant: null, Position: null, day, day - days[0], day - Summary.MedianOfSorted(days), BehindNeighbours: null))], spot.Visits);
    }

    private static IEnumerable<Finding> Findings(Strip strip, Spot[] spots, bool tell, bool byPlant)
    {
        // Of counts it is said of each spot, with its number of plants, that they were up at the first visit.
        var late = spots.Where(spot => spot.Visits.BeganLate).ToArray();
        if (late.Length == 0 && !tell)
        {
            var widest = spots.Max(spot => spot.Visits.WidestRise);
            yield return widest > UpAtVisits.Daily
                ? new("lags-coarse", FindingWeight.Note, string.Create(CultureInfo.InvariantCulture, $"Visits were up to {widest:0.#} days apart while plants came up, so how far plants lag behind each other is known only to within that, and no figure of it is given."), strip.Name)
                : new("lags-coarse-elsewhere", FindingWeight.Note, "Too many plants of other strips came up between visits more than a day apart, so no figure of lags is given here either: strips would be compared that were watched differently.", strip.Name);
        }

        foreach (var spot in byPlant ? late : [])
        {
            yield return new("lags-from-first-visit", FindingWeight.Caution, "Plants date from the first visit on record, so nothing tells when the first came up, and no figure of lags is given; visits that found nothing belong in emergence.csv.", $"{strip.Name}, spot {spot.Name}");
        }
    }

    // The first of many plants is earlier than the first of few. Seeds differ a little even where the same length is watched.
    private static IEnumerable<Finding> Unequal(IEnumerable<WatchedSpot> spots)
    {
        double[] sizes = [.. spots.Select(spot => spot.Seeds ?? 0).Order()];
        if (sizes is [> 0 and var least, .., var most] && most > MostUnequal * least)
        {
            yield return new("spots-of-unequal-size", FindingWeight.Caution, string.Create(CultureInfo.InvariantCulture, $"Spots hold from {least:0.#} to {most:0.#} seeds. The first of many plants comes up sooner than the first of few, so lags behind the first and shares up within hours of it are no fair comparison between strips whose spots differ."));
        }
    }

    /// <summary>A spot with plants up: each plant, and the visits that found them.</summary>
    private sealed record Spot(string Name, PlantLag[] Lags, UpAtVisits Visits);
}
