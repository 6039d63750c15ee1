namespace TrialKit.Trials;

/// <summary>Any other value of a strip.</summary>
/// <param name="Strip">Which.</param>
/// <param name="Spot">The spot within the strip; null when it is of the whole strip.</param>
/// <param name="Measure">What was measured.</param>
/// <param name="Value">The value, finite.</param>
/// <param name="Unit">Its unit as written; null when it has none.</param>
public sealed record StripMeasurement(Strip Strip, string? Spot, string Measure, double Value, string? Unit);
