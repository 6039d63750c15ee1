using TrialKit.Heat;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Cli.Commands;

/// <summary>What a forecast is made of, from a trial folder or from options alone.</summary>
/// <param name="Crop">The crop.</param>
/// <param name="Need">The heat needed.</param>
/// <param name="Days">The days on hand.</param>
/// <param name="Planted">The planting day; null when only a window is asked for.</param>
/// <param name="CountsPlantingDay">Whether the planting day's heat is counted.</param>
/// <param name="Depth">The planting depth; null when not known.</param>
internal sealed record ForecastPlan(Crop Crop, HeatNeed Need, ForecastDays Days, DateOnly? Planted, bool CountsPlantingDay, Length? Depth);
