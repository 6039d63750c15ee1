namespace TrialKit.Tests;

/// <summary>How closely a value must agree with its reference, by the kind of quantity, and why.</summary>
internal static class Tolerances
{
    /// <summary>Relative. A closed form differs from its reference by rounding only.</summary>
    public const double ClosedForm = 1e-9;

    /// <summary>Absolute, F-days and days. Sums of a month of decimals differ from their references by rounding only.</summary>
    public const double Heat = 1e-9;
}
