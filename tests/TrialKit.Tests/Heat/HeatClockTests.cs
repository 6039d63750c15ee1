using System.Globalization;
using CsCheck;
using TrialKit.Heat;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Heat;

public class HeatClockTests
{
    private static readonly DateOnly MayFirst = new(2012, 5, 1);

    // Seattle 2012; dates and sums computed from the record, no published value.
    [Theory]
    [InlineData(true, 115, "2012-05-16", 117.81)]
    [InlineData(true, 120, "2012-05-17", 124.83)]
    [InlineData(true, 125, "2012-05-18", 129.87)]
    [InlineData(false, 115, "2012-05-16", 116.28)]
    [InlineData(false, 120, "2012-05-17", 123.30)]
    [InlineData(false, 125, "2012-05-18", 128.34)]
    public void DaysAt_SeattleMay_FallsOnTheDayTheNeedIsMet(bool countPlantingDay, double need, string date, double sum)
    {
        var clock = HeatClock.Start(Weather.May(), HeatMethods.Corn, MayFirst, countPlantingDay);

        var moment = clock.DaysAt(HeatSum.FromFahrenheitDays(need))!.Value;
        var day = MayFirst.AddDays((int)Math.Floor(moment));

        Assert.Equal(DateOnly.Parse(date, CultureInfo.InvariantCulture), day);
        Assert.Equal(sum, clock.Days.Single(counted => counted.Date == day).Sum.FahrenheitDays, Tolerances.Heat);
    }

    [Fact]
    public void Days_SeattleMay_AddUpToTheMonth()
    {
        var clock = HeatClock.Start(Weather.May(), HeatMethods.Corn, MayFirst, countPlantingDay: true);

        Assert.Equal(31, clock.Days.Length);
        Assert.Equal(222.30, clock.Days[^1].Sum.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(31, clock.Ends);
    }

    [Fact]
    public void HeatAt_WithinADay_IsLinear()
    {
        var clock = HeatClock.Start(Weather.Even(3, 60, 80), HeatMethods.Corn, new(2026, 5, 1), countPlantingDay: true);

        Assert.Equal(0, clock.HeatAt(0)!.Value.FahrenheitDays);
        Assert.Equal(5, clock.HeatAt(0.25)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(20, clock.HeatAt(1)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(60, clock.HeatAt(3)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Null(clock.HeatAt(3.001));
    }

    [Fact]
    public void HeatAt_PlantingDayNotCounted_StartsWithTheNextDay()
    {
        var clock = HeatClock.Start(Weather.Even(3, 60, 80), HeatMethods.Corn, new(2026, 5, 1), countPlantingDay: false);

        Assert.Equal(0, clock.HeatAt(0.9)!.Value.FahrenheitDays);
        Assert.Equal(0, clock.HeatAt(1)!.Value.FahrenheitDays);
        Assert.Equal(10, clock.HeatAt(1.5)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(1.5, clock.DaysAt(HeatSum.FromFahrenheitDays(10))!.Value, Tolerances.Heat);
        Assert.Equal(3, clock.Ends);
    }

    [Fact]
    public void HeatAt_AcrossAMissingDay_IsNull()
    {
        var days = Weather.Even(6, 60, 80).Days.RemoveAt(2);
        var clock = HeatClock.Start(TemperatureSeries.Of("test", days), HeatMethods.Corn, new(2026, 5, 1), countPlantingDay: true);

        Assert.Equal(40, clock.HeatAt(2)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Null(clock.HeatAt(2.5));
        Assert.Null(clock.HeatAt(5));
        Assert.Null(clock.DaysAt(HeatSum.FromFahrenheitDays(41)));
    }

    [Fact]
    public void HeatAt_SeriesBeginsAfterPlanting_IsNull()
    {
        var clock = HeatClock.Start(Weather.Even(6, 60, 80), HeatMethods.Corn, new(2026, 4, 28), countPlantingDay: true);

        Assert.Empty(clock.Days);
        Assert.Null(clock.HeatAt(4));
        Assert.Equal(0, clock.HeatAt(0)!.Value.FahrenheitDays);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    [InlineData(double.PositiveInfinity)]
    public void HeatAt_ImpossibleMoment_IsRefused(double moment)
    {
        var clock = HeatClock.Start(Weather.Even(3, 60, 80), HeatMethods.Corn, new(2026, 5, 1), countPlantingDay: true);

        Assert.Throws<ArgumentOutOfRangeException>(() => clock.HeatAt(moment));
    }

    [Fact]
    public void DaysAt_HeatOfAMoment_IsThatMoment() =>
        Gen.Select(Gen.Double[0.01, 30.99], Gen.Bool).Sample((moment, counted) =>
        {
            var clock = HeatClock.Start(Weather.May(), HeatMethods.Average50, MayFirst, counted);
            var heat = clock.HeatAt(moment)!.Value;
            var back = clock.DaysAt(heat)!.Value;

            // Over hours without heat the first moment is given back, at which the sum is the same.
            return back <= moment + Tolerances.Heat && Math.Abs(clock.HeatAt(back)!.Value.FahrenheitDays - heat.FahrenheitDays) < Tolerances.Heat;
        });

    [Fact]
    public void HeatAt_RecordInTheOtherScale_ChangesNothing() =>
        Gen.Double[0, 31].Sample(moment =>
        {
            var celsius = Weather.May();
            var fahrenheit = TemperatureSeries.Of("test", [.. celsius.Days.Select(day => day with
            {
                Maximum = Temperature.FromDegreesFahrenheit(day.Maximum.DegreesFahrenheit),
                Minimum = Temperature.FromDegreesFahrenheit(day.Minimum.DegreesFahrenheit),
            })]);
            var one = HeatClock.Start(celsius, HeatMethods.Corn, MayFirst, countPlantingDay: true).HeatAt(moment)!.Value;
            var other = HeatClock.Start(fahrenheit, HeatMethods.Corn, MayFirst, countPlantingDay: true).HeatAt(moment)!.Value;
            return Math.Abs(one.FahrenheitDays - other.FahrenheitDays) < Tolerances.Heat;
        });
}
