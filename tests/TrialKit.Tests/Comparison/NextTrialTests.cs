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
        Assert.Equal(expected, NextTrial.After(Comparison(pairs, deviation, alpha))!.Replicates(difference));
        Assert.Equal(expected, NextTrial.After(Comparison(pairs, deviation, alpha))!.Replicates(-difference));
    }

    [Fact]
    public void Replicates_DetectableDifference_AreThoseOfTheTrial()
    {
        var detectable = PairedPower.DetectableDifference(0.9, 6, 0.1, Contrast.DetectablePower);

        Assert.InRange(NextTrial.After(Comparison(6, 0.9, 0.1))!.Replicates(detectable * 1.0001)!.Value, 6, 6);
    }

    [Fact]
    public void Replicates_TinyDifference_AreMoreThanAreLookedAt() => Assert.Null(NextTrial.After(Comparison(6, 0.9, 0.1))!.Replicates(0.001));

    [Fact]
    public void After_WithoutEstimate_IsUnknown() =>
        Assert.Null(NextTrial.After(Comparison(6, 0.9, 0.1) with { Estimate = null, Interval = null, OfOneReplicate = null }));

    [Fact]
    public void Replicates_BlocksWithAStripMissing_RestOnTheErrorMeanSquare()
    {
        // Three treatments in five blocks, one strip lost: whole blocks of a next trial have the error mean square, not this contrast's error.
        double[] values = [10, 11, 12.4, 12, 12.7, 14, 9, 10.6, 10.9, 11, 12.1, 13.5, 10.4, 11.2];
        int[] block = [0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4], treatment = [0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1];
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Blocks(values, block, treatment, ["none", "new", "old"], control: 0));
        var lost = comparison.Contrasts.Single(contrast => contrast.Treatment.Name == "old");
        var error = Math.Sqrt(2 * comparison.Blocks!.Anova.Error.MeanSquare!.Value);
        bool Suffices(int blocks) => TTestPower.Power(0.4 / (error / Math.Sqrt(blocks)), 2 * (blocks - 1), lost.OwnAlpha!.Value, Rejection.TrueDirection) >= Contrast.DetectablePower;

        var found = NextTrial.After(lost)!.Replicates(0.4)!.Value;

        Assert.True(Suffices(found) && !Suffices(found - 1), $"{found} blocks");
        Assert.Equal(found, NextTrial.After(comparison.Contrasts[0])!.Replicates(0.4));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Replicates_NoDifference_IsRefused(double difference) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NextTrial.After(Comparison(6, 0.9, 0.1))!.Replicates(difference));

    private static Contrast Comparison(int pairs, double deviation, double alpha)
    {
        var level = ConfidenceLevel.FromAlpha(alpha);
        var estimate = new TEstimate(0.3, deviation / Math.Sqrt(pairs), pairs - 1, pairs, Unit.Days, Methods.PairedT);
        return new(SmallTrial.Other, SmallTrial.Control, 0.3, estimate, estimate.PTwoSided, estimate.IntervalAt(level), 1, level, Methods.PairedT) { OfOneReplicate = new(deviation, 1) };
    }
}
