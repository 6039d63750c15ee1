using TrialKit.Quantities;

namespace TrialKit.Money;

/// <summary>A difference of yield as the budget takes it, kilograms per hectare.</summary>
/// <param name="Difference">Treatment less baseline.</param>
/// <param name="StandardError">Its standard error; 0 when every pair gave the same difference, null when one pair or block gives none.</param>
/// <param name="DegreesOfFreedom">Its degrees of freedom; 0 without a standard error.</param>
/// <param name="Low">The lower end of its interval; null when there is none.</param>
/// <param name="High">The upper end; null when there is none.</param>
/// <param name="Level">The level of that interval.</param>
/// <param name="Comparisons">How many comparisons the interval holds for at once at that level; 1 when it is of this one by itself.</param>
public sealed record YieldResponse(GrainYieldDifference Difference, double? StandardError, double DegreesOfFreedom, double? Low, double? High, ConfidenceLevel Level, int Comparisons);
