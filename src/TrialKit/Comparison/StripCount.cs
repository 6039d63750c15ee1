using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Plants counted on one strip, all spots together.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Count">Plants, 0 or more.</param>
/// <param name="Size">Seeds they came from, or metres of row they stand on, above 0.</param>
public sealed record StripCount(Strip Strip, double Count, double Size);
