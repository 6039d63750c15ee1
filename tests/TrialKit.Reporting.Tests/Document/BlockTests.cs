using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Tests.Document;

public class BlockTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    public void Heading_LevelOutOfRange_IsRefused(int level) => Assert.Throws<ArgumentOutOfRangeException>(() => new Heading(level, "a"));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void Space_ImpossibleHeight_IsRefused(double points) => Assert.Throws<ArgumentOutOfRangeException>(() => new Space(points));

    [Theory]
    [InlineData(double.NaN, 0, 1)]
    [InlineData(0, double.NaN, 1)]
    [InlineData(0, 0, double.NaN)]
    [InlineData(0.5, 0, 1)]
    [InlineData(-1, 2, 1)]
    [InlineData(double.NegativeInfinity, double.NegativeInfinity, 1)]
    public void IntervalMark_EstimateNotWithinItsInterval_IsRefused(double low, double estimate, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new IntervalMark(low, estimate, high, MarkTone.Shown));

    [Fact]
    public void IntervalMark_Reach_IsBeyondTheFartherFiniteEnd()
    {
        Assert.Equal(1.12 * 3, new IntervalMark(-3, -1, 2, MarkTone.Shown).Reach, 1e-12);
        Assert.Equal(1.12 * 2, new IntervalMark(double.NegativeInfinity, -1, 2, MarkTone.Shown).Reach, 1e-12);
        Assert.True(new IntervalMark(0, 0, 0, MarkTone.NotShown).Reach > 0);
    }

    [Fact]
    public void Table_RowOfAnotherLength_IsRefusedWithItsNumber()
    {
        var error = Assert.Throws<ArgumentException>(() => new Table(null, [new("a"), new("b")], [TableRow.Of("1", "2"), TableRow.Of("1")]));

        Assert.Contains("Row 2 has 1 cells; the table has 2 columns", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_WithoutColumns_IsRefused() => Assert.Throws<ArgumentException>(() => new Table(null, [], []));

    [Fact]
    public void RichText_Plain_IsAllItsRuns() => Assert.Equal("a bold b", RichText.Of("a ").Then("bold", Emphasis.Strong).Then(" b").Plain);
}
