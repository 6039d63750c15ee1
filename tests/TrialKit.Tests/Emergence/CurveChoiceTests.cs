using System.Collections.Immutable;
using TrialKit.Emergence;
using TrialKit.Numerics.EventTimes;
using TrialKit.Trials;

namespace TrialKit.Tests.Emergence;

public class CurveChoiceTests
{
    // Seeds by daily visit from day 5, and those that never came up.
    private static readonly double[] Days = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14];

    [Theory]
    [InlineData("log-logistic")]
    [InlineData("log-normal")]
    [InlineData("Weibull")]
    public void Of_ManySeedsOfAShape_ChoosesIt(string name)
    {
        var shape = CurveChoice.Shapes.Single(shape => CurveChoice.Name(shape) == name);
        var curve = new EventTimeCurve(shape, 0.9, shape == EventTimeShape.LogNormal ? 0.2 : 8, 9);

        // Expected counts of 4,000 seeds: no draw, so the choice cannot be chance.
        var counts = IntervalCounts.FromVisits(Days, [.. Days.Select((day, i) => 4000 * (curve.Cdf(day) - (i == 0 ? 0 : curve.Cdf(Days[i - 1]))))], 4000 * (1 - curve.Cdf(14)));

        Assert.Equal(name, CurveChoice.Of([Fits(counts)]).Model);
    }

    [Fact]
    public void Of_LittleToTellThemApart_KeepsTheLogLogisticAndSaysSo()
    {
        // Expected counts of 30 seeds of a log-normal curve: it fits better, by less than the margin.
        var curve = new EventTimeCurve(EventTimeShape.LogNormal, 0.9, 0.2, 9);
        var counts = IntervalCounts.FromVisits(Days, [.. Days.Select((day, i) => 30 * (curve.Cdf(day) - (i == 0 ? 0 : curve.Cdf(Days[i - 1]))))], 30 * (1 - curve.Cdf(14)));

        var choice = CurveChoice.Of([Fits(counts)]);

        Assert.Equal("log-logistic", choice.Model);
        Assert.True(choice.Candidates[1].Aic < choice.Candidates[0].Aic);
        Assert.Contains("too little", choice.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ThreeIntervals_CannotTellShapesApart()
    {
        // Three free shares fit three parameters of any shape: the criterion would be the same for all.
        var choice = CurveChoice.Of([Fits(IntervalCounts.FromVisits([8, 11, 14], [10, 22, 3], 5))]);

        Assert.Equal(("log-logistic", 0), (choice.Model, choice.Strips));
        Assert.All(choice.Candidates, candidate => Assert.Null(candidate.Aic));
    }

    [Fact]
    public void Of_SeveralStrips_AddsTheirCriteria()
    {
        var one = Fits(IntervalCounts.FromVisits(Days, [0, 0, 2, 8, 12, 6, 4, 2, 0, 1], 5));

        var (single, twice) = (CurveChoice.Of([one]), CurveChoice.Of([one, one]));

        // -76.366477 of three parameters, computed by another program.
        Assert.Equal(6 + (2 * 76.366477), single.Candidates[0].Aic!.Value, 2 * Tolerances.LogLikelihood);
        Assert.Equal(2 * single.Candidates[2].Aic!.Value, twice.Candidates[2].Aic!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_ShareAtOneUnderOneShapeOnly_CountsTheSameParametersForAll()
    {
        // With the last seeds still to come one shape puts the share at 1 and another below: each estimated it.
        var fits = Fits(IntervalCounts.FromVisits(Days, [0, 0, 2, 8, 12, 6, 4, 2, 1, 1], 0.1));
        Assert.Equal([2, 3], fits.Select(fit => fit.Parameters).Distinct().Order());

        var choice = CurveChoice.Of([fits]);

        Assert.Equal(fits.Select(fit => 6 - (2 * fit.LogLikelihood)), choice.Candidates.Select(candidate => candidate.Aic!.Value), (expected, found) => Math.Abs(expected - found) < Tolerances.ClosedForm);
    }

    [Theory]
    [InlineData(CurveShape.LogNormal, "log-normal")]
    [InlineData(CurveShape.Weibull, "Weibull")]
    public void Of_ShapeSetBeforehand_IsUsedWhateverTheCountsSay(CurveShape set, string name)
    {
        var fits = Fits(IntervalCounts.FromVisits(Days, [0, 0, 2, 8, 12, 6, 4, 2, 0, 1], 5));

        var choice = CurveChoice.Of([fits], set);

        Assert.Equal(name, choice.Model);
        Assert.Equal(CurveChoice.Of([fits]).Candidates, choice.Candidates);
        Assert.Contains("beforehand", choice.Reason, StringComparison.Ordinal);
        Assert.Equal(name, CurveChoice.Of([], set).Model);
    }

    [Fact]
    public void Of_TrialWithAShapeSet_FitsItInEveryStrip()
    {
        var draft = SmallTrial.Draft with { Emergence = [SmallTrial.Spot(SmallTrial.First, "a", 40, (5, 0), (7, 2), (8, 10), (9, 22), (10, 28), (11, 32), (12, 34), (14, 35))] };

        var strip = Assert.Single(EmergenceTiming.Of(StripTrial.Create(draft with { Design = draft.Design with { Curve = CurveShape.Weibull } })));

        Assert.StartsWith("Weibull", strip.Fit.Model, StringComparison.Ordinal);
        Assert.StartsWith("log-logistic", Assert.Single(EmergenceTiming.Of(StripTrial.Create(draft))).Fit.Model, StringComparison.Ordinal);
    }

    private static ImmutableArray<EventTimeFit> Fits(IntervalCounts counts) => [.. CurveChoice.Shapes.Select(shape => EventTimeFit.Fit(counts, shape))];
}
