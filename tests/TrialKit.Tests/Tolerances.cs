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

    /// <summary>Relative. A noncentral tail: the quadrature is asked for 1e-13.</summary>
    public const double NoncentralTail = 1e-12;

    /// <summary>Absolute. The reference's noncentral t sums a series to about 1e-12 of the whole, not of a small tail.</summary>
    public const double NoncentralReference = 2e-12;

    /// <summary>Relative. Power, detectable difference: a root search on both sides.</summary>
    public const double Power = 1e-9;

    /// <summary>Absolute. The studentized range's reference is a fixed-order quadrature.</summary>
    public const double RangeProbability = 1e-8;

    /// <summary>Relative. As above; the reference's root search stops at 1e-10.</summary>
    public const double RangeQuantile = 1e-8;

    /// <summary>Relative. A double integral that reduces to Student's t: the quadrature is asked for 1e-12.</summary>
    public const double RangeAgainstT = 1e-12;

    /// <summary>Relative. Dunnett's reference is a fixed-order quadrature with a root search to 1e-9.</summary>
    public const double DunnettQuantile = 1e-6;

    /// <summary>Absolute. As above, for a probability.</summary>
    public const double DunnettProbability = 1e-6;

    /// <summary>Absolute. Rounding of a sum near one.</summary>
    public const double Rounding = 1e-15;

    /// <summary>Absolute. Values up to about 1e4 after a shift and a change of scale: rounding at that size.</summary>
    public const double ShiftAndScale = 1e-10;

    /// <summary>Relative. A statistic after a shift: the shifted data carry rounding at the size of the shift, not of the spread.</summary>
    public const double ChangeOfUnits = 1e-7;

    /// <summary>Relative. A limit not quite reached at the finite argument tested.</summary>
    public const double Limit = 1e-6;

    /// <summary>Relative. A limit neared as the square root of a ratio of a million.</summary>
    public const double SlowLimit = 5e-3;

    /// <summary>Absolute. Half a unit in the last decimal printed.</summary>
    public static double Printed(int decimals) => 0.5 * Math.Pow(10, -decimals);

    /// <summary>Relative. A p that hangs on a small difference of nearly equal squares loses digits on both sides.</summary>
    public const double NearSingular = 1e-8;

    /// <summary>Absolute. R's noncentral F stops its series at 1e-9; our own is held to the noncentral t far more closely.</summary>
    public const double NoncentralFReference = 2e-9;
}
