using TrialKit.Numerics;

namespace TrialKit.Tests.Numerics;

public sealed class SpacingLimitsTests
{
    [Theory]
    // Computed from the formula, no published value.
    [InlineData(0.95, 1.412)]
    [InlineData(0.90, 2.108)]
    [InlineData(1.0, 0.0)]
    public void FloorOfDeviation_SixInches_GivesTheValue(double survival, double expected) =>
        Agree.Absolute(expected, SpacingLimits.FloorOfDeviation(6.0, survival), Tolerances.PrintedToThreeDecimals, $"survival {survival}");

    [Fact]
    public void PrecisionCeiling_UniformSpacings_IsTheirDeviation()
    {
        // Midpoints of a million equal slices of the range from 0.5 to 1.5 references.
        const int Slices = 1_000_000;
        var squares = Enumerable.Range(0, Slices).Sum(i => Math.Pow(((i + 0.5) / Slices) - 0.5, 2));

        Agree.Relative(100.0 * Math.Sqrt(squares / Slices), SpacingLimits.PrecisionCeiling, Tolerances.ClosedForm, "uniform");
    }

    [Theory]
    [InlineData(0.0, 0.9)]
    [InlineData(double.NaN, 0.9)]
    [InlineData(6.0, 0.0)]
    [InlineData(6.0, 1.1)]
    [InlineData(6.0, double.NaN)]
    public void FloorOfDeviation_ImpossibleInput_IsRefused(double reference, double survival) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SpacingLimits.FloorOfDeviation(reference, survival));
}
