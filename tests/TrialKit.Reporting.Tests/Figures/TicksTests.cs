using CsCheck;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests.Figures;

public class TicksTests
{
    [Theory]
    [InlineData(0, 100, 4, "0 25 50 75 100", 0)]
    [InlineData(0, 15.8, 4, "0 5 10 15", 0)]
    [InlineData(-0.04, 0.59, 5, "0 0.2 0.4", 1)]
    [InlineData(0, 1, 4, "0 0.25 0.5 0.75 1", 2)]
    [InlineData(29000, 32700, 5, "29000 30000 31000 32000", 0)]
    public void Round_Range_GivesRoundNumbers(double low, double high, int parts, string expected, int decimals)
    {
        var (values, places) = Ticks.Round(low, high, parts);

        Assert.Equal(expected, string.Join(' ', values.Select(value => FormattableString.Invariant($"{value}"))));
        Assert.Equal(decimals, places);
    }

    [Fact]
    public void Round_AnyRange_StaysWithinItAndIsNotCrowded() =>
        Gen.Select(Gen.Double[-1e5, 1e5], Gen.Double[1e-3, 1e5], Gen.Int[2, 9]).Sample((low, span, parts) =>
        {
            var (values, decimals) = Ticks.Round(low, low + span, parts);
            return values.Count <= parts + 1
                && values.All(value => value >= low - (1e-6 * span) && value <= low + span + (1e-6 * span))
                && values.Select(value => Math.Round(value, decimals)).Distinct().Count() == values.Count;
        });

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(double.NaN, 1)]
    public void Round_NoRange_IsRefused(double low, double high) => Assert.Throws<ArgumentException>(() => Ticks.Round(low, high, 4));

    [Theory]
    [InlineData(6, 8, 1)]
    [InlineData(21, 8, 5)]
    [InlineData(60, 8, 10)]
    [InlineData(1000, 8, 125)]
    public void DayStep_Span_IsCutIntoNoMoreParts(double days, int parts, int expected) => Assert.Equal(expected, Ticks.DayStep(days, parts));
}
