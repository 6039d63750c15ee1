using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class IntervalCountsTests
{
    [Fact]
    public void FromIntervals_EqualIntervals_AreMergedAndEmptyOnesDropped()
    {
        var counts = IntervalCounts.FromIntervals([4, 0, 4, 6], [6, 4, 6, double.PositiveInfinity], [2, 0, 3, 1]);

        Assert.Equal([4.0, 6.0], counts.Left.ToArray());
        Assert.Equal([6.0, double.PositiveInfinity], counts.Right.ToArray());
        Assert.Equal([5.0, 1.0], counts.Count.ToArray());
        Assert.Equal(6.0, counts.Total);
        Assert.Equal(5.0, counts.Events);
        Assert.Equal(1.0, counts.RightCensored);
        Assert.Equal(6.0, counts.LastVisit);
    }

    [Fact]
    public void Merge_GroupsWithCommonVisits_AddsTheirCounts()
    {
        var merged = IntervalCounts.Merge([EventCounts.SetA, EventCounts.SetA]);

        Assert.Equal(80.0, merged.Total);
        Assert.Equal(EventCounts.SetA.Length, merged.Length);
    }

    [Theory]
    [InlineData("a right end before the left end", 4.0, 3.0, 1.0)]
    [InlineData("an empty interval", 4.0, 4.0, 1.0)]
    [InlineData("a time before planting", -1.0, 3.0, 1.0)]
    [InlineData("a left end that is no number", double.NaN, 3.0, 1.0)]
    [InlineData("a right end that is no number", 1.0, double.NaN, 1.0)]
    [InlineData("an infinite left end", double.PositiveInfinity, double.PositiveInfinity, 1.0)]
    [InlineData("a negative count", 1.0, 3.0, -1.0)]
    [InlineData("a count that is no number", 1.0, 3.0, double.NaN)]
    [InlineData("an infinite count", 1.0, 3.0, double.PositiveInfinity)]
    public void FromIntervals_ImpossibleRow_IsRefused(string name, double left, double right, double count)
    {
        Assert.NotEmpty(name);
        Assert.Throws<ArgumentOutOfRangeException>(() => IntervalCounts.FromIntervals([left], [right], [count]));
    }

    [Fact]
    public void FromVisits_LengthsDiffer_IsRefused() =>
        Assert.Throws<ArgumentException>(() => IntervalCounts.FromVisits([1, 2], [1], 0));
}
