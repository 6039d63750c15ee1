using TrialKit.Emergence;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

public class LeafStageTests
{
    private static readonly int[] Stages = [3, 3, 3, 2, 3, 1, 3, 3, 2, 3];

    [Fact]
    public void Of_TenPlants_CountsThoseBehindTheMode()
    {
        // Computed from the formula, no published value: mode 3, three behind, one of them by two.
        var strip = Assert.Single(Of(Stages));

        Assert.Equal(30, strip.PercentOneBehind, Tolerances.ClosedForm);
        Assert.Equal(10, strip.PercentTwoBehind, Tolerances.ClosedForm);
        Assert.Equal(0.4, strip.MeanLeavesBehind, Tolerances.ClosedForm);
        Assert.Equal(0.4 * 82, strip.MeanHeatBehind!.Value.FahrenheitDays, Tolerances.Heat);
        Assert.Null(strip.MeanDaysBehind);
    }

    [Fact]
    public void Of_EvenWarmth_GivesDaysByTheHeatOfADay()
    {
        // 20 F-days a day: a leaf takes 4.1 days.
        var strip = Assert.Single(Of(Stages, warmDays: 60));

        Assert.Equal(0.4 * 82 / 20, strip.MeanDaysBehind!.Value, Tolerances.Heat);
    }

    [Fact]
    public void Of_WeatherThatEndsEarly_GivesNoDays() => Assert.Null(Assert.Single(Of(Stages, warmDays: 12)).MeanDaysBehind);

    [Fact]
    public void Of_SoilTemperature_CountsTheDaysByTheAirAllTheSame()
    {
        // The heat of a leaf is published in terms of the air: 20 F-days a day there, 10 in the soil.
        var cool = TemperatureSeries.Of("soil-temperature.csv", [.. SmallTrial.Warm(60).Days.Select(day => day with { Maximum = UnitsNet.Temperature.FromDegreesFahrenheit(60) })]);

        Assert.Equal(0.4 * 82 / 20, Assert.Single(Of(Stages, warmDays: 60, soil: cool)).MeanDaysBehind!.Value, Tolerances.Heat);
        Assert.Null(Assert.Single(Of(Stages, soil: cool)).MeanDaysBehind);
    }

    [Fact]
    public void Of_TwoModes_TakesTheFurther() => Assert.Equal(0.5, Assert.Single(Of([4, 4, 3, 3])).MeanLeavesBehind, Tolerances.ClosedForm);

    [Fact]
    public void Of_PlantAhead_CountsAsNone() => Assert.Equal(0, Assert.Single(Of([3, 3, 5])).MeanLeavesBehind);

    [Fact]
    public void HeatTo_PublishedExample_LiesBetweenEightAndNineCollars()
    {
        // Nielsen, Purdue: emerged at 120, now 785 F-days: 665/82 = 8.1, stage V8.
        Assert.Equal(8.1, 665 / (LeafStage.HeatTo(8).FahrenheitDays / 8), Tolerances.PrintedToOneDecimal);
        Assert.InRange(665, LeafStage.HeatTo(8).FahrenheitDays, LeafStage.HeatTo(9).FahrenheitDays);
    }

    [Fact]
    public void HeatTo_AboveTenCollars_TakesFiftyALeaf() => Assert.Equal(820 + 100, LeafStage.HeatTo(12).FahrenheitDays, Tolerances.Heat);

    private static System.Collections.Immutable.ImmutableArray<StripStage> Of(int[] collars, int warmDays = 0, TemperatureSeries? soil = null)
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (6, 0), (7, 2), (8, 10), (9, 22), (10, 28), (11, 32), (12, 34))],
            Plants = [.. collars.Select((stage, i) => SmallTrial.Plant(SmallTrial.First, "a", FormattableString.Invariant($"{i}"), null) with { Collars = stage })],
            Weather = warmDays > 0 ? SmallTrial.Warm(warmDays) : null,
            SoilTemperature = soil,
        });
        return LeafStage.Of(trial, EmergenceTiming.Of(trial));
    }
}
