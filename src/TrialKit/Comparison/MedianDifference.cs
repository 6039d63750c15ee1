using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The Hodges-Lehmann estimate of a shift: the median of the means of all pairs of differences.</summary>
/// <param name="Value">The estimate, in the measure's unit.</param>
/// <param name="Low">Lower end of its interval.</param>
/// <param name="High">Upper end of its interval.</param>
/// <param name="AchievedConfidence">The confidence the interval truly has: no lower than asked where the pairs are enough for that.</param>
/// <param name="ReachesLevel">Whether the confidence asked was reached.</param>
/// <param name="Method">The procedure.</param>
public sealed record MedianDifference(double Value, double Low, double High, double AchievedConfidence, bool ReachesLevel, Method Method);
