using CsCheck;
using TrialKit.Heat;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Heat;

/// <summary>Every method by its name. Values computed from the formulas of the sources that the methods name; no published value unless said.</summary>
public class HeatMethodTests
{
    private static readonly DateOnly MayFirst = new(2012, 5, 1);

    [Theory]
    [InlineData("single sine 86/50 none", 40, 48, 0)]
    [InlineData("single triangle 86/50 vertical", 55, 80, 17.5)]
    [InlineData("single sine 86/50 none", 88, 92, 40)]
    [InlineData("single sine 86/50 horizontal", 88, 92, 36)]
    [InlineData("single triangle 86/50 intermediate", 88, 92, 32)]
    [InlineData("single triangle 86/50 vertical", 88, 92, 0)]
    [InlineData("single sine 86/50 horizontal", 40, 70, 7.5424)]
    [InlineData("single triangle 86/50 horizontal", 40, 70, 6.6667)]
    [InlineData("single sine 86/50 none", 60, 95, 27.5)]
    [InlineData("single sine 86/50 horizontal", 60, 95, 25.5086)]
    [InlineData("single sine 86/50 intermediate", 60, 95, 23.5171)]
    [InlineData("single sine 86/50 vertical", 60, 95, 13.3204)]
    [InlineData("single triangle 86/50 horizontal", 60, 95, 26.3429)]
    [InlineData("single triangle 86/50 intermediate", 60, 95, 25.1857)]
    [InlineData("single triangle 86/50 vertical", 60, 95, 17.0857)]
    [InlineData("single sine 86/50 none", 40, 95, 19.3447)]
    [InlineData("single sine 86/50 horizontal", 40, 95, 17.7728)]
    [InlineData("single sine 86/50 intermediate", 40, 95, 16.2010)]
    [InlineData("single sine 86/50 vertical", 40, 95, 8.2284)]
    [InlineData("single triangle 86/50 none", 40, 95, 18.4091)]
    [InlineData("single triangle 86/50 vertical", 40, 95, 11.7818)]
    [InlineData("mean clipped 86/50", 88, 92, 36)]
    [InlineData("extremes clipped 86/50", 88, 90, 36)]
    [InlineData("simple average 50", 55, 80, 17.5)]
    public void Of_NamedMethod_AgreesWithItsFormula(string name, double minimum, double maximum, double expected) =>
        Assert.Equal(expected, DegreeDays.Of(Day(minimum, maximum), Method(name)).FahrenheitDays, Tolerances.PrintedToFourDecimals);

    [Theory]
    [InlineData("double sine 86/50 none", 23.4224)]
    [InlineData("double sine 86/50 horizontal", 21.6407)]
    [InlineData("double sine 86/50 intermediate", 19.8590)]
    [InlineData("double sine 86/50 vertical", 10.7744)]
    [InlineData("double triangle 86/50 none", 22.9545)]
    [InlineData("double triangle 86/50 horizontal", 22.0078)]
    [InlineData("double triangle 86/50 intermediate", 21.0610)]
    [InlineData("double triangle 86/50 vertical", 14.4338)]
    public void Of_DoubleForm_UsesTheNextMinimum(string name, double expected)
    {
        var (day, next) = (Day(40, 95), Day(60, 90) with { Date = MayFirst.AddDays(1) });

        Assert.Equal(expected, DegreeDays.Of(day, next, Method(name)).FahrenheitDays, Tolerances.PrintedToFourDecimals);
        Assert.Throws<ArgumentException>(() => DegreeDays.Of(day, next with { Date = MayFirst.AddDays(2) }, Method(name)));
    }

    // McMaster and Wilhelm's two methods differ when the minimum is below the base.
    [Theory]
    [InlineData("mean clipped 30/10 C", 5.0)]
    [InlineData("extremes clipped 30/10 C", 7.5)]
    public void Of_CelsiusThresholds_AreRead(string name, double expected) =>
        Assert.Equal(expected, DegreeDays.Of(new(MayFirst, Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(5)), Method(name)).CelsiusDays, Tolerances.Heat);

    [Theory]
    [InlineData("corn 86/50", 222.30)]
    [InlineData("mean clipped 86/50", 172.35)]
    [InlineData("single sine 86/50 horizontal", 196.3816)]
    [InlineData("single triangle 86/50 horizontal", 187.9442)]
    public void Tally_SeattleMay_AgreesWithTheFormulas(string name, double expected)
    {
        var tally = HeatTally.Of(Weather.May(), Method(name), MayFirst, new DateOnly(2012, 5, 31));

        Assert.True(tally.IsComplete);
        Assert.Equal(expected, tally.Total, Tolerances.PrintedToFourDecimals);
    }

    [Fact]
    public void Tally_SeattleMayInCropHeatUnits_AgreesWithTheFormula() =>
        Assert.Equal(401.944, HeatTally.Of(Weather.May(), HeatMethods.CropHeatUnits, MayFirst, new DateOnly(2012, 5, 31)).Total, Tolerances.PrintedToThreeDecimals);

    [Theory]
    [InlineData(10, 25, 20.565, 20.565)]
    [InlineData(18, 32, 28.542, 28.542)]
    [InlineData(-2, 15, 7.275, 1.515)]
    public void Tally_CropHeatUnits_AgreeWithTheFormula(double minimum, double maximum, double floored, double raw)
    {
        var series = TemperatureSeries.Of("test", [new(MayFirst, Temperature.FromDegreesCelsius(maximum), Temperature.FromDegreesCelsius(minimum))]);

        Assert.Equal(floored, HeatTally.Of(series, HeatMethods.CropHeatUnits, MayFirst, MayFirst).Total, Tolerances.Heat);
        Assert.Equal(raw, HeatTally.Of(series, HeatMethods.CropHeatUnitsUnfloored, MayFirst, MayFirst).Total, Tolerances.Heat);
        Assert.Throws<ArgumentException>(() => HeatClock.Start(series, HeatMethods.CropHeatUnits, MayFirst, countPlantingDay: true));
    }

    [Fact]
    public void Tally_MissingAndFilledDays_AreToldApartFromZero()
    {
        var gappy = TemperatureSeries.Of("test", Weather.May().Days.RemoveRange(10, 2));
        var last = new DateOnly(2012, 5, 31);

        var tally = HeatTally.Of(gappy, HeatMethods.Corn, MayFirst, last);
        var filled = HeatTally.Of(gappy.FillGaps(3), HeatMethods.Corn, MayFirst, last);

        Assert.False(tally.IsComplete);
        Assert.Equal([new DateOnly(2012, 5, 11), new DateOnly(2012, 5, 12)], tally.Missing);
        Assert.True(tally.Days[9].IsComplete);
        Assert.Equal(tally.Days[9].Sum, tally.Days[11].Sum);
        Assert.True(filled.IsComplete);
        Assert.Equal(2, filled.Days.Count(day => day.IsFilled));
        Assert.Throws<ArgumentOutOfRangeException>(() => gappy.FillGaps(4));
    }

    // 12 h at 60 F and 12 h at 90 F.
    [Fact]
    public void Tally_Hours_AgreesWithTheFormulaAndTheClockFollowsThem()
    {
        var hours = Enumerable.Range(0, 24).Select(hour => Temperature.FromDegreesFahrenheit(hour < 12 ? 60 : 90));
        var series = TemperatureSeries.Of("test", [Day(60, 90)]).WithHours([new(MayFirst, [.. hours])]);
        var clock = HeatClock.Start(series, Method("hourly 86/50"), MayFirst, countPlantingDay: true);

        Assert.Equal(23, HeatTally.Of(series, Method("hourly 86/50"), MayFirst, MayFirst).Total, Tolerances.Heat);
        Assert.Equal(5, clock.HeatAt(0.5)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(14, clock.HeatAt(0.75)!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Equal(0.75, clock.DaysAt(HeatSum.FromFahrenheitDays(14))!.Value, Tolerances.Heat);
        Assert.False(HeatTally.Of(TemperatureSeries.Of("test", [Day(60, 90)]), Method("hourly 86/50"), MayFirst, MayFirst).IsComplete);
    }

    [Fact]
    public void Tally_DoubleFormOnTheLastDay_SaysItWasCountedSingly()
    {
        var tally = HeatTally.Of(Weather.May(), Method("double sine 86/50"), MayFirst, new DateOnly(2012, 5, 31));

        Assert.Equal([new DateOnly(2012, 5, 31)], tally.BySingle);
    }

    [Fact]
    public void Clock_MethodWithACurve_MapsHeatAndTimeBackAndForth() =>
        Gen.Select(Gen.Double[0.01, 30.99], One("single sine 60/45 horizontal", "double sine 60/45 vertical", "single triangle 60/45 intermediate", "double triangle 60/45 none")).Sample(
            (moment, name) =>
            {
                var clock = HeatClock.Start(Weather.May(), Method(name), MayFirst, countPlantingDay: true);
                var heat = clock.HeatAt(moment)!.Value;
                var back = clock.DaysAt(heat)!.Value;
                return back <= moment + Tolerances.Heat && Math.Abs(clock.HeatAt(back)!.Value.FahrenheitDays - heat.FahrenheitDays) < Tolerances.Heat;
            },
            iter: 300);

    [Fact]
    public void Of_CutOffs_StandInOrderAndScaleWithTheUnit() =>
        Gen.Select(Gen.Double[-10, 45], Gen.Double[0, 30], One("single sine", "double triangle")).Sample(
            (minimum, range, rule) =>
            {
                var celsius = new DailyTemperature(MayFirst, Temperature.FromDegreesCelsius(minimum + range), Temperature.FromDegreesCelsius(minimum));
                var fahrenheit = Day((minimum * 1.8) + 32, ((minimum + range) * 1.8) + 32);
                double By(string cutOff) => DegreeDays.Of(celsius, Method($"{rule} 30/10 C {cutOff}")).CelsiusDays;
                var (none, horizontal, intermediate, vertical) = (By("none"), By("horizontal"), By("intermediate"), By("vertical"));
                return none >= horizontal - Tolerances.Heat && horizontal >= intermediate - Tolerances.Heat && intermediate >= 0 && vertical >= 0
                    && (minimum + range > 30 || Math.Abs(none - horizontal) < Tolerances.Heat)
                    && Math.Abs(DegreeDays.Of(fahrenheit, Method($"{rule} 86/50 horizontal")).FahrenheitDays - (1.8 * horizontal)) < Tolerances.Heat;
            },
            iter: 1000);

    [Theory]
    [InlineData("Single  Sine 86/50 Horizontal", "single sine 86/50 horizontal")]
    [InlineData("single sine 86/50", "single sine 86/50 horizontal")]
    [InlineData(" double triangle 30/10 C vertical ", "double triangle 30/10 C vertical")]
    [InlineData("single sine 41", "single sine 41")]
    [InlineData("simple average 40", "simple average 40")]
    [InlineData("cotton DD60", "cotton DD60")]
    [InlineData("crop heat units unfloored", "crop heat units unfloored")]
    public void Find_Name_GivesTheMethodUnderItsOwnName(string name, string expected) => Assert.Equal(expected, Method(name).Name);

    [Theory]
    [InlineData("single sine 50/86")]
    [InlineData("simple average 86/50")]
    [InlineData("mean clipped 86/50 vertical")]
    [InlineData("single sine 50 vertical")]
    [InlineData("single cosine 86/50")]
    [InlineData("")]
    public void Find_NameThatMeansNothing_IsNone(string name) => Assert.Null(HeatMethods.Find(name));

    [Fact]
    public void SideBySide_Methods_AreDistinctAndSourced() =>
        Assert.All(HeatMethods.SideBySide.GroupBy(method => method.Name), group => Assert.NotEmpty(Assert.Single(group).Source));

    private static Gen<string> One(params string[] names) => Gen.Int[0, names.Length - 1].Select(index => names[index]);

    private static HeatMethod Method(string name) => HeatMethods.Find(name) ?? throw new ArgumentException($"'{name}' names no method.", nameof(name));

    private static DailyTemperature Day(double minimum, double maximum) => new(MayFirst, Temperature.FromDegreesFahrenheit(maximum), Temperature.FromDegreesFahrenheit(minimum));
}
