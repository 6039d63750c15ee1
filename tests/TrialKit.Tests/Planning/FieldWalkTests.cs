using TrialKit.Planning;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Planning;

public class FieldWalkTests
{
    [Fact]
    public void Stops_DrawnSpots_GoUpOneStripAndDownTheNext()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Strips = [SmallTrial.Second, SmallTrial.First],
            PlannedSpots = [Spot(SmallTrial.First, "B", 200), Spot(SmallTrial.First, "A", 100), Spot(SmallTrial.Second, "A", 150), Spot(SmallTrial.Second, "B", 300)],
        });

        Assert.Equal(["S1 A", "S1 B", "S2 B", "S2 A"], FieldWalk.Stops(trial).Select(stop => $"{stop.Strip} {stop.Spot}"));
    }

    [Fact]
    public void Stops_NoDrawnSpots_AreThoseCountedBefore()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with { StandCounts = [SmallTrial.Count(SmallTrial.First, "east", 30), SmallTrial.Count(SmallTrial.First, "west", 31)] });

        Assert.Equal(["S1 east", "S1 west", "S2 A"], FieldWalk.Stops(trial).Select(stop => $"{stop.Strip} {stop.Spot}"));
    }

    [Fact]
    public void Stops_VisitsAndCountsOfOtherLengths_KeepEachTheirOwn()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            StandCounts = [SmallTrial.Count(SmallTrial.First, "1", 60) with { Rows = 2 }],
            Emergence = [SmallTrial.Spot(SmallTrial.First, "A", 20, (5, 0), (7, 12)) with { Row = Length.FromFeet(6) }],
        });

        var stop = FieldWalk.Stops(trial).Single(each => each.Strip == SmallTrial.First && each.Spot == "A");

        Assert.Equal(SmallTrial.ThousandthAcre.Feet, stop.Row.Feet, Tolerances.ClosedForm);
        Assert.Equal(2, stop.Rows);
        Assert.Equal(6, stop.Watched.Feet, Tolerances.ClosedForm);
    }

    private static PlannedSpot Spot(Strip strip, string name, double feet) => new(strip, name, Length.FromFeet(feet), PlanterRow: 3, SmallTrial.ThousandthAcre);
}
