using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>What a measure came to on one strip.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Value">The value in the measure's unit; null when it was not recorded or means nothing there.</param>
public sealed record StripValue(Strip Strip, double? Value);
