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
        Assert.All(new[] { forecast.Low, forecast.Mid, forecast.High }, date => Assert.Equal((DayKind.Observed, 0), (date!.Kind, date.RestsOn.Uncertain)));
    }

    // 20 F-days a day: 90 is met half way through the fifth day.
    [Fact]
    public void Of_EvenWeather_GivesTheFractionWithinTheDay()
    {
        var forecast = EmergenceForecast.Of(ForecastDays.Of(Weather.Even(5, 60, 80)), Need(90, 100, 101), new DateOnly(2026, 5, 1), countPlantingDay: true);

        Assert.Equal((4.5, new DateOnly(2026, 5, 5)), (forecast.Low!.DaysAfterPlanting, forecast.Low.Date));
        Assert.Equal(new DateOnly(2026, 5, 5), forecast.Mid!.Date);
        Assert.Null(forecast.High);
        Assert.Equal((new DateOnly(2026, 5, 5), 100.0), (forecast.LastDay!.Value, forecast.Gathered.FahrenheitDays));
    }

    [Fact]
    public void Of_ObservedThenForecastThenNormal_SaysWhatEachDateRestsOn()
    {
        var start = new DateOnly(2026, 5, 1);
        var coming = TemperatureSeries.Of("coming", [.. Weather.Even(6, 60, 80).Days.Skip(2)]);
        var years = TemperatureSeries.Of("years", [.. Weather.Even(60, 50, 70).Days.Select(day => day with { Date = day.Date.AddYears(-2) }), .. Weather.Even(60, 70, 90).Days.Select(day => day with { Date = day.Date.AddYears(-1) })]);
        var days = ForecastDays.Of(Weather.Even(30, 60, 80), settings: new() { ObservedUntil = start.AddDays(2), Days = coming, Normals = years });

        var forecast = EmergenceForecast.Of(days, Need(50, 100, 130), start, countPlantingDay: true);

        Assert.Equal([DayKind.Observed, DayKind.Forecast, DayKind.Normal], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.Kind));
        Assert.Equal([0, 2, 4], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.RestsOn.Uncertain));

        // The years give 10 and 28 F-days a day, 19 in the mean: 10 of the 130 are wanting after six days of 20.
        Assert.Equal(6 + (10.0 / 19), forecast.High!.DaysAfterPlanting, Tolerances.Heat);
        Assert.Equal(new DayCounts(Observed: 3, Filled: 0, Forecast: 3, Normal: 1, AirForSoil: 0), forecast.High.RestsOn);
        Assert.Equal((2, 2), days.NormalYears);
        Assert.Equal(("coming", "years"), (days.ForecastSource, days.NormalsSource));
        Assert.Equal(DayKind.Normal, days.KindOf(start.AddDays(100)) ?? DayKind.Normal);
        Assert.Null(days.KindOf(start.AddDays(-1)));
    }

    [Fact]
    public void Of_MissingDay_IsIncompleteAndNotBridged()
    {
        var gappy = TemperatureSeries.Of("gappy", Weather.Even(20, 60, 80).Days.RemoveAt(3));

        var forecast = EmergenceForecast.Of(ForecastDays.Of(gappy, settings: new() { Normals = Weather.Even(60, 60, 80) }), Need(50, 100, 120), new DateOnly(2026, 5, 1), countPlantingDay: true);
        var filled = EmergenceForecast.Of(ForecastDays.Of(gappy.FillGaps(1)), Need(50, 100, 120), new DateOnly(2026, 5, 1), countPlantingDay: true);

        Assert.NotNull(forecast.Low);
        Assert.Null(forecast.Mid);
        Assert.Equal((new DateOnly(2026, 5, 4), 60.0), (forecast.Clock.Gap!.Value, forecast.Gathered.FahrenheitDays));
        Assert.Equal((DayKind.Observed, 1), (filled.Mid!.Kind, filled.Mid.RestsOn.Filled));
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
        var outlook = CottonOutlook.Of(ForecastDays.Of(Weather.Even(6, minimum, maximum)), new DateOnly(2026, 5, 1))!;

        Assert.Equal((expected, isLowered), (outlook.Class, outlook.IsLowered));
        Assert.Null(CottonOutlook.Of(ForecastDays.Of(Weather.Even(5, minimum, maximum)), new DateOnly(2026, 5, 1)));
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
        var found = PlantingCautions.Of(CropTable.Find(crop)!, ForecastDays.Of(Weather.Even(6, minimum, 70)), new DateOnly(2026, 5, 1), Length.FromInches(inches));

        Assert.Equal(expected, string.Join(',', found.Select(caution => caution.Finding.Id)));
    }

    [Theory]
    [InlineData("observed", "The air fell to 35 F")]
    [InlineData("filled", "fell to 35 F on 2026-05-02 by interpolation")]
    [InlineData("forecast", "The air is forecast to fall to 35 F")]
    [InlineData("normal", "The air normally falls to 35 F")]
    [InlineData("soil", "The soil fell to 35 F")]
    public void Cautions_DayNotObserved_IsNotToldAsAnEvent(string kind, string expected)
    {
        var start = new DateOnly(2026, 5, 1);
        var cold = TemperatureSeries.Of("cold", [.. Weather.Even(6, 36, 70).Days.Select(day => day.Date == start.AddDays(1) ? day with { Minimum = Temperature.FromDegreesFahrenheit(35) } : day)]);
        var first = TemperatureSeries.Of("first", [cold.Days[0]]);
        var days = kind switch
        {
            "filled" => ForecastDays.Of(TemperatureSeries.Of("gappy", [At(0, 34.0 + 2), At(2, 34)]).FillGaps(1)),
            "forecast" => ForecastDays.Of(first, settings: new() { Days = cold }),
            "normal" => ForecastDays.Of(first, settings: new() { Normals = TemperatureSeries.Of("years", [.. cold.Days.Select(day => day with { Date = day.Date.AddYears(-1) })]) }),
            _ => ForecastDays.Of(cold, isSoil: kind == "soil"),
        };

        // The filled day lies between 36 and 34 F; planting cautions look at the day and the two after it.
        var planted = kind == "filled" ? start.AddDays(-1) : start;
        var caution = PlantingCautions.Of(CropTable.Find("corn")!, days, planted, depth: null).First();

        Assert.Equal("cold-after-planting", caution.Finding.Id);
        Assert.Contains(expected, caution.Finding.Message, StringComparison.Ordinal);
        Assert.Equal(kind != "soil", caution.Finding.Message.Contains("Air tells of the soil only roughly", StringComparison.Ordinal));

        DailyTemperature At(int day, double minimum) => new(start.AddDays(day), Temperature.FromDegreesFahrenheit(70), Temperature.FromDegreesFahrenheit(minimum));
    }

    [Fact]
    public void Of_SoilRecordThenAirForecast_SaysWhichDaysAreOfTheAir()
    {
        var start = new DateOnly(2026, 5, 1);
        var coming = TemperatureSeries.Of("coming", [.. Weather.Even(20, 60, 80).Days.Skip(3)]);
        var days = ForecastDays.Of(Weather.Even(3, 60, 80), isSoil: true, new() { Days = coming, Normals = coming, NormalsAreSoil = true });

        var forecast = EmergenceForecast.Of(days, Need(50, 100, 130), start, countPlantingDay: true);

        Assert.Equal(start.AddDays(3), days.FirstAirForSoil);
        Assert.Equal([true, false], new[] { days.IsSoilOn(start), days.IsSoilOn(start.AddDays(3)) });
        Assert.Equal([0, 2, 4], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => date!.RestsOn.AirForSoil));
        Assert.Null(ForecastDays.Of(Weather.Even(3, 60, 80), isSoil: true).FirstAirForSoil);
    }

    // By the simple average above 50 F days of 40 and 60 F give 0 and 10, a mean of 5; their mean temperature gives 0.
    [Fact]
    public void Of_NormalDays_GatherTheMeanHeatOfTheYears()
    {
        var start = new DateOnly(2026, 5, 1);
        DailyTemperature Day(int year, int day, double degrees) => new(start.AddYears(year).AddDays(day), Temperature.FromDegreesFahrenheit(degrees), Temperature.FromDegreesFahrenheit(degrees));
        var years = TemperatureSeries.Of("years", [Day(-2, 1, 40), Day(-2, 2, 40), Day(-1, 1, 60), Day(-1, 2, 60)]);
        var days = ForecastDays.Of(TemperatureSeries.Of("record", [Day(0, 0, 60)]), settings: new() { Normals = years });
        var need = new HeatNeed(new HeatRange(HeatSum.FromFahrenheitDays(10), HeatSum.FromFahrenheitDays(15), HeatSum.FromFahrenheitDays(17.5)), HeatMethods.Average50, "test", []);

        var forecast = EmergenceForecast.Of(days, need, start, countPlantingDay: true);

        Assert.Equal([1.0, 2.0, 2.5], new[] { forecast.Low, forecast.Mid, forecast.High }.Select(date => Math.Round(date!.DaysAfterPlanting, 9)));
        Assert.Equal(50, days.Series.Days[1].Maximum.DegreesFahrenheit, Tolerances.Heat);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, false)]
    [InlineData(2, true)]
    public void Of_HoleBetweenRecordAndForecast_IsFilledWhenAskedAndFlagged(int fill, bool isBridged)
    {
        var start = new DateOnly(2026, 5, 1);
        var coming = TemperatureSeries.Of("coming", [.. Weather.Even(20, 60, 80).Days.Skip(5)]);
        ForecastDays Days(bool isSoil) => ForecastDays.Of(Weather.Even(3, 60, 80), isSoil, new() { Days = coming, Fill = fill });

        var forecast = EmergenceForecast.Of(Days(isSoil: false), Need(50, 100, 130), start, countPlantingDay: true);

        Assert.Equal(isBridged ? new DayCounts(3, 2, 2, 0, 0) : null, forecast.High?.RestsOn);
        Assert.Null(EmergenceForecast.Of(Days(isSoil: true), Need(50, 100, 130), start, countPlantingDay: true).High);
    }

    [Theory]
    [InlineData(2.0, null, 90, 120, 125)]
    [InlineData(2.05, null, 90.75, 120.75, 125.75)]
    [InlineData(3.0, null, 105, 135, 140)]
    [InlineData(3.0, 80.0, 170, 185, 200)]
    public void Needs_CornDeeper_MovesTheRangeWithoutAJump(double inches, double? residue, double low, double mid, double high)
    {
        var need = HeatNeeds.Of(CropTable.Find("corn")!, Plain with { Depth = Length.FromInches(inches), Residue = residue is { } percent ? Ratio.FromPercent(percent) : null })!;

        Assert.Equal([low, mid, high], new[] { need.Range.Low, need.Range.Mid, need.Range.High }.Select(sum => Math.Round(sum.FahrenheitDays, 9)));
        Assert.Equal(residue is not null, need.Source.Contains("in place of the published range", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("soybean")]
    [InlineData("wheat")]
    public void Needs_ConditionsWithoutAnAdjustment_AreListedAsUnused(string crop)
    {
        var conditions = Plain with { Residue = Ratio.FromPercent(80), DrySeedZone = true };

        Assert.Equal(2, HeatNeeds.Of(CropTable.Find(crop)!, conditions)!.Unused.Length);
        Assert.Equal(2, HeatNeeds.Of(CropTable.Find("corn")!, HeatMethods.Corn, new() { Conditions = conditions, Need = Need(1, 2, 3).Range }, "test")!.Unused.Length);
        Assert.Empty(HeatNeeds.Of(CropTable.Find("corn")!, conditions)!.Unused);
    }

    [Theory]
    [InlineData(10.0, CottonClass.VeryPoor)]
    [InlineData(10.0000000001, CottonClass.VeryPoor)]
    [InlineData(10.04, CottonClass.Marginal)]
    [InlineData(49.99, CottonClass.VeryGood)]
    public void Cotton_SumNearALimit_IsClassedByTheSumAndNotByRounding(double sum, CottonClass expected) => Assert.Equal(expected, CottonOutlook.ClassOf(sum));

    [Fact]
    public void Of_NoDayFromPlantingOn_HasNoLastDay()
    {
        var forecast = EmergenceForecast.Of(ForecastDays.Of(Weather.Even(5, 60, 80)), Need(90, 100, 101), new DateOnly(2026, 5, 9), countPlantingDay: true);

        Assert.Null(forecast.LastDay);
        Assert.Null(forecast.Clock.Gap);
    }

    [Fact]
    public void Of_DoubleFormAtTheEndOfTheRecord_ListsTheDayCountedSingly()
    {
        var method = HeatMethods.Find("double sine 86/50")!;
        var clock = HeatClock.Start(Weather.Even(5, 60, 80), method, new DateOnly(2026, 5, 1), countPlantingDay: true);

        Assert.Equal([new DateOnly(2026, 5, 5)], clock.BySingle);
    }

    private static HeatNeed Need(double low, double mid, double high) =>
        new(new HeatRange(HeatSum.FromFahrenheitDays(low), HeatSum.FromFahrenheitDays(mid), HeatSum.FromFahrenheitDays(high)), HeatMethods.Corn, "test", []);
}
