using TrialKit.Comparison;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Tests.Comparison;

public class LayoutFindingsTests
{
    // Two treatments: one order in all of k blocks comes up by chance once in 2^(k-1) layouts.
    [Theory]
    [InlineData(2, null)]
    [InlineData(3, FindingWeight.Caution)]
    [InlineData(6, FindingWeight.Serious)]
    public void Of_SameOrderInEveryBlock_WeighsByItsChance(int blocks, FindingWeight? weight) =>
        Assert.Equal(weight, Find(Trial(blocks, swapped: 0), "same-order")?.Weight);

    [Fact]
    public void Of_SameOrderInManyBlocks_NeverGivesAChanceOfNought() =>
        Assert.Contains("a chance under 0.01 %", Find(Trial(20, swapped: 0), "same-order")!.Message, StringComparison.Ordinal);

    [Fact]
    public void Of_OneBlockTheOtherWayRound_IsNoFinding() => Assert.Null(Find(Trial(6, swapped: 1), "same-order"));

    [Fact]
    public void Of_SameOrderBesideABrokenBlock_IsStillFound()
    {
        var draft = Draft(6, swapped: 0);
        Assert.NotNull(Find(StripTrial.Create(draft with { Strips = draft.Strips.RemoveAt(11) }), "same-order"));
    }

    [Fact]
    public void Of_TreatmentPlantedOnAnotherDayInABlock_IsSerious()
    {
        var draft = Draft(6, swapped: 2);
        var later = draft.Strips.Select(strip => strip.Treatment == SmallTrial.Other ? strip with { Planted = strip.Planted.AddDays(2) } : strip);
        var finding = Find(StripTrial.Create(draft with { Strips = [.. later] }), "planted-apart");

        Assert.Equal(FindingWeight.Serious, finding?.Weight);
        Assert.Null(Find(StripTrial.Create(draft), "planted-apart"));
    }

    [Fact]
    public void Of_WholeBlockPlantedOnAnotherDay_IsNoFinding()
    {
        var draft = Draft(4, swapped: 2);
        var later = draft.Strips.Select(strip => strip.Block == "2" ? strip with { Planted = strip.Planted.AddDays(2) } : strip);
        Assert.Null(Find(StripTrial.Create(draft with { Strips = [.. later] }), "planted-apart"));
    }

    [Fact]
    public void Of_PlaceNotRecorded_SaysThatTheOrderCannotBeSeen()
    {
        var draft = Draft(4, swapped: 0);
        Assert.NotNull(Find(StripTrial.Create(draft with { Strips = [.. draft.Strips.Select(strip => strip with { Order = null })] }), "order-not-recorded"));
    }

    private static Finding? Find(StripTrial trial, string id) => LayoutFindings.Of(trial).SingleOrDefault(finding => finding.Id == id);

    private static StripTrial Trial(int blocks, int swapped) => StripTrial.Create(Draft(blocks, swapped));

    private static TrialDraft Draft(int blocks, int swapped) => SmallTrial.Draft with
    {
        Strips = [.. Enumerable.Range(0, blocks).SelectMany(block =>
        {
            Treatment[] order = block < swapped ? [SmallTrial.Other, SmallTrial.Control] : [SmallTrial.Control, SmallTrial.Other];
            return order.Select((treatment, place) => SmallTrial.Strip($"S{block}-{place}", treatment, (2 * block) + place + 1) with { Block = $"{block + 1}" });
        })],
    };
}
