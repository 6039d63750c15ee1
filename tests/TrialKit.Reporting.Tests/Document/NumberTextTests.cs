using System.Globalization;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Tests.Document;

public class NumberTextTests
{
    [Theory]
    [InlineData(0, "p < .001")]
    [InlineData(0.00099, "p < .001")]
    [InlineData(0.001, "p = .0010")]
    [InlineData(0.00423, "p = .0042")]
    [InlineData(0.028, "p = .028")]
    [InlineData(0.0996, "p = .10")]
    [InlineData(0.107, "p = .11")]
    [InlineData(0.5, "p = .50")]
    [InlineData(0.986, "p = .99")]
    [InlineData(0.995, "p > .99")]
    [InlineData(1, "p > .99")]
    public void P_Value_HasTwoFigures(double p, string expected) => Assert.Equal(expected, NumberText.P(p).Replace('\u00A0', ' '));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    public void P_NotAProbability_IsRefused(double p)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.P(p));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.PValue(p));
    }

    [Theory]
    [InlineData(1234.5, 1, "1,234.5")]
    [InlineData(-1234.5, 1, "−1,234.5")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.05, 1, "−0.1")]
    [InlineData(0, 0, "0")]
    public void Number_Value_HasItsDecimals(double value, int decimals, string expected) => Assert.Equal(expected, NumberText.Number(value, decimals));

    [Theory]
    [InlineData(0.34, 1, "+0.3")]
    [InlineData(-0.34, 1, "−0.3")]
    [InlineData(0.01, 1, "0.0")]
    [InlineData(-0.01, 1, "0.0")]
    public void Difference_Value_ShowsItsSignUnlessZero(double value, int decimals, string expected) =>
        Assert.Equal(expected, NumberText.Difference(value, decimals));

    [Theory]
    [InlineData(31449.9, "31,400")]
    [InlineData(31450, "31,500")]
    [InlineData(40, "0")]
    public void Stand_Value_IsToTheHundred(double plants, string expected) => Assert.Equal(expected, NumberText.Stand(plants));

    [Theory]
    [InlineData(604, "+600")]
    [InlineData(-24, "−20")]
    [InlineData(1186, "+1,190")]
    [InlineData(-2186, "−2,200")]
    [InlineData(3, "0")]
    public void StandDifference_Value_IsToTheTenBelowTwoThousand(double plants, string expected) =>
        Assert.Equal(expected, NumberText.StandDifference(plants));

    [Theory]
    [InlineData(0.01234, 2, "0.012")]
    [InlineData(123.4, 2, "120")]
    [InlineData(99.6, 2, "100")]
    [InlineData(-1.26, 2, "−1.3")]
    [InlineData(0, 3, "0")]
    public void Figures_Value_KeepsThatMany(double value, int figures, string expected) => Assert.Equal(expected, NumberText.Figures(value, figures));

    [Fact]
    public void Range_Ends_AreWrittenByTheRule()
    {
        Assert.Equal("−20 to 1,190", NumberText.Range(-20, 1190, value => NumberText.Number(value, 0)));
        Assert.Equal("0.2 or more", NumberText.Range(0.2, double.PositiveInfinity, NumberText.Days));
        Assert.Equal("0.2 or less", NumberText.Range(double.NegativeInfinity, 0.2, NumberText.Days));
        Assert.Equal("no limit", NumberText.Range(double.NegativeInfinity, double.PositiveInfinity, NumberText.Days));
    }

    [Fact]
    public void Missing_Values_AreDashes()
    {
        Assert.Equal("–", NumberText.Number(null, 1));
        Assert.Equal("–", NumberText.Stand(null));
        Assert.Equal("–", NumberText.Days(null));
        Assert.Equal("–", NumberText.PValue(null));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Number_NotFinite_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.Number(value, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.Stand(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumberText.Figures(value, 2));
    }

    [Fact]
    public void Texts_UnderADecimalCommaCulture_AreTheSame()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("1,234.5", NumberText.Number(1234.5, 1));
            Assert.Equal("93.2\u00A0%", NumberText.Percent(0.9321, 1));
            Assert.Equal("May 4, 2026", NumberText.Date(new DateOnly(2026, 5, 4)));
            Assert.Equal("May 4", NumberText.ShortDate(new DateOnly(2026, 5, 4)));
            Assert.Equal(".028", NumberText.PValue(0.028));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
