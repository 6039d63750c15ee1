namespace TrialKit.Numerics.Pairs;

/// <summary>What two one-sided t tests against a margin found.</summary>
/// <param name="TLower">t against the lower margin; large speaks for a difference above it.</param>
/// <param name="PLower">One-sided p against the lower margin.</param>
/// <param name="TUpper">t against the upper margin; large speaks for a difference above it.</param>
/// <param name="PUpper">One-sided p against the upper margin, that the difference lies below.</param>
internal readonly record struct EquivalenceResult(double TLower, double PLower, double TUpper, double PUpper)
{
    /// <summary>The p of equivalence: the larger of the two.</summary>
    public double P => Math.Max(PLower, PUpper);
}
