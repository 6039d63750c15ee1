using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>A treatment against another on counts.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with.</param>
/// <param name="Ratio">Of odds for shares, of plants per length for counts; 1 is no difference.</param>
/// <param name="Low">Lower end of its interval at the trial's level.</param>
/// <param name="High">Upper end.</param>
/// <param name="T">Logarithm of the ratio over its standard error.</param>
/// <param name="P">Two-sided, of this comparison alone.</param>
/// <param name="Holm">The same adjusted for all comparisons of the measure.</param>
public sealed record CountContrast(Treatment Treatment, Treatment Baseline, double Ratio, double Low, double High, double T, Probability P, Probability Holm);
