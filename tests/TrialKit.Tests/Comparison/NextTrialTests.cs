using TrialKit.Comparison;
using TrialKit.Numerics.Power;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Tests.Comparison;

public class NextTrialTests
{
    [Theory]
    [InlineData(6, 1.0, 0.1)]
    [InlineData(6, 0.4, 0.1)]
    [InlineData(4, 0.25, 0.05)]
    [InlineData(30, 2.0, 0.1)]
    public void Replicates_Pairs_AreThoseOfThePairedTest(int pairs, double difference, double alpha)
    {
        const double deviation = 0.9;

        var expected = PairedPower.PairsRequired(difference, deviation, alpha, Contrast.DetectablePower, NextTrial.Most);
        Assert.NotNull(expected);
        Assert.Equal(expected, NextTrial.Replicates(Comparison(pairs, deviation, alpha), difference));
        Assert.Equal(expected, NextTrial.Replicates(Comparison(pairs, deviation, alpha), -difference));
    }

    [Fact]
    public void Replicates_DetectableDifference_AreThoseOfTheTrial()
    {
        var detectable = PairedPower.DetectableDifference(0.9, 6, 0.1, Contrast.DetectablePower);

        Assert.InRange(NextTrial.Replicates(Comparison(6, 0.9, 0.1), detectable * 1.0001)!.Value, 6, 6);
    }

    [Fact]
    public void Replicates_TinyDifference_AreMoreThanAreLookedAt() => Assert.Null(NextTrial.Replicates(Comparison(6, 0.9, 0.1), 0.001));

    [Fact]
    public void Replicates_WithoutEstimate_AreUnknown() =>
        Assert.Null(NextTrial.Replicates(Comparison(6, 0.9, 0.1) with { Estimate = null, Interval = null }, 1));

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Replicates_NoDifference_IsRefused(double difference) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NextTrial.Replicates(Comparison(6, 0.9, 0.1), difference));

    private static Contrast Comparison(int pairs, double deviation, double alpha)
    {
        var level = ConfidenceLevel.FromAlpha(alpha);
        var estimate = new TEstimate(0.3, deviation / Math.Sqrt(pairs), pairs - 1, pairs, Unit.Days, Methods.PairedT);
        return new(SmallTrial.Other, SmallTrial.Control, 0.3, estimate, estimate.PTwoSided, estimate.IntervalAt(level), 1, level, Methods.PairedT);
    }
}
