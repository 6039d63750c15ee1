using System.Globalization;
using TrialKit.Heat;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Heat;

public class DegreeDaysTests
{
    private static readonly HeatMethod CelsiusBaseTen =
        new("base 10 C", HeatRule.ExtremesClipped, Temperature.FromDegreesCelsius(10), Upper: null, "test");

    [Theory]
    [InlineData("Purdue University", 80, 55, 17.5)]
    [InlineData("extension column", 90, 65, 25.5)]
    [InlineData("extension column", 72, 46, 11)]
    [InlineData("extension column", 63, 42, 6.5)]
    [InlineData("computed from the formula, no published value", 90, 55, 20.5)]
    [InlineData("computed from the formula, no published value", 90, 88, 36)]
    [InlineData("computed from the formula, no published value", 45, 30, 0)]
    public void Of_CornDay_AgreesWithSource(string source, double maximum, double minimum, double expected)
    {
        var heat = DegreeDays.Of(Fahrenheit(maximum, minimum), HeatMethods.Corn);

        Assert.True(heat.FahrenheitDays == expected, string.Create(CultureInfo.InvariantCulture, $"{maximum}/{minimum} F, {source}: {heat.FahrenheitDays} for {expected}"));
    }

    [Theory]
    [InlineData(HeatRule.SimpleAverage, 0, 7, -5, 1.0)]
    [InlineData(HeatRule.ExtremesClipped, 0, 7, -5, 3.5)]
    [InlineData(HeatRule.SimpleAverage, 10, 25, 5, 5.0)]
    [InlineData(HeatRule.ExtremesClipped, 10, 25, 5, 7.5)]
    [InlineData(HeatRule.SimpleAverage, 10, 5, -5, 0)]
    public void Of_CelsiusDay_AgreesWithFormula(HeatRule rule, double lower, double maximum, double minimum, double expected)
    {
        // Computed from the formulas of McMaster and Wilhelm 1997; no published value.
        var method = new HeatMethod("test", rule, Temperature.FromDegreesCelsius(lower), Upper: null, "test");

        var heat = DegreeDays.Of(Celsius(maximum, minimum), method);

        Assert.Equal(expected, heat.CelsiusDays, Tolerances.Heat);
    }

    [Fact]
    public void Of_RecordInCelsius_MeetsFahrenheitThresholdsExactly()
    {
        Assert.Equal(36, DegreeDays.Of(Celsius(30, 30), HeatMethods.Corn).FahrenheitDays);
        Assert.Equal(0, DegreeDays.Of(Celsius(10, 10), HeatMethods.Corn).FahrenheitDays);
    }

    [Fact]
    public void Of_StationDay_AgreesWithHandComputation()
    {
        // ACW00011604, 1 January 1949 (GHCN-Daily): 28.9/21.7 C is 15.3 C-days above 10 C.
        var heat = DegreeDays.Of(Celsius(28.9, 21.7), CelsiusBaseTen);

        Assert.Equal(27.54, heat.FahrenheitDays, Tolerances.Heat);
    }

    [Theory]
    [InlineData(double.NaN, 50)]
    [InlineData(80, double.NaN)]
    [InlineData(double.PositiveInfinity, 50)]
    [InlineData(50, 51)]
    public void Of_ImpossibleDay_IsRefused(double maximum, double minimum) =>
        Assert.ThrowsAny<ArgumentException>(() => DegreeDays.Of(Fahrenheit(maximum, minimum), HeatMethods.Corn));

    [Fact]
    public void Of_ThresholdsUpsideDown_IsRefused()
    {
        var method = HeatMethods.ExtremesClipped("upside down", 86, 50, "test");

        Assert.Throws<ArgumentException>(() => DegreeDays.Of(Fahrenheit(80, 60), method));
    }

    private static DailyTemperature Fahrenheit(double maximum, double minimum) =>
        new(new(2026, 5, 1), Temperature.FromDegreesFahrenheit(maximum), Temperature.FromDegreesFahrenheit(minimum));

    private static DailyTemperature Celsius(double maximum, double minimum) =>
        new(new(2026, 5, 1), Temperature.FromDegreesCelsius(maximum), Temperature.FromDegreesCelsius(minimum));
}
