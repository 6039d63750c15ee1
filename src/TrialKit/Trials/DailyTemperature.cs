using UnitsNet;

namespace TrialKit.Trials;

/// <summary>One day's extremes, in the scale they were recorded in.</summary>
/// <param name="Date">The day.</param>
/// <param name="Maximum">The day's highest temperature.</param>
/// <param name="Minimum">The day's lowest temperature, never above the highest.</param>
public readonly record struct DailyTemperature(DateOnly Date, Temperature Maximum, Temperature Minimum);
