using System.Globalization;
using TrialKit.Emergence;
using TrialKit.Heat;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>The heat of the trial from its planting date, by its own method and by the simple average.</summary>
/// <param name="Clock">By the trial's own method.</param>
/// <param name="Average">By the simple average above 50 F, to compare with.</param>
/// <param name="IsSoil">Whether temperatures at seed depth were used instead of air.</param>
/// <param name="Source">The file the temperatures came from.</param>
public sealed record TrialHeat(HeatClock Clock, HeatClock Average, bool IsSoil, string Source)
{
    /// <summary>The trial's heat; null without temperatures.</summary>
    internal static TrialHeat? Of(StripTrial trial) => (trial.SoilTemperature ?? trial.Weather) is not { } series
        ? null
        : new(
            Start(trial, series, trial.Heat.Method),
            Start(trial, series, HeatMethods.Average50),
            trial.SoilTemperature is not null,
            series.Source);

    /// <summary>What to know of the days that the trial's heat rests on.</summary>
    internal IEnumerable<Finding> FindingsOf(StripTrial trial, IReadOnlyCollection<StripEmergence> emergence)
    {
        if ((trial.SoilTemperature ?? trial.Weather)!.Filled is { IsEmpty: false } filled)
        {
            yield return new("weather-filled", FindingWeight.Caution, string.Create(CultureInfo.InvariantCulture, $"{filled.Length} days of temperatures were not recorded and are interpolated, the first {filled[0]:yyyy-MM-dd}; sums of heat rest on them."));
        }

        var last = emergence.Count == 0 ? Clock.Ends : emergence.Max(strip => strip.Strip.Planted.DayNumber - Clock.Planted.DayNumber + strip.LastVisit);
        if (Clock.BySingle.Where(day => day.DayNumber - Clock.Planted.DayNumber < last).ToArray() is { Length: > 0 } days)
        {
            yield return new("heat-by-single-form", FindingWeight.Note, string.Create(CultureInfo.InvariantCulture, $"By {Clock.HeatMethod.Name} a day leans on the next day's minimum, which is not on record after {days[0]:yyyy-MM-dd}: that day is counted by the single form."));
        }
    }

    private static HeatClock Start(StripTrial trial, TemperatureSeries series, HeatMethod method) =>
        HeatClock.Start(series, method, trial.Planting.Date, trial.Heat.CountPlantingDay);
}
