using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics.Distributions;

public class BinomialTests
{
    [Fact]
    public void Tails_AnyCount_ShareTheTermAndMakeOne()
    {
        for (var k = 0; k <= 12; k++)
        {
            var sum = Binomial.LowerTail(k, 12, 0.3) + Binomial.UpperTail(k, 12, 0.3) - Binomial.Term(k, 12, 0.3);
            Close.Absolute(1, sum, Tolerances.DistributionTail, $"k {k}");
        }
    }

    [Fact]
    public void Tails_OutsideTheCounts_AreZeroOrOne()
    {
        Assert.Equal(0, Binomial.LowerTail(-1, 5, 0.4));
        Assert.Equal(0, Binomial.UpperTail(6, 5, 0.4));
        Assert.Equal(1, Binomial.LowerTail(5, 5, 1));
        Assert.Equal(1, Binomial.UpperTail(0, 5, 0));
    }

    [Fact]
    public void Tails_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.LowerTail(1, 0, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Binomial.LowerTail(1, 3, double.NaN));
    }
}
