using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The difference from a mixed model of all strips, those without the other strip of their pair among them; the verdict does not rest on it.</summary>
/// <param name="Estimate">The difference with its error and Satterthwaite degrees of freedom.</param>
/// <param name="Strips">Strips behind it.</param>
/// <param name="PairVariance">Between pairs, in the square of the unit; 0 where pairs differ no more than their strips make them.</param>
/// <param name="ResidualVariance">Of strips within a pair.</param>
public sealed record AllStripsEstimate(TEstimate Estimate, int Strips, double PairVariance, double ResidualVariance);
