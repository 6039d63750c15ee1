namespace TrialKit.Trials;

/// <summary>How heat is counted.</summary>
/// <param name="Method">The method of the reported figures.</param>
/// <param name="CountPlantingDay">Whether the heat of the planting day itself is counted.</param>
public sealed record HeatSettings(HeatMethod Method, bool CountPlantingDay);
