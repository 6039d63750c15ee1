using TrialKit.Quantities;

namespace TrialKit.Heat;

/// <summary>The heat of one day and the sum up to its end.</summary>
/// <param name="Date">The day.</param>
/// <param name="Heat">The heat of the day.</param>
/// <param name="Sum">The heat from the start of the count to the end of the day.</param>
public readonly record struct DailyHeat(DateOnly Date, HeatSum Heat, HeatSum Sum);
