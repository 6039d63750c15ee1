namespace TrialKit.Tests;

/// <summary>How closely a value must agree with its reference, by the kind of quantity, and why.</summary>
internal static class Tolerances
{
    /// <summary>Relative. A closed form differs from its reference by rounding only.</summary>
    public const double ClosedForm = 1e-9;

    /// <summary>Relative. A tail of a distribution: the continued fractions and the reference both round at about 1e-14.</summary>
    public const double DistributionTail = 5e-13;

    /// <summary>Relative. A quantile: the reference's own search stops at about 1e-12.</summary>
    public const double DistributionQuantile = 1e-11;

    /// <summary>Relative. A tail taken at its own quantile: rounding of the quantile's logarithm times the steepness of the tail.</summary>
    public const double QuantileRoundTrip = 1e-10;

    /// <summary>Relative. A count over a power of two is exact; the printed reference has 15 digits.</summary>
    public const double ExactCount = 1e-13;

    /// <summary>Standard errors. A share of seeded draws lies this close to its probability unless the draws are wrong (chance about 1 in 16,000).</summary>
    public const double SamplingErrors = 4;
}
