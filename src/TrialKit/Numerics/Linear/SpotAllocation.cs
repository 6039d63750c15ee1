namespace TrialKit.Numerics.Linear;

/// <summary>How many spots in a strip repay their cost.</summary>
/// <remarks>Cochran 1977, Sampling Techniques, section 10.6. More spots never replace strips: V(mean) does not fall below strip variance / strips.</remarks>
internal static class SpotAllocation
{
    /// <summary>Spots per strip that give the least variance of a mean for the money, sqrt(C_strip s2_spot / (C_spot s2_strip)).</summary>
    /// <param name="stripVariance">Variance between strips, 0 or more.</param>
    /// <param name="spotVariance">Variance between spots of a strip, 0 or more.</param>
    /// <param name="stripCost">Cost of one more strip, above 0.</param>
    /// <param name="spotCost">Cost of one more spot in the same money, above 0.</param>
    /// <returns>Spots, not rounded, 1 at least; null when strips do not vary, so that no number is best.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double? Optimum(double stripVariance, double spotVariance, double stripCost, double spotCost)
    {
        CheckVariance(stripVariance, nameof(stripVariance));
        CheckVariance(spotVariance, nameof(spotVariance));
        Checks.Positive(stripCost);
        Checks.Positive(spotCost);
        return stripVariance == 0 ? null : Math.Max(1, Math.Sqrt(stripCost * spotVariance / (spotCost * stripVariance)));
    }

    /// <summary>Variance of a treatment mean, s2_strip/r + s2_spot/(r k).</summary>
    /// <param name="stripVariance">Variance between strips, 0 or more.</param>
    /// <param name="spotVariance">Variance between spots of a strip, 0 or more.</param>
    /// <param name="strips">Strips of the treatment, r, 1 or more.</param>
    /// <param name="spots">Spots in each, k, 1 or more.</param>
    /// <returns>The variance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double VarianceOfMean(double stripVariance, double spotVariance, int strips, int spots)
    {
        CheckVariance(stripVariance, nameof(stripVariance));
        CheckVariance(spotVariance, nameof(spotVariance));
        Checks.AtLeast(strips, 1);
        Checks.AtLeast(spots, 1);
        return (stripVariance + (spotVariance / spots)) / strips;
    }

    private static void CheckVariance(double variance, string name)
    {
        Checks.Finite(variance, name);
        ArgumentOutOfRangeException.ThrowIfNegative(variance, name);
    }
}
