using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>A statistic judged by its upper tail.</summary>
/// <param name="Statistic">F, or chi-square where <paramref name="DenominatorDegrees"/> is null.</param>
/// <param name="NumeratorDegrees">Degrees of freedom of the effect.</param>
/// <param name="DenominatorDegrees">Degrees of freedom of the error; null for a chi-square.</param>
/// <param name="P">The upper tail.</param>
/// <param name="Method">The procedure.</param>
public sealed record FTest(double Statistic, double NumeratorDegrees, double? DenominatorDegrees, Probability P, Method Method);
