using System.Globalization;
using TrialKit.Heat;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Heat;

public class EmergenceForecastTests
{
    private static readonly DateOnly MayFirst = new(2012, 5, 1);
    private static readonly FieldConditions Plain = new(Depth: null, Residue: null, Texture: null, DrySeedZone: false);

    // Seattle 2012, computed from the record; no published value.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_SeattleMay_FallsOnTheDaysTheNeedsAreMet(bool counted)
    {
        var forecast = EmergenceForecast.Of(ForecastDays.Of(Weather.May()), Need(115, 120, 125), MayFirst, counted);

        Assert.Equal(["05-16", "05-17", "05-18"], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.Date.ToString("MM-dd", CultureInfo.InvariantCulture)));
        Assert.All(new[] { forecast.Low, forecast.Mid, forecast.High }, date => Assert.Equal((DayKind.Observed, 0), (date!.Kind, date.Uncertain)));
    }

    // 20 F-days a day: 90 is met half way through the fifth day.
    [Fact]
    public void Of_EvenWeather_GivesTheFractionWithinTheDay()
    {
        var forecast = EmergenceForecast.Of(ForecastDays.Of(Weather.Even(5, 60, 80)), Need(90, 100, 101), new DateOnly(2026, 5, 1), countPlantingDay: true);

        Assert.Equal((4.5, new DateOnly(2026, 5, 5)), (forecast.Low!.DaysAfterPlanting, forecast.Low.Date));
        Assert.Equal(new DateOnly(2026, 5, 5), forecast.Mid!.Date);
        Assert.Null(forecast.High);
        Assert.Equal((new DateOnly(2026, 5, 5), 100.0), (forecast.LastDay, forecast.Gathered.FahrenheitDays));
    }

    [Fact]
    public void Of_ObservedThenForecastThenNormal_SaysWhatEachDateRestsOn()
    {
        var start = new DateOnly(2026, 5, 1);
        var coming = TemperatureSeries.Of("coming", [.. Weather.Even(6, 60, 80).Days.Skip(2)]);
        var years = TemperatureSeries.Of("years", [.. Weather.Even(60, 50, 70).Days.Select(day => day with { Date = day.Date.AddYears(-2) }), .. Weather.Even(60, 70, 90).Days.Select(day => day with { Date = day.Date.AddYears(-1) })]);
        var days = ForecastDays.Of(Weather.Even(30, 60, 80), start.AddDays(2), coming, years);

        var forecast = EmergenceForecast.Of(days, Need(50, 100, 130), start, countPlantingDay: true);

        Assert.Equal([DayKind.Observed, DayKind.Forecast, DayKind.Normal], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.Kind));
        Assert.Equal([0, 2, 4], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.Uncertain));
        Assert.Equal(6.5, forecast.High!.DaysAfterPlanting, Tolerances.Heat);
        Assert.Equal(DayKind.Normal, days.KindOf(start.AddDays(100)) ?? DayKind.Normal);
        Assert.Null(days.KindOf(start.AddDays(-1)));
    }

    [Fact]
    public void Of_MissingDay_IsIncompleteAndNotBridged()
    {
        var gappy = TemperatureSeries.Of("gappy", Weather.Even(20, 60, 80).Days.RemoveAt(3));

        var forecast = EmergenceForecast.Of(ForecastDays.Of(gappy, normals: Weather.Even(60, 60, 80)), Need(50, 100, 120), new DateOnly(2026, 5, 1), countPlantingDay: true);
        var filled = EmergenceForecast.Of(ForecastDays.Of(gappy.FillGaps(1)), Need(50, 100, 120), new DateOnly(2026, 5, 1), countPlantingDay: true);

        Assert.NotNull(forecast.Low);
        Assert.Null(forecast.Mid);
        Assert.Equal((new DateOnly(2026, 5, 4), 60.0), (forecast.Clock.Gap!.Value, forecast.Gathered.FahrenheitDays));
        Assert.Equal((DayKind.Observed, 1), (filled.Mid!.Kind, filled.Mid.Uncertain));
    }

    [Fact]
    public void OfWindow_Dates_NeverEmergeEarlierWhenPlantedLater()
    {
        var window = EmergenceForecast.OfWindow(ForecastDays.Of(Weather.May()), Need(60, 70, 80), MayFirst, MayFirst.AddDays(12), countPlantingDay: true);

        Assert.Equal(13, window.Count);
        Assert.All(window.Zip(window.Skip(1)), pair => Assert.True(pair.First.Mid!.Date <= pair.Second.Mid!.Date));
        Assert.Throws<ArgumentException>(() => EmergenceForecast.OfWindow(ForecastDays.Of(Weather.May()), Need(60, 70, 80), MayFirst, MayFirst.AddDays(-1), countPlantingDay: true));
    }

    // Lauer 2003 on a base of 125: 3 in deep with residue on 80 % of the ground.
    [Fact]
    public void Needs_DeepCornUnderResidue_AreARangeWithEachAdjustmentListed()
    {
        var need = HeatNeeds.Of(CropTable.Find("corn")!, Plain with { Depth = Length.FromInches(3), Residue = Ratio.FromPercent(80) })!;

        Assert.Equal((170.0, 185.0, 200.0), (need.Range.Low.FahrenheitDays, need.Range.Mid.FahrenheitDays, need.Range.High.FahrenheitDays));
        Assert.Equal([(15.0, 15.0), (30.0, 60.0)], need.Adjustments.Select(each => (each.LowFahrenheitDays, each.HighFahrenheitDays)));
        Assert.All(need.Adjustments, each => Assert.Contains("Lauer 2003", each.Source, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("corn", 90, 125)]
    [InlineData("soybean", 90, 130)]
    [InlineData("cotton", 50, 50)]
    [InlineData("sorghum", 126, 126)]
    [InlineData("wheat", 279, 279)]
    public void Needs_BuiltInCrop_AreAsPrinted(string crop, double low, double high)
    {
        var need = HeatNeeds.Of(CropTable.Find(crop)!, Plain)!;

        Assert.Equal((low, high), (need.Range.Low.FahrenheitDays, need.Range.High.FahrenheitDays));
        Assert.Empty(need.Adjustments);
    }

    [Theory]
    [InlineData(SoilTexture.Fine, 155, 185)]
    [InlineData(SoilTexture.Medium, 90, 125)]
    [InlineData(SoilTexture.Coarse, 65, 95)]
    public void Needs_CornByTexture_MoveEitherWay(SoilTexture texture, double low, double high)
    {
        var need = HeatNeeds.Of(CropTable.Find("corn")!, Plain with { Texture = texture })!;

        Assert.Equal((low, high), (need.Range.Low.FahrenheitDays, need.Range.High.FahrenheitDays));
    }

    [Fact]
    public void Needs_CropWithoutAPublishedNeed_AreNone() => Assert.Null(HeatNeeds.Of(CropTable.Find("canola")!, Plain));

    [Theory]
    [InlineData(55, 68, CottonClass.VeryPoor, false)]
    [InlineData(56, 69, CottonClass.Marginal, false)]
    [InlineData(56, 73, CottonClass.Adequate, false)]
    [InlineData(58, 74, CottonClass.Good, false)]
    [InlineData(60, 78, CottonClass.VeryGood, false)]
    [InlineData(70, 85, CottonClass.Excellent, false)]
    [InlineData(50, 90, CottonClass.VeryGood, true)]
    [InlineData(45, 60, CottonClass.VeryPoor, false)]
    public void Cotton_FiveDays_AreClassedAsPrinted(double minimum, double maximum, CottonClass expected, bool isLowered)
    {
        var outlook = CottonOutlook.Of(Weather.Even(6, minimum, maximum), new DateOnly(2026, 5, 1))!;

        Assert.Equal((expected, isLowered), (outlook.Class, outlook.IsLowered));
        Assert.Null(CottonOutlook.Of(Weather.Even(5, minimum, maximum), new DateOnly(2026, 5, 1)));
    }

    [Theory]
    [InlineData("corn", 38, 2.0, "cold-after-planting,cool-after-planting")]
    [InlineData("corn", 45, 2.0, "cool-after-planting")]
    [InlineData("corn", 55, 1.0, "planting-depth")]
    [InlineData("corn", 55, 2.0, "")]
    [InlineData("soybean", 38, 1.25, "cool-after-planting")]
    [InlineData("soybean", 55, 2.0, "planting-depth")]
    [InlineData("canola", 38, 9.0, "")]
    public void Cautions_ColdAndDepth_AreThoseOfTheCrop(string crop, double minimum, double inches, string expected)
    {
        var found = PlantingCautions.Of(CropTable.Find(crop)!, Weather.Even(6, minimum, 70), isSoil: false, new DateOnly(2026, 5, 1), Length.FromInches(inches));

        Assert.Equal(expected, string.Join(',', found.Select(finding => finding.Id)));
    }

    private static HeatNeed Need(double low, double mid, double high) =>
        new(new HeatRange(HeatSum.FromFahrenheitDays(low), HeatSum.FromFahrenheitDays(mid), HeatSum.FromFahrenheitDays(high)), HeatMethods.Corn, "test", []);
}
