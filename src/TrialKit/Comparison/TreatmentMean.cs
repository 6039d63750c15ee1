using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>The mean of a treatment over its strips.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Strips">Strips behind the mean.</param>
/// <param name="Mean">In the measure's unit; adjusted for blocks when strips are missing.</param>
public sealed record TreatmentMean(Treatment Treatment, int Strips, double Mean);
