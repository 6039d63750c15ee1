using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class StepCurveTests
{
    private static readonly double[] SetACumulative = [0, 2, 10, 22, 28, 32, 34, 34, 35];

    [Theory]
    [InlineData(0.10, 7.1875)]
    [InlineData(0.16, 7.45)]
    [InlineData(0.25, 7.84375)]
    [InlineData(0.50, 8.625)]
    [InlineData(0.75, 9.708333)]
    [InlineData(0.84, 10.35)]
    [InlineData(0.90, 10.875)]
    public void TimeToShare_SetAOfPlantsUp_GivesTheCheckValue(double p, double expected)
    {
        var curve = StepCurve.FromCumulative(EventCounts.SetATimes, SetACumulative, null);

        Agree.Absolute(expected, curve.TimeToShare(p).Time, Tolerances.PrintedToSixDecimals, $"T{100 * p}");
    }

    [Theory]
    [InlineData(0.10, 7.25)]
    [InlineData(0.16, 7.55)]
    [InlineData(0.25, 8.0)]
    [InlineData(0.50, 8.833333)]
    [InlineData(0.75, 10.5)]
    [InlineData(0.84, 11.8)]
    public void TimeToShare_SetAOfSown_GivesTheCheckValue(double p, double expected)
    {
        var curve = StepCurve.FromCumulative(EventCounts.SetATimes, SetACumulative, 40);

        Agree.Absolute(expected, curve.TimeToShare(p).Time, Tolerances.PrintedToSixDecimals, $"T{100 * p}");
    }

    [Fact]
    public void TimeToShare_ShareNeverReached_IsNotExtrapolated()
    {
        var curve = StepCurve.FromCumulative(EventCounts.SetATimes, SetACumulative, 40);

        Assert.Equal(new TimeToCount(null, CountReached.Never), curve.TimeToShare(0.9));
    }

    [Fact]
    public void FromCumulative_SetA_GivesSharesAndErrors()
    {
        var curve = StepCurve.FromCumulative(EventCounts.SetATimes, SetACumulative, 40);

        Agree.Relative(0.55, curve.Share[3], Tolerances.ClosedForm, "share");
        Agree.Relative(Math.Sqrt(0.55 * 0.45 / 40), curve.StandardError[3], Tolerances.ClosedForm, "standard error");
        Assert.Equal(0, curve.Fell.Length);
        Assert.False(curve.MoreUpThanSown);
    }

    [Fact]
    public void FromCumulative_CountsFall_TakesTheRunningMaximumAndNamesTheVisits()
    {
        var curve = StepCurve.FromCumulative([5, 6, 7, 8], [3, 8, 6, 7], 10);

        Assert.Equal([3.0, 8.0, 8.0, 8.0], curve.Up.ToArray());
        Assert.Equal([2, 3], curve.Fell.ToArray());
    }

    [Fact]
    public void FromCumulative_MoreUpThanSown_UsesThePlants()
    {
        var curve = StepCurve.FromCumulative([5, 6], [3, 12], 10);

        Assert.True(curve.MoreUpThanSown);
        Assert.Equal(12.0, curve.Base);
        Assert.Equal(1.0, curve.Share[1]);
    }

    [Fact]
    public void FromCumulative_NothingUpAndSeedsUnknown_IsZeroThroughout()
    {
        var curve = StepCurve.FromCumulative([5, 6], [0, 0], null);

        Assert.Equal([0.0, 0.0], curve.Share.ToArray());
        Assert.Equal(CountReached.Never, curve.TimeToShare(0.5).Reached);
    }

    [Theory]
    [InlineData("exactly at a visit", 8.0, 6.0, nameof(CountReached.Between))]
    [InlineData("at the start of a flat run", 10.0, 7.0, nameof(CountReached.Between))]
    [InlineData("exactly at the first visit", 4.0, 5.0, nameof(CountReached.Between))]
    [InlineData("before the first visit", 2.0, null, nameof(CountReached.OnOrBeforeFirst))]
    [InlineData("between visits", 6.0, 5.5, nameof(CountReached.Between))]
    [InlineData("never", 13.0, null, nameof(CountReached.Never))]
    public void TimeToCount_EdgeCases_FollowTheRule(string name, double target, double? expected, string reached)
    {
        var found = Interpolation.TimeToCount([5, 6, 7, 8, 9], [4, 8, 10, 10, 12], target);

        Assert.True(found == new TimeToCount(expected, Enum.Parse<CountReached>(reached)), $"{name}: {found}");
    }

    [Fact]
    public void TimeToCount_ImpossibleInput_IsRefused()
    {
        Assert.ThrowsAny<ArgumentException>(() => Interpolation.TimeToCount([5, 6], [4, 3], 2));
        Assert.ThrowsAny<ArgumentException>(() => Interpolation.TimeToCount([5, 6], [4, 5], 0));
        Assert.ThrowsAny<ArgumentException>(() => Interpolation.TimeToCount([5, 6], [4, 5], double.NaN));
        Assert.ThrowsAny<ArgumentException>(() => StepCurve.FromCumulative([5, 6], [4, 5], double.NaN));
        Assert.ThrowsAny<ArgumentException>(() => StepCurve.FromCumulative([5, 5], [4, 5], 10));
    }
}
