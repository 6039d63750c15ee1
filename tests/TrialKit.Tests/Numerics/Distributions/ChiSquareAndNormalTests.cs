using CsCheck;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics.Distributions;

public class ChiSquareAndNormalTests
{
    [Fact]
    public void ChiSquareUpperTail_TwoDegrees_IsAnExponential() =>
        Gen.Double[0, 1200].Sample(x =>
            Close.Relative(Math.Exp(-x / 2), ChiSquare.UpperTail(x, 2), Tolerances.DistributionTail, $"x {x}"));

    [Fact]
    public void ChiSquareUpperQuantile_AnyTail_IsUndoneByTheTail() =>
        Gen.Select(Gen.Double[0.2, 300], Gen.Double[-600, -0.01]).Sample((df, logTail) =>
        {
            var x = ChiSquare.UpperQuantile(Math.Exp(logTail), df);
            Close.Relative(Math.Exp(logTail), ChiSquare.UpperTail(x, df), Tolerances.QuantileRoundTrip, $"df {df}");
        });

    [Fact]
    public void NormalQuantile_AnyProbability_IsUndoneByTheTail() =>
        Gen.Double[-600, -0.7].Sample(logTail =>
            Close.Relative(Math.Exp(logTail), Normal.LowerTail(Normal.Quantile(Math.Exp(logTail))), Tolerances.QuantileRoundTrip, $"log {logTail}"));

    [Fact]
    public void Ends_OfBoth_AreExact()
    {
        Assert.Equal(1, ChiSquare.UpperTail(0, 3));
        Assert.Equal(0, ChiSquare.LowerTail(-2, 3));
        Assert.Equal(0, ChiSquare.UpperTail(double.PositiveInfinity, 3));
        Assert.Equal(0, ChiSquare.UpperQuantile(1, 3));
        Assert.Equal(double.PositiveInfinity, ChiSquare.UpperQuantile(0, 3));
        Assert.Equal(0.5, Normal.LowerTail(0));
        Assert.Equal(0, Normal.Quantile(0.5));
        Assert.Equal(double.NegativeInfinity, Normal.Quantile(0));
        Assert.Equal(double.PositiveInfinity, Normal.Quantile(1));
    }

    [Theory]
    [InlineData(double.NaN, 3)]
    [InlineData(1, 0)]
    [InlineData(1, double.NaN)]
    [InlineData(1, double.PositiveInfinity)]
    public void ChiSquareUpperTail_ImpossibleInput_Throws(double x, double df) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChiSquare.UpperTail(x, df));

    [Fact]
    public void Normal_NoNumber_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.LowerTail(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Density(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantile(-1e-9));
    }
}
