using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Tests.Words;

public class AmountTextTests
{
    private static readonly Measure T50 = new("t50", "Time to 50 % up", Unit.Days, MeasureKind.Time, Better.Lower, IsHeadline: true);
    private static readonly Measure Stand = new("stand", "Stand", Unit.PlantsPerAcre, MeasureKind.Stand, Better.Unsaid, IsHeadline: true);

    [Theory]
    [InlineData(-0.35, 0.5, "8\u00A0hours sooner")]
    [InlineData(0.36, 3, "0.4\u00A0days later")]
    [InlineData(0.001, 0.5, "next to none")]
    public void Directed_Days_AreToldInAUnitThatSuitsTheirSize(double days, double largest, string text) =>
        Assert.Equal(text, AmountText.For(T50, largest).Directed(days, MeasureWords.Of(T50)));

    [Theory]
    [InlineData(-1.0 / 24, "1\u00A0hour")]
    [InlineData(1.04 / 24, "1\u00A0hour")]
    [InlineData(2.0 / 24, "2\u00A0hours")]
    [InlineData(0.1 / 24, "0\u00A0hours")]
    public void Amount_OneHour_IsNotPlural(double days, string text) => Assert.Equal(text, AmountText.For(T50, 0.5).Amount(days));

    [Theory]
    [InlineData("up-48h", 127.3, "100.0\u00A0percentage points")]
    [InlineData("stand-share", 127.3, "127.3\u00A0percentage points")]
    public void Amount_MoreThanAShareCanDifferBy_IsTheMost(string id, double points, string text) =>
        Assert.Equal(text, AmountText.For(new(id, id, Unit.Percent, MeasureKind.Share, Better.Higher, IsHeadline: true), points).Amount(points));

    [Theory]
    [InlineData(-24, 1187, "20 lower to 1,190 higher")]
    [InlineData(-2387, -683, "700 to 2,400")]
    [InlineData(0, 1187, "0 to 1,190 higher")]
    [InlineData(-1187, 2, "0 to 1,190 lower")]
    public void Range_OfStands_GrowsInSizeOrSaysEachDirection(double low, double high, string text) =>
        Assert.Equal(text, AmountText.For(Stand, Math.Max(Math.Abs(low), Math.Abs(high))).Range(low, high, MeasureWords.Of(Stand)));
}
