using TrialKit.Stand;
using TrialKit.Trials;

namespace TrialKit.Tests.Stand;

public class StripGapsTests
{
    [Fact]
    public void Gaps_SpotsOfAStrip_AreThoseBetweenNeighboursWithinSpots()
    {
        var trial = StripTrial.Create(SmallTrial.Draft with
        {
            Plants =
            [
                SmallTrial.Plant(SmallTrial.First, "A", "1", 0),
                SmallTrial.Plant(SmallTrial.First, "A", "2", 7),
                SmallTrial.Plant(SmallTrial.First, "A", "3", 11),
                SmallTrial.Plant(SmallTrial.First, "A", "4", 9, fate: PlantFate.Volunteer),
                SmallTrial.Plant(SmallTrial.First, "B", "1", 50),
                SmallTrial.Plant(SmallTrial.First, "B", "2", 56),
                SmallTrial.Plant(SmallTrial.Second, "A", "1", 3),
            ],
        });
        var gaps = InRowSpacing.Gaps(trial);

        Assert.Equal(["S1", "S2"], gaps.Select(strip => strip.Strip.Name));
        Assert.Equal([4.0, 6.0, 7.0], gaps[0].Gaps.Select(gap => Math.Round(gap.Inches, 9)));
        Assert.Empty(gaps[1].Gaps);
        Assert.Equal(InRowSpacing.Of(trial)[0].Gaps, gaps[0].Gaps.Length);
    }
}
