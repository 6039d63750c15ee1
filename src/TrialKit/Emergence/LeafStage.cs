using System.Collections.Immutable;
using TrialKit.Heat;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>Lag of plants in leaf collars behind the mode of their spot, in leaves, heat units and days.</summary>
/// <remarks>
/// In corn a collar takes 82 F-days up to the tenth and 50 after (Nielsen, Purdue University); Iowa State University prints 84 and 56. Of two equally
/// common stages the further is the mode. Both are heat of the air, also where soil temperatures are on record. The resolution is one leaf, some four days.
/// </remarks>
public static class LeafStage
{
    private const int SlowLeaves = 10;
    private const double SlowLeaf = 82;
    private const double FastLeaf = 50;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Leaf-collar lag behind the mode of the spot; in corn 82 F-days a leaf to V10, 50 after",
        "Nielsen, Purdue University; Iowa State University prints 84 and 56",
        "docs/methods/leaf-stage.md");

    /// <summary>Corn heat units from emergence to a number of collars.</summary>
    /// <param name="collars">0 or more.</param>
    public static HeatSum HeatTo(int collars)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(collars);
        return HeatSum.FromFahrenheitDays((SlowLeaf * Math.Min(collars, SlowLeaves)) + (FastLeaf * Math.Max(0, collars - SlowLeaves)));
    }

    /// <summary>The stages, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a staged plant are not listed, volunteers and dead plants left out.</param>
    /// <param name="emergence">The strips' emergence, for the days.</param>
    public static ImmutableArray<StripStage> Of(StripTrial trial, ImmutableArray<StripEmergence> emergence)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var plants = trial.Plants
            .Where(plant => plant.Collars is not null && plant.Fate is not (PlantFate.Volunteer or PlantFate.Died))
            .ToLookup(plant => plant.Strip.Name, Identifier.Comparer);
        return [.. trial.Strips.Where(strip => plants.Contains(strip.Name)).Select(strip =>
            Of(trial, strip, [.. plants[strip.Name]], emergence.FirstOrDefault(entry => Identifier.Same(entry.Strip.Name, strip.Name))))];
    }

    private static StripStage Of(StripTrial trial, Strip strip, ImmutableArray<Plant> plants, StripEmergence? emergence)
    {
        var spots = plants.GroupBy(plant => plant.Spot, Identifier.Comparer).Select(spot => spot.Select(plant => plant.Collars!.Value).ToArray()).ToArray();
        var lags = spots.SelectMany(spot =>
        {
            var mode = spot.GroupBy(collars => collars).OrderByDescending(stage => stage.Count()).ThenByDescending(stage => stage.Key).First().Key;
            return spot.Select(collars => (Mode: mode, Own: Math.Min(mode, collars)));
        }).ToArray();
        var isCorn = Identifier.Same(trial.Crop.Name, "corn");
        var heat = isCorn ? lags.Select(lag => (HeatTo(lag.Mode) - HeatTo(lag.Own)).FahrenheitDays).Order().ToArray() : [];
        return new(
            strip,
            spots.Length,
            lags.Length,
            100.0 * lags.Count(lag => lag.Mode - lag.Own >= 1) / lags.Length,
            100.0 * lags.Count(lag => lag.Mode - lag.Own >= 2) / lags.Length,
            lags.Average(lag => lag.Mode - lag.Own),
            isCorn ? HeatSum.FromFahrenheitDays(Summary.Mean(heat)) : null,
            isCorn && emergence?.T50 is { } half ? MeanDays(trial, strip, half.Days, heat) : null);
    }

    private static double? MeanDays(StripTrial trial, Strip strip, double half, double[] heat)
    {
        // The heat that a leaf takes is published in terms of the air.
        if (trial.Weather is not { } series)
        {
            return null;
        }

        var clock = HeatClock.Start(series, HeatMethods.Corn, strip.Planted, trial.Heat.CountPlantingDay);
        var days = heat.Select(behind => behind == 0 ? 0 : clock.DaysAt(HeatSum.FromFahrenheitDays(behind + (clock.HeatAt(half)?.FahrenheitDays ?? double.MaxValue / 2))) - half).ToArray();
        return days.All(day => day is not null) ? days.Average() : null;
    }
}
