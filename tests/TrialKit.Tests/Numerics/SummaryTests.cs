using CsCheck;
using TrialKit.Numerics;

namespace TrialKit.Tests.Numerics;

public class SummaryTests
{
    [Fact]
    public void Variance_LargeCommonLevel_KeepsItsDigits()
    {
        // The variance of 4, 7, 13, 16 is 30 whatever the level.
        foreach (var level in new[] { 0.0, 1e6, 1e9, 1e12, -1e12 })
        {
            Close.Relative(30, Summary.Variance([level + 4, level + 7, level + 13, level + 16]), Tolerances.ClosedForm, $"level {level}");
        }
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    [InlineData(-183.7)]
    public void Variance_AllEqual_IsExactlyZero(double value)
    {
        for (var n = 2; n < 60; n++)
        {
            double[] values = [.. Enumerable.Repeat(value, n)];
            Assert.Equal(value, Summary.Mean(values));
            Assert.Equal(0, Summary.Variance(values));
        }
    }

    [Fact]
    public void Summaries_ScaledAndShifted_Follow() =>
        Gen.Select(Gen.Double[-100, 100].Array[2, 20], Gen.Double[0.1, 50], Gen.Double[-1000, 1000]).Sample((values, scale, shift) =>
        {
            double[] moved = [.. values.Select(value => (scale * value) + shift)];
            Close.Absolute((scale * Summary.Mean(values)) + shift, Summary.Mean(moved), Tolerances.ShiftAndScale, "mean");
            Close.Absolute((scale * Summary.Median(values)) + shift, Summary.Median(moved), Tolerances.ShiftAndScale, "median");
            Close.Absolute(scale * Summary.StandardDeviation(values), Summary.StandardDeviation(moved), Tolerances.ShiftAndScale, "standard deviation");
        });

    [Fact]
    public void Median_EvenCount_IsTheMiddleOfTheTwoMiddleValues()
    {
        Assert.Equal(2.5, Summary.Median([4, 1, 2, 3]));
        Assert.Equal(2, Summary.Median([3, 1, 2]));
        Assert.Equal(7, Summary.Median([7]));
    }

    [Fact]
    public void CoefficientOfVariation_KnownSample_IsAFraction() =>
        Close.Relative(0.5, Summary.CoefficientOfVariation([1, 2, 3]), Tolerances.ClosedForm, "1, 2, 3: mean 2, deviation 1");

    [Fact]
    public void Summaries_ImpossibleInput_SayWhatWasFound()
    {
        Assert.Contains("0 values", Assert.Throws<ArgumentException>(() => Summary.Mean([])).Message, StringComparison.Ordinal);
        Assert.Contains("at least 2", Assert.Throws<ArgumentException>(() => Summary.Variance([1])).Message, StringComparison.Ordinal);
        Assert.Contains("Value 2 of 3 is NaN", Assert.Throws<ArgumentException>(() => Summary.Mean([1, double.NaN, 2])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Summary.Median([double.PositiveInfinity]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Summary.CoefficientOfVariation([-1, 1]));
    }
}
