namespace TrialKit.Heat;

/// <summary>What a condition of the field adds to the heat that a crop needs to emerge.</summary>
/// <param name="Condition">The condition in words.</param>
/// <param name="LowFahrenheitDays">The least it adds, F-days; negative when it takes away.</param>
/// <param name="HighFahrenheitDays">The most it adds, F-days.</param>
/// <param name="Source">Where it is printed.</param>
public sealed record NeedAdjustment(string Condition, double LowFahrenheitDays, double HighFahrenheitDays, string Source);
