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

    /// <summary>Absolute. Masses of a non-parametric estimate: both sides stop when no mass can gain, which pins masses to about this.</summary>
    public const double Mass = 1e-6;

    /// <summary>Conditions of optimality of a non-parametric estimate, as excess per unit of weight.</summary>
    public const double Optimality = 1e-8;

    /// <summary>Effects, their standard errors and test statistics from another program's search.</summary>
    public const double ReferenceEffect = 1e-6;

    /// <summary>Absolute, degree-days. A closed form against quadrature over the pieces of a curve.</summary>
    public const double Quadrature = 1e-9;
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

    /// <summary>Relative. A value and its mirror image, or two orders of the same sum, differ by a few roundings.</summary>
    public const double FewRoundings = 1e-12;

    /// <summary>Relative. Certified coefficients of well and badly conditioned designs, QR of the scaled design.</summary>
    public const double CertifiedRegression = 1e-9;

    /// <summary>Log relative error of certified F: what data stored in double precision allow where they share few, 7 or 13 leading digits.</summary>
    public const double CertifiedDigitsEasy = 13;

    /// <inheritdoc cref="CertifiedDigitsEasy"/>
    public const double CertifiedDigitsAverage = 10;

    /// <inheritdoc cref="CertifiedDigitsEasy"/>
    public const double CertifiedDigitsHard = 4;

    /// <summary>Standard errors. A share of seeded draws lies this close to its probability unless the draws are wrong (chance about 1 in 16,000).</summary>
    public const double SamplingErrors = 4;

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
    public const double RoundingNearOne = 1e-15;

    /// <summary>Absolute. Values up to about 1e4 after a shift and a change of scale: rounding at that size.</summary>
    public const double ShiftAndScale = 1e-10;

    /// <summary>Relative. A statistic after a shift: the shifted data carry rounding at the size of the shift, not of the spread.</summary>
    public const double ChangeOfUnits = 1e-7;

    /// <summary>Relative. A limit not quite reached at the finite argument tested.</summary>
    public const double Limit = 1e-6;

    /// <summary>Relative. A limit neared as the square root of a ratio of a million.</summary>
    public const double SlowLimit = 5e-3;

    /// <summary>Relative. There and back between two unit systems: a product and a quotient by exact factors.</summary>
    public const double UnitRoundTrip = 1e-12;

    /// <summary>Relative. A probability of a t against R's pt; both round at about 1e-14.</summary>
    public const double ChanceOfPaying = 1e-9;

    /// <summary>Relative. A salt index printed to one decimal over one printed to three: half a unit of either.</summary>
    public const double PrintedSaltIndex = 0.006;

    /// <summary>Absolute. Half a unit in the last decimal printed.</summary>
    public static double Printed(int decimals) => 0.5 * Math.Pow(10, -decimals);

    /// <summary>Relative. A p that hangs on a small difference of nearly equal squares loses digits on both sides.</summary>
    public const double NearSingular = 1e-8;

    /// <summary>Absolute. R's noncentral F stops its series at 1e-9; our own is held to the noncentral t far more closely.</summary>
    public const double NoncentralFReference = 2e-9;

    /// <summary>Relative. REML estimates and their degrees of freedom: the reference's search stops at about 1e-7.</summary>
    public const double Reml = 1e-6;

    /// <summary>Relative. A tail at a REML t or F: the estimate's tolerance times the steepness of the tail.</summary>
    public const double RemlProbability = 2e-5;

    /// <summary>Absolute on tau2. The reference's root search stops at the fourth root of machine precision: for two sites it prints 3.55001 where 3.55 is exact.</summary>
    public const double MetaPauleMandel = 1.3e-4;

    /// <summary>Relative. Reweighted least squares, both sides stopped when the deviance moves by less than 1e-14 of itself.</summary>
    public const double Irls = 1e-8;

    /// <summary>Relative. The power grids print 17 digits; the noncentral tails are good to about 1e-13 and a search inverts them.</summary>
    public const double PowerOfPlans = 1e-9;

    /// <summary>Degrees. A published geodesic: coordinates are printed to 1e-11 or to a hundred-thousandth of a second, the distance to a millimetre.</summary>
    public const double GeodesicDegrees = 1.2e-8;

    /// <summary>Degrees. The published azimuth, printed to a hundredth of a second.</summary>
    public const double GeodesicAzimuth = 2e-6;

    /// <summary>Metres. A line of a hundred metres on the ellipsoid against its tangent plane.</summary>
    public const double FieldMetres = 1e-5;

    /// <summary>Metres. Sides of a strip on a map: coordinates are rounded to 1e-8 degrees, about a millimetre, at both ends.</summary>
    public const double MapMetres = 0.01;

    /// <summary>Relative. Degrees of freedom and variances of a reference's own search, whose derivatives are taken by differences.</summary>
    public const double DifferencedReml = 1e-4;

    /// <summary>Relative to differences near one. At a level of 1e12 a double is known to a ten-thousandth.</summary>
    public const double RoundedAtALevel = 5e-4;
    /// <summary>Powers from 400,000 simulated trials, given to two digits.</summary>
    public const double SimulatedPower = 0.006;

    /// <summary>A critical value that was searched to 1e-9 and passed through a tail and back.</summary>
    public const double CriticalValueOfSeveral = 1e-7;
}
