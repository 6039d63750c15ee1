using TrialKit.Numerics.Linear;

namespace TrialKit.Planning;

/// <summary>How many spots in a strip repay the walk.</summary>
/// <remarks>Cochran 1977, Sampling Techniques, section 10.6. More spots never replace strips.</remarks>
public static class SpotBudget
{
    /// <summary>Spots in a strip that give the surest treatment mean for the money: sqrt(cost of a strip x variance of spots / (cost of a spot x variance of strips)).</summary>
    /// <param name="stripVariance">Variance between strips beyond that of their spots, 0 or more.</param>
    /// <param name="spotVariance">Variance between spots of a strip, in the same unit squared, 0 or more.</param>
    /// <param name="stripCost">Cost of one more strip, above 0.</param>
    /// <param name="spotCost">Cost of one more spot, in the same money or time, above 0.</param>
    /// <returns>Spots, not rounded, 1 or more; null when strips do not vary beyond their spots, so that no number is best.</returns>
    public static double? Optimum(double stripVariance, double spotVariance, double stripCost, double spotCost) =>
        SpotAllocation.Optimum(stripVariance, spotVariance, stripCost, spotCost);
}
