namespace TrialKit.Tests;

/// <summary>How closely a value must agree with its reference, by the kind of quantity, and why.</summary>
internal static class Tolerances
{
    /// <summary>Relative. A closed form differs from its reference by rounding only.</summary>
    public const double ClosedForm = 1e-9;

    /// <summary>Absolute, F-days and days. Sums of a month of decimals differ from their references by rounding only.</summary>
    public const double Heat = 1e-9;

    /// <summary>Relative. A tail of a distribution: the continued fractions and the reference both round at about 1e-14.</summary>
    public const double DistributionTail = 5e-13;

    /// <summary>Relative. A quantile: the reference's own search stops at about 1e-12.</summary>
    public const double DistributionQuantile = 1e-11;

    /// <summary>Relative. A tail taken at its own quantile: rounding of the quantile's logarithm times the steepness of the tail.</summary>
    public const double QuantileRoundTrip = 1e-10;

    /// <summary>Relative. A count over a power of two is exact; the printed reference has 15 digits.</summary>
    public const double ExactCount = 1e-13;

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

    /// <summary>Absolute, plants per area and kilograms per hectare. Conversions of length leave about 1e-10 of 30,000.</summary>
    public const double Density = 1e-6;

    /// <summary>Absolute, bushels. Pounds to a bushel printed to two decimals are known to half a hundredth of some 60.</summary>
    public const double PrintedPoundsToABushel = 0.005 / 56;

    /// <summary>Absolute. Half a unit of the second decimal, as the value is stated.</summary>
    public const double PrintedToTwoDecimals = 5.1e-3;

    /// <summary>Absolute. Half a unit of the first decimal, as the value is stated.</summary>
    public const double PrintedToOneDecimal = 5.1e-2;

    /// <summary>Relative. An estimate against another program's search, polished by Newton steps on differences of the likelihood.</summary>
    public const double OtherSearch = 1e-6;

    /// <summary>Relative. A standard error against one from second differences of the likelihood.</summary>
    public const double DifferencedError = 1e-4;
}
