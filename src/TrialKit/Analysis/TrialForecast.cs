using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Emergence;
using TrialKit.Heat;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>The emergence that heat foretold for the trial's planting dates, set against what the visits saw.</summary>
/// <param name="Planting">The forecast for the trial's planting date.</param>
/// <param name="Strips">Each analysed strip with visits against the forecast for its own planting date; empty without visits.</param>
/// <param name="Findings">What to know of it.</param>
public sealed record TrialForecast(EmergenceForecast Planting, ImmutableArray<StripForecast> Strips, ImmutableArray<Finding> Findings)
{
    /// <summary>The trial's forecast; null without temperatures or a need known for its crop.</summary>
    internal static TrialForecast? Of(StripTrial trial, ImmutableArray<StripEmergence> emergence)
    {
        if (ForecastDays.Of(trial) is not { } days || HeatNeeds.Of(trial) is not { } need)
        {
            return null;
        }

        var forecasts = new Dictionary<DateOnly, EmergenceForecast>();
        ImmutableArray<StripForecast> strips =
        [
            .. from strip in emergence
               where strip.Strip.IsAnalysed && strip.T50 is not null
               select new StripForecast(strip.Strip, For(strip.Strip.Planted), strip.T50!.Days),
        ];
        var planting = For(trial.Planting.Date);
        return new(planting, strips, [.. Compared(strips, days), .. Adjusted(need), .. Air(planting, days), .. PlantingCautions.Of(trial.Crop, days, trial.Planting.Date, trial.Planting.Depth).Select(caution => caution.Finding)]);

        EmergenceForecast For(DateOnly planted)
        {
            if (!forecasts.TryGetValue(planted, out var forecast))
            {
                forecasts.Add(planted, forecast = EmergenceForecast.Of(days, need, planted, trial.Heat.CountPlantingDay));
            }

            return forecast;
        }
    }

    private static IEnumerable<Finding> Compared(ImmutableArray<StripForecast> strips, ForecastDays days)
    {
        foreach (var planted in strips.GroupBy(strip => strip.Forecast.Planted).OrderBy(group => group.Key))
        {
            var forecast = planted.First().Forecast;
            var (early, inside, late) = (planted.Count(strip => strip.Side == -1), planted.Count(strip => strip.Side == 0), planted.Count(strip => strip.Side == 1));
            if (early + inside + late == 0)
            {
                continue;
            }

            var foretold = $"{forecast.Need} of the {(days.IsSoil ? "soil's" : "air's")} heat foretold emergence {Span(forecast)} after planting on {Date(forecast.Planted)}{RestsOn(forecast)}";
            var seen = string.Create(CultureInfo.InvariantCulture, $"half of the plants were up {planted.Min(strip => strip.ObservedDays):0.0} to {planted.Max(strip => strip.ObservedDays):0.0} days after it: of {planted.Count()} strips {early} before that range, {inside} within it, {late} after it");
            yield return new("forecast-against-observed", FindingWeight.Note, $"{foretold}; {seen}. The range is that of many fields, with emergence meant loosely.");
        }
    }

    private static IEnumerable<Finding> Adjusted(HeatNeed need)
    {
        if (!need.Unused.IsEmpty)
        {
            yield return new("conditions-not-used", FindingWeight.Note, $"The heat needed to emerge was not adjusted for {string.Join("; ", need.Unused)}: {(need.IsGiven ? "it was given" : "no adjustment is printed with it")}.");
        }

        if (need.Adjustments.Length > 1)
        {
            yield return new("need-adjusted-together", FindingWeight.Note, $"The heat needed to emerge was adjusted for {string.Join("; ", need.Adjustments.Select(each => each.Condition))}: the source gives these one by one and does not say that they add up.");
        }
    }

    private static IEnumerable<Finding> Air(EmergenceForecast planting, ForecastDays days)
    {
        if (planting.Clock.Days.IsEmpty || days.FirstAirForSoil is not { } first || (planting.High?.Date ?? planting.LastDay) is not { } last || first > last)
        {
            yield break;
        }

        yield return new("air-for-soil", FindingWeight.Caution, $"The forecast of emergence rests on the soil's temperatures up to {Date(first.AddDays(-1))} and on the air's after that, which tells of the soil only roughly.");
    }

    // What was seen should be set against what was measured; where it is not, the reader is told.
    private static string RestsOn(EmergenceForecast forecast)
    {
        if ((forecast.High ?? forecast.Mid ?? forecast.Low)?.RestsOn is not { Uncertain: > 0 } days)
        {
            return string.Empty;
        }

        (int Days, string Kind)[] kinds = [(days.Observed, "observed"), (days.Filled, "interpolated"), (days.Forecast, "forecast"), (days.Normal, "normal")];
        var air = days.AirForSoil > 0 ? string.Create(CultureInfo.InvariantCulture, $", {days.AirForSoil} of them of the air") : string.Empty;
        return $", resting on {string.Join(", ", kinds.Where(kind => kind.Days > 0).Select(kind => string.Create(CultureInfo.InvariantCulture, $"{kind.Days} {kind.Kind}")))} days{air}";
    }

    private static string Span(EmergenceForecast forecast) => (forecast.Low, forecast.High) switch
    {
        ({ } low, { } high) => string.Create(CultureInfo.InvariantCulture, $"{low.DaysAfterPlanting:0.0} to {high.DaysAfterPlanting:0.0} days"),
        ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"{low.DaysAfterPlanting:0.0} days or more ({Open(forecast)})"),
        _ => $"at a time that is not known ({Open(forecast)})",
    };

    private static string Open(EmergenceForecast forecast) => forecast.Clock.Gap is { } gap
        ? $"{Date(gap)} is not on hand"
        : forecast.LastDay is { } last ? $"not reached in full by {Date(last)}" : "no day on hand";

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
