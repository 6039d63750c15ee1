using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics;

public class WilsonIntervalTests
{
    private static readonly double Z = Normal.UpperQuantile(0.025);

    [Fact]
    public void Of_ThirtyFiveOfForty_IsTheCheckValue()
    {
        // Computed from the formula, no published value.
        var (low, high) = WilsonInterval.Of(35, 40, Z);

        Assert.Equal(0.738879, low, Tolerances.PrintedToSixDecimals);
        Assert.Equal(0.945405, high, Tolerances.PrintedToSixDecimals);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7.5)]
    [InlineData(35)]
    [InlineData(40)]
    public void Of_AnyCount_HasEndsThatLieZErrorsAway(double count)
    {
        // The interval is defined by (x/n - p)^2 = z^2 p (1 - p)/n at both ends.
        var (low, high) = WilsonInterval.Of(count, 40, Z);

        Assert.All([low, high], p => Assert.Equal(Z * Z * p * (1 - p) / 40, Math.Pow((count / 40) - p, 2), Tolerances.FewRoundings));
        Assert.InRange(count / 40, low, high);
    }

    [Fact]
    public void Of_OtherOutcomeCounted_IsMirrored()
    {
        var (low, high) = WilsonInterval.Of(5, 40, Z);

        Assert.Equal((1 - WilsonInterval.Of(35, 40, Z).High, 1 - WilsonInterval.Of(35, 40, Z).Low), (low, high), (one, other) => Math.Abs(one.Item1 - other.Item1) + Math.Abs(one.Item2 - other.Item2) < Tolerances.FewRoundings);
    }

    [Theory]
    [InlineData(41, 40, 2)]
    [InlineData(-1, 40, 2)]
    [InlineData(double.NaN, 40, 2)]
    [InlineData(0, 0, 2)]
    [InlineData(1, double.NaN, 2)]
    [InlineData(1, 40, 0)]
    [InlineData(1, 40, double.NaN)]
    public void Of_ImpossibleInput_IsRefused(double count, double trials, double z) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WilsonInterval.Of(count, trials, z));
}
