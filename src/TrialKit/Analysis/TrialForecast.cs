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
        return new(planting, strips, [.. Compared(strips, trial.SoilTemperature is not null), .. Adjusted(need), .. Filled(trial), .. PlantingCautions.Of(trial.Crop, days.Series, trial.SoilTemperature is not null, trial.Planting.Date, trial.Planting.Depth)]);

        EmergenceForecast For(DateOnly planted)
        {
            if (!forecasts.TryGetValue(planted, out var forecast))
            {
                forecasts.Add(planted, forecast = EmergenceForecast.Of(days, need, planted, trial.Heat.CountPlantingDay));
            }

            return forecast;
        }
    }

    private static IEnumerable<Finding> Compared(ImmutableArray<StripForecast> strips, bool isSoil)
    {
        foreach (var planted in strips.GroupBy(strip => strip.Forecast.Planted).OrderBy(group => group.Key))
        {
            var forecast = planted.First().Forecast;
            var (early, inside, late) = (planted.Count(strip => strip.Side == -1), planted.Count(strip => strip.Side == 0), planted.Count(strip => strip.Side == 1));
            if (early + inside + late == 0)
            {
                continue;
            }

            var foretold = $"{forecast.Need} of the {(isSoil ? "soil's" : "air's")} heat foretold emergence {Span(forecast)} after planting on {Date(forecast.Planted)}";
            var seen = string.Create(CultureInfo.InvariantCulture, $"half of the plants were up {planted.Min(strip => strip.ObservedDays):0.0} to {planted.Max(strip => strip.ObservedDays):0.0} days after it: of {planted.Count()} strips {early} before that range, {inside} within it, {late} after it");
            yield return new("forecast-against-observed", FindingWeight.Note, $"{foretold}; {seen}. The range is that of many fields, with emergence meant loosely.");
        }
    }

    private static IEnumerable<Finding> Adjusted(HeatNeed need)
    {
        if (need.Adjustments.Length > 1)
        {
            yield return new("need-adjusted-together", FindingWeight.Note, $"The heat needed to emerge was adjusted for {string.Join("; ", need.Adjustments.Select(each => each.Condition))}: the source gives these one by one and does not say that they add up.");
        }
    }

    private static IEnumerable<Finding> Filled(StripTrial trial)
    {
        if ((trial.SoilTemperature ?? trial.Weather)!.Filled is { IsEmpty: false } filled)
        {
            yield return new("weather-filled", FindingWeight.Caution, string.Create(CultureInfo.InvariantCulture, $"{filled.Length} days of temperatures were not recorded and are interpolated, the first {filled[0]:yyyy-MM-dd}; sums of heat rest on them."));
        }
    }

    private static string Span(EmergenceForecast forecast) => (forecast.Low, forecast.High) switch
    {
        ({ } low, { } high) => string.Create(CultureInfo.InvariantCulture, $"{low.DaysAfterPlanting:0.0} to {high.DaysAfterPlanting:0.0} days"),
        ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"{low.DaysAfterPlanting:0.0} days or more (not reached in full by {forecast.LastDay:yyyy-MM-dd})"),
        _ => $"not by {Date(forecast.LastDay)}",
    };

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
