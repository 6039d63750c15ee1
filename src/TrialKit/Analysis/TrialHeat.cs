using TrialKit.Heat;
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

    private static HeatClock Start(StripTrial trial, TemperatureSeries series, HeatMethod method) =>
        HeatClock.Start(series, method, trial.Planting.Date, trial.Heat.CountPlantingDay);
}
