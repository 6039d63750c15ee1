namespace TrialKit.Comparison;

/// <summary>How sure one replicate makes a difference: with r of them the error is this one over the root of r, on r - 1 times the degrees of freedom.</summary>
/// <param name="StandardError">Of the difference on one pair or one whole block, in the measure's unit.</param>
/// <param name="DegreesOfFreedom">That each replicate after the first adds to the error.</param>
public sealed record ReplicateError(double StandardError, int DegreesOfFreedom)
{
    /// <summary>The standard error of the difference on so many whole replicates.</summary>
    internal double ErrorOf(int replicates) => StandardError / Math.Sqrt(replicates);

    /// <summary>The degrees of freedom of the error of so many whole replicates.</summary>
    internal int DegreesOf(int replicates) => (replicates - 1) * DegreesOfFreedom;
}
