using TrialKit.Emergence;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

/// <summary>A spot that was visited once, as all are on the first evening.</summary>
public class OneVisitTests
{
    [Fact]
    public void Of_SpotVisitedOnce_IsLeftOutOfTiming()
    {
        var trial = Trial(SmallTrial.Spot(SmallTrial.First, "A", 20, (5, 0), (7, 12)), SmallTrial.Spot(SmallTrial.First, "B", 20, (5, 0)), SmallTrial.Spot(SmallTrial.Second, "A", 20, (5, 0)));

        var strip = Assert.Single(EmergenceTiming.Of(trial));

        Assert.Equal(["A"], strip.Spots);
        Assert.Equal(20, strip.SeedsSown);
        Assert.True(trial.HasResults);
    }

    [Fact]
    public void HasResults_FirstVisitOnly_IsFalseAndTheTrialIsInUse()
    {
        var trial = Trial(SmallTrial.Spot(SmallTrial.First, "A", 20, (5, 0)));

        Assert.False(trial.HasResults);
        Assert.False(trial.IsPlan);
        Assert.Empty(EmergenceTiming.Of(trial));
        Assert.Empty(PlantEvenness.Of(trial));
    }

    [Theory]
    [InlineData("d", PlantFate.Double)]
    [InlineData(" V ", PlantFate.Volunteer)]
    [InlineData("x", PlantFate.Died)]
    [InlineData("k", PlantFate.Ordinary)]
    [InlineData("by the road", PlantFate.Ordinary)]
    public void Read_LettersOfTheSheet_AreTheirWords(string note, PlantFate fate)
    {
        using var folder = Ingest.TrialFolder.Sound().Write("plants.csv", $"strip,spot,plant,position_in,note\nA1,1,1,3.0,{note}\n");

        Assert.Equal(fate, folder.Read().Trial!.Plants.Single().Fate);
    }

    private static StripTrial Trial(params EmergenceSpot[] spots) => StripTrial.Create(SmallTrial.Draft with { Emergence = [.. spots] });
}
