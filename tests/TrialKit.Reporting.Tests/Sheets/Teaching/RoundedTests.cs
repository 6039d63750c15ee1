using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

public class RoundedTests
{
    [Fact]
    public void To_AHalf_GoesAwayFromZeroOnPaperAlone()
    {
        var half = ((Rounded)1 / 8).To(2);

        Assert.Equal("0.13", half.Text);
        Assert.Equal(0.125, half.Exact);
        Assert.Equal("\u22120.13", (-half).Text);
        Assert.Equal("+0.13", half.Signed);
        Assert.Equal("(\u22120.13)", (-half).InSum);
    }

    [Fact]
    public void Arithmetic_AfterRounding_CarriesTheRoundedNumber()
    {
        var third = ((Rounded)1 / 3).To(1);
        var product = (third * 9).To(1);

        Assert.Equal("2.7", product.Text);
        Assert.Equal(3, product.Exact, 1e-12);
    }

    [Fact]
    public void Add_TwoOfDifferentDecimals_KeepsTheFinerOnes() =>
        Assert.Equal("2.55", (Rounded.Given(2.5m, 1) + Rounded.Given(0.05m, 2)).Text);

    [Fact]
    public void Text_BeforeRounding_IsRefused()
    {
        var raw = (Rounded)1 / 3;

        Assert.Throws<InvalidOperationException>(() => raw.Text);
        Assert.Throws<InvalidOperationException>(() => (raw + 1).Signed);
    }

    [Fact]
    public void LargerAndSmaller_JudgePaperAndFullPrecisionEach()
    {
        var low = (Rounded.Given(1.04m, 2) / 1).To(1);
        var high = (Rounded.Given(1.02m, 2) / 1).To(1);

        Assert.Equal(1.04, Rounded.Larger(low, high).Exact, 1e-12);
        Assert.Equal(1.02, Rounded.Smaller(low, high).Exact, 1e-12);
        Assert.Equal("1.0", Rounded.Smaller(low, high).Text);
    }
}
