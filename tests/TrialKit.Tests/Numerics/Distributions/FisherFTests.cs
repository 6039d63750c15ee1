using CsCheck;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics.Distributions;

public class FisherFTests
{
    [Fact]
    public void UpperTail_OneNumeratorDegree_IsTwoTailsOfT() =>
        Gen.Select(Gen.Double[0.01, 40], Gen.Double[0.5, 200]).Sample((t, df) =>
        {
            Close.Relative(2 * StudentT.UpperTail(t, df), FisherF.UpperTail(t * t, 1, df), Tolerances.DistributionTail, $"t {t}, df {df}");
        });

    [Fact]
    public void UpperTail_InfiniteNumeratorDegrees_IsTheLowerTailOfChiSquare() =>
        Close.Relative(FisherF.UpperTail(2, 1e9, 7), FisherF.UpperTail(2, double.PositiveInfinity, 7), Tolerances.Limit, "the limit in df1");

    [Fact]
    public void UpperQuantile_Ends_AreExact()
    {
        Assert.Equal(0, FisherF.UpperQuantile(1, 2, 3));
        Assert.Equal(double.PositiveInfinity, FisherF.UpperQuantile(0, 2, 3));
        Assert.Equal(1, FisherF.UpperTail(0, 2, 3));
        Assert.Equal(0, FisherF.LowerTail(-1, 2, 3));
    }

    [Theory]
    [InlineData(double.NaN, 2, 3)]
    [InlineData(1, 0, 3)]
    [InlineData(1, 2, -1)]
    [InlineData(1, double.PositiveInfinity, double.PositiveInfinity)]
    public void UpperTail_ImpossibleInput_Throws(double f, double df1, double df2) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FisherF.UpperTail(f, df1, df2));
}
