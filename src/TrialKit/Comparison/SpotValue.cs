using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>What a measure came to at one spot of a strip.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Spot">The spot's name; null when it has none.</param>
/// <param name="Value">The value, in the measure's unit.</param>
public sealed record SpotValue(Strip Strip, string? Spot, double Value);
