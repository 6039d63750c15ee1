using TrialKit.Trials;

namespace TrialKit.Tests.Trials;

public class NutrientAnalysisTests
{
    [Theory]
    [InlineData("10-34-0", "10-34-0")]
    [InlineData("12-0-0-26", "12-0-0-26S")]
    [InlineData("12-0-0-26S", "12-0-0-26S")]
    [InlineData(" 9 - 18 - 9 , 0.5 Zn, 0.02 B", "9-18-9-0.5Zn-0.02B")]
    [InlineData("0-0-25-17s", "0-0-25-17S")]
    public void TryParse_Analysis_ReadsBackAsTheTradeWritesIt(string text, string printed)
    {
        Assert.True(NutrientAnalysis.TryParse(text, out var analysis));
        Assert.Equal(printed, analysis.ToString());
        Assert.True(NutrientAnalysis.TryParse(printed, out var again));
        Assert.Equal(analysis, again);
    }

    [Theory]
    [InlineData("10-34")]
    [InlineData("10--34-0")]
    [InlineData("10-34-x")]
    [InlineData("10-34-0-1Xy")]
    [InlineData("10-34-0-1Zn-2Zn")]
    [InlineData("10-34-0-1-2")]
    [InlineData("101-0-0")]
    [InlineData("NaN-0-0")]
    public void TryParse_NoAnalysis_IsRefused(string text) => Assert.False(NutrientAnalysis.TryParse(text, out _));

    [Fact]
    public void Total_OfAllStated_CountsMicronutrients()
    {
        Assert.True(NutrientAnalysis.TryParse("10-20-30-5S-1Zn", out var analysis));
        Assert.Equal(66, analysis.Total);
        Assert.Equal([Nutrient.N, Nutrient.P2O5, Nutrient.K2O, Nutrient.S, Nutrient.Zn], analysis.Stated);
    }
}
