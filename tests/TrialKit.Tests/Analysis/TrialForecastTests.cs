using TrialKit.Trials;

namespace TrialKit.Tests.Analysis;

public class TrialForecastTests
{
    // 20 F-days a day: 90 to 125 F-days are met 4.5 to 6.25 days after planting.
    [Theory]
    [InlineData(3, -1)]
    [InlineData(5, 0)]
    [InlineData(8, 1)]
    public void Of_TrialWithVisits_SetsEachStripAgainstTheForecast(int up, int side)
    {
        var forecast = Analyse(up, SmallTrial.Warm(20)).Forecast!;

        var strip = Assert.Single(forecast.Strips);
        Assert.Equal(side, strip.Side);
        Assert.Equal((4.5, 6.25), (strip.Forecast.Low!.DaysAfterPlanting, strip.Forecast.High!.DaysAfterPlanting));
        Assert.Contains(forecast.Findings, finding => finding.Id == "forecast-against-observed");
    }

    [Fact]
    public void Of_StripPlantedLater_HasAForecastOfItsOwn()
    {
        var late = SmallTrial.First with { Planted = SmallTrial.Planted.AddDays(3) };
        var draft = SmallTrial.Draft with { Strips = [late, SmallTrial.Second], Emergence = [Spot(late, 8), Spot(SmallTrial.Second, 5)], Weather = SmallTrial.Warm(20) };

        var forecast = TrialAnalysis.Of(StripTrial.Create(draft)).Forecast!;

        Assert.Equal([late.Planted, SmallTrial.Planted], forecast.Strips.Select(strip => strip.Forecast.Planted));
        Assert.Equal([0, 0], forecast.Strips.Select(strip => strip.Side!.Value));
        Assert.Equal(SmallTrial.Planted, forecast.Planting.Planted);
    }

    [Fact]
    public void Of_SoilTemperature_IsUsedInPlaceOfTheAirAndSaid()
    {
        var draft = SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, 5)], Weather = Cold(20), SoilTemperature = SmallTrial.Warm(20) };

        var forecast = TrialAnalysis.Of(StripTrial.Create(draft)).Forecast!;

        Assert.Equal(4.5, forecast.Planting.Low!.DaysAfterPlanting);
        Assert.Contains("soil's heat", Assert.Single(forecast.Findings, finding => finding.Id == "forecast-against-observed").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_RangeNotReached_LeavesTheSideOpen() => Assert.Null(Assert.Single(Analyse(5, Cold(20)).Forecast!.Strips).Side);

    [Fact]
    public void Of_NoTemperatures_IsNone() =>
        Assert.Null(TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, 5)] })).Forecast);

    [Fact]
    public void Of_FilledDays_AreFlagged()
    {
        var gappy = TemperatureSeries.Of("weather.csv", SmallTrial.Warm(20).Days.RemoveAt(4)).FillGaps(1);

        Assert.Contains(Analyse(5, gappy).Findings, finding => finding.Id == "weather-filled");
    }

    private static TrialAnalysis Analyse(int up, TemperatureSeries weather) =>
        TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, up)], Weather = weather }));

    // All plants come up about the same moment, half of them by the day named.
    private static EmergenceSpot Spot(Strip strip, int up) =>
        SmallTrial.Spot(strip, "1", 30, (up - 1, 1), (up - 0.5, 6), (up, 15), (up + 0.5, 24), (up + 1, 29), (up + 3, 30));

    // Days without heat by 86/50.
    private static TemperatureSeries Cold(int days) => TemperatureSeries.Of("weather.csv", [.. SmallTrial.Warm(days).Days
        .Select(day => day with { Maximum = UnitsNet.Temperature.FromDegreesFahrenheit(48), Minimum = UnitsNet.Temperature.FromDegreesFahrenheit(40) })]);
}
