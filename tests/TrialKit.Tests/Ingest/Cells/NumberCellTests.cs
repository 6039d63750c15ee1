using System.Text;
using TrialKit.Ingest.Cells;

namespace TrialKit.Tests.Ingest.Cells;

public class NumberCellTests
{
    [Theory]
    [InlineData("0", false, 0)]
    [InlineData("17.424", false, 17.424)]
    [InlineData("-3.5", false, -3.5)]
    [InlineData("+4", false, 4)]
    [InlineData("1e3", false, 1000)]
    [InlineData(".5", false, 0.5)]
    [InlineData("17,424", true, 17.424)]
    [InlineData("17.424", true, 17.424)]
    public void TryRead_Number_IsItsValue(string text, bool decimalComma, double expected)
    {
        Assert.True(NumberCell.TryRead(Encoding.UTF8.GetBytes(text), decimalComma, out var value));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("12 ft", false)]
    [InlineData("1,000", false)]
    [InlineData("1.000,5", true)]
    [InlineData("1,000,000", true)]
    [InlineData("NaN", false)]
    [InlineData("Infinity", false)]
    [InlineData("1e999", false)]
    [InlineData("--1", false)]
    [InlineData("1e", false)]
    [InlineData("0x10", false)]
    [InlineData("\u0661\u0662", false)]
    [InlineData("1111111111111111111111111111111111111111111111111111111111111111111111", false)]
    public void TryRead_AnythingElse_IsRefused(string text, bool decimalComma) =>
        Assert.False(NumberCell.TryRead(Encoding.UTF8.GetBytes(text), decimalComma, out _));

    [Theory]
    [InlineData("", true)]
    [InlineData("NA", true)]
    [InlineData("na", true)]
    [InlineData(".", true)]
    [InlineData("0", false)]
    [InlineData("N", false)]
    [InlineData("NAN", false)]
    public void IsNotRecorded_Cell_IsEmptyNaOrPoint(string text, bool expected) =>
        Assert.Equal(expected, NumberCell.IsNotRecorded(Encoding.UTF8.GetBytes(text)));
}
