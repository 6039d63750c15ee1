using TrialKit.Quantities;
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

    [Fact]
    public void Of_ForecastOnNormalDays_SaysSoBesideWhatWasSeen()
    {
        var settings = new ForecastSettings { ObservedUntil = SmallTrial.Planted.AddDays(1), Normals = SmallTrial.Warm(20) };

        var forecast = TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, 5)], Weather = SmallTrial.Warm(20), Forecast = settings })).Forecast!;

        Assert.Contains("resting on 2 observed, 5 normal days", Assert.Single(forecast.Findings, finding => finding.Id == "forecast-against-observed").Message, StringComparison.Ordinal);
        Assert.DoesNotContain("resting on", Assert.Single(Analyse(5, SmallTrial.Warm(20)).Forecast!.Findings, finding => finding.Id == "forecast-against-observed").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AirBehindSoil_IsACaution()
    {
        var settings = new ForecastSettings { ObservedUntil = SmallTrial.Planted.AddDays(1), Normals = SmallTrial.Warm(20) };
        var draft = SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, 5)], SoilTemperature = SmallTrial.Warm(20), Forecast = settings };

        var forecast = TrialAnalysis.Of(StripTrial.Create(draft)).Forecast!;

        Assert.Contains(forecast.Findings, finding => finding.Id == "air-for-soil");
        Assert.Contains("5 of them of the air", Assert.Single(forecast.Findings, finding => finding.Id == "forecast-against-observed").Message, StringComparison.Ordinal);
        Assert.DoesNotContain(TrialAnalysis.Of(StripTrial.Create(draft with { Forecast = settings with { NormalsAreSoil = true } })).Forecast!.Findings, finding => finding.Id == "air-for-soil");
    }

    [Fact]
    public void Of_MissingDay_IsNamedAsTheReasonForTheOpenEnd()
    {
        var gappy = TemperatureSeries.Of("weather.csv", SmallTrial.Warm(30).Days.RemoveAt(5));
        var draft = SmallTrial.Draft with { Emergence = [Spot(SmallTrial.First, 3)], Weather = gappy };

        // Days up to the last visit have to be on record: the last visit is on the fourth day, the day missing is the sixth.
        var early = draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "1", 30, (1, 1), (2, 15), (3, 29), (4, 30))] };
        var message = Assert.Single(TrialAnalysis.Of(StripTrial.Create(early)).Forecast!.Findings, finding => finding.Id == "forecast-against-observed").Message;

        Assert.Contains(FormattableString.Invariant($"{SmallTrial.Planted.AddDays(5):yyyy-MM-dd} is not on hand"), message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ConditionsThatChangeNothing_AreSaid()
    {
        var settings = new ForecastSettings { Need = new(HeatSum.FromFahrenheitDays(90), HeatSum.FromFahrenheitDays(100), HeatSum.FromFahrenheitDays(110)), Conditions = new(Depth: null, Residue: null, Texture: null, DrySeedZone: true) };

        Assert.Contains(TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with { Weather = SmallTrial.Warm(20), Forecast = settings })).Findings, finding => finding.Id == "conditions-not-used");
    }

    [Theory]
    [InlineData(9, true)]
    [InlineData(20, false)]
    public void Of_DoubleFormWithoutTheNextDay_IsFoundWhereAVisitRestsOnIt(int days, bool isFound)
    {
        var method = HeatMethods.Find("double sine 86/50")!;
        var visits = SmallTrial.Spot(SmallTrial.First, "1", 30, (4, 1), (5, 15), (6, 29), (8.4, 30));
        var draft = SmallTrial.Draft with { Emergence = [visits], Weather = SmallTrial.Warm(days), Heat = new(method, CountPlantingDay: true) };

        Assert.Equal(isFound, TrialAnalysis.Of(StripTrial.Create(draft)).Findings.Any(finding => finding.Id == "heat-by-single-form"));
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
