using System.Collections.Immutable;
using TrialKit.Stand;
using TrialKit.Trials;

namespace TrialKit.Tests.Stand;

public class SeedDepthTests
{
    private static readonly double[] Depths = [1.75, 2.0, 1.9, 2.1, 1.5, 2.25, 1.8, 2.0, 1.6, 2.1];

    [Fact]
    public void Of_TenDepths_AgreesWithFormula()
    {
        // Computed from the formulas, no published value.
        var depth = Assert.Single(Of([.. Depths.Select((inches, i) => SmallTrial.Plant(SmallTrial.First, "a", $"{i}", inches: null, inches))]));

        Assert.Equal(10, depth.Plants);
        Assert.Equal(1.90, depth.Mean.Inches, Tolerances.ClosedForm);
        Assert.Equal(0.236878, depth.StandardDeviation!.Value.Inches, Tolerances.PrintedToSixDecimals);
        Assert.Equal(12.467, depth.CoefficientOfVariation!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(-0.10, depth.Bias!.Value.Inches, Tolerances.ClosedForm);
        Assert.Equal(80, depth.PercentNearTarget!.Value, Tolerances.ClosedForm);
        Assert.Empty(depth.Findings);
    }

    [Fact]
    public void Of_CornMesocotyls_AddsTheCrown()
    {
        // Ohio State University Extension: a mesocotyl of 1.25 in is a depth of 2.00 in.
        var depth = Assert.Single(Of([SmallTrial.Plant(SmallTrial.First, "a", "1", inches: null, depth: null, mesocotyl: 1.25)]));

        Assert.Equal(2.00, depth.Mean.Inches, Tolerances.ClosedForm);
        Assert.Null(depth.StandardDeviation);
        Assert.Equal(["depth-from-mesocotyl"], depth.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_SoybeanMesocotyls_AreNotUsed()
    {
        var draft = SmallTrial.Draft with
        {
            Crop = CropTable.Find("soybean")!,
            Plants = [SmallTrial.Plant(SmallTrial.First, "a", "1", inches: null, depth: null, mesocotyl: 1.25)],
        };

        Assert.Empty(SeedDepth.Of(StripTrial.Create(draft)));
    }

    [Fact]
    public void Of_Volunteer_IsLeftOut()
    {
        var depth = Assert.Single(Of(
        [
            SmallTrial.Plant(SmallTrial.First, "a", "1", inches: null, 2),
            SmallTrial.Plant(SmallTrial.First, "a", "2", inches: null, 5, fate: PlantFate.Volunteer),
        ]));

        Assert.Equal(2, depth.Mean.Inches, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_NoTarget_HasNeitherBiasNorShare()
    {
        var draft = SmallTrial.Draft with { Plants = [SmallTrial.Plant(SmallTrial.First, "a", "1", inches: null, 2)] };

        var depth = Assert.Single(SeedDepth.Of(StripTrial.Create(draft with { Planting = draft.Planting with { Depth = null } })));

        Assert.Null(depth.Bias);
        Assert.Null(depth.PercentNearTarget);
    }

    private static ImmutableArray<StripDepth> Of(Plant[] plants) =>
        SeedDepth.Of(StripTrial.Create(SmallTrial.Draft with { Plants = [.. plants] }));
}
