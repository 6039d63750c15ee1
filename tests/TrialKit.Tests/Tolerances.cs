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

    /// <summary>Relative. A value and its mirror image, or two orders of the same sum, differ by a few roundings.</summary>
    public const double Rounding = 1e-12;

    /// <summary>Relative. Certified coefficients of well and badly conditioned designs, QR of the scaled design.</summary>
    public const double CertifiedRegression = 1e-9;

    /// <summary>Log relative error of certified F: what data stored in double precision allow where they share few, 7 or 13 leading digits.</summary>
    public const double CertifiedDigitsEasy = 13;

    /// <inheritdoc cref="CertifiedDigitsEasy"/>
    public const double CertifiedDigitsAverage = 10;

    /// <inheritdoc cref="CertifiedDigitsEasy"/>
    public const double CertifiedDigitsHard = 4;

    /// <summary>Relative. REML estimates and their degrees of freedom: the reference's search stops at about 1e-7.</summary>
    public const double Reml = 1e-6;

    /// <summary>Relative. A tail at a REML t or F: the estimate's tolerance times the steepness of the tail.</summary>
    public const double RemlProbability = 2e-5;

    /// <summary>Absolute on tau2. The reference's root search stops at the fourth root of machine precision: for two sites it prints 3.55001 where 3.55 is exact.</summary>
    public const double MetaPauleMandel = 1.3e-4;

    /// <summary>Relative. Reweighted least squares, both sides stopped when the deviance moves by less than 1e-14 of itself.</summary>
    public const double Irls = 1e-8;
}
