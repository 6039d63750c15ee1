namespace TrialKit.Tests;

/// <summary>How closely a value must agree with its reference, by the kind of quantity, and why.</summary>
internal static class Tolerances
{
    /// <summary>Relative. A closed form differs from its reference by rounding only.</summary>
    public const double ClosedForm = 1e-9;

    /// <summary>Absolute. Log-likelihoods stated to six decimals; the maximum is flat, so both sides reach it.</summary>
    public const double LogLikelihood = 6e-7;

    /// <summary>Absolute. Half a unit of the third decimal, as the value is stated, and the reference's own rounding.</summary>
    public const double PrintedToThreeDecimals = 5.1e-4;

    /// <summary>Absolute. Half a unit of the fourth decimal, as the value is stated.</summary>
    public const double PrintedToFourDecimals = 5.1e-5;

    /// <summary>Absolute. Half a unit of the sixth decimal, as the value is stated.</summary>
    public const double PrintedToSixDecimals = 5.1e-7;

    /// <summary>Relative. The same maximum found in two ways: rounding of the gradient over the curvature.</summary>
    public const double Maximised = 1e-8;

    /// <summary>Relative. A central difference of step 1e-5 against an analytic derivative.</summary>
    public const double CentralDifference = 1e-7;

    /// <summary>Relative to the size of the derivatives. A central difference of step 1e-5: its cut-off is about 1e-10 of the third derivative, which on this range is up to a thousand times the others.</summary>
    public const double DerivativeOfLogMass = 1e-6;

    /// <summary>Absolute. A value its source cut off after the fourth decimal instead of rounding it.</summary>
    public const double CutToFourDecimals = 1e-4;

    /// <summary>Relative. A standard error from a second search that stops elsewhere within rounding of the same maximum.</summary>
    public const double RefittedError = 1e-6;

    /// <summary>Absolute. Masses of a non-parametric estimate: both sides stop when no mass can gain, which pins masses to about this.</summary>
    public const double Mass = 1e-6;

    /// <summary>Conditions of optimality of a non-parametric estimate, as excess per unit of weight.</summary>
    public const double Optimality = 1e-8;

    /// <summary>Effects, their standard errors and test statistics from another program's search.</summary>
    public const double ReferenceEffect = 1e-6;

    /// <summary>Absolute, degree-days. A closed form against quadrature over the pieces of a curve.</summary>
    public const double Quadrature = 1e-9;
}
