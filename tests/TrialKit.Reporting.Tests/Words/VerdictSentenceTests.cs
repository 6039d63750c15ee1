using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
using TrialKit.Quantities;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Tests.Words;

/// <summary>What may be said of a comparison, and what may not.</summary>
public class VerdictSentenceTests
{
    private static readonly Measure Yield = new("yield", "Yield", Unit.BushelsPerAcre, MeasureKind.Yield, Better.Higher, IsHeadline: true);
    private static readonly Method Any = new("a test", "a source", "a page");
    private static readonly Treatment Chains = new("chains", "Drag chains", Cost: null, Products: []);
    private static readonly Treatment None = new("none", "No chains", Cost: null, Products: []);

    [Fact]
    public void Of_NotShown_NamesWhatFitsAndWhatCouldHaveBeenSeen() => Assert.Equal(
        "No difference in yield was shown: 1.8\u00A0bushels an acre higher, but anything from 1.0 lower to 4.6 higher fits these strips. Six pairs like these would usually show a difference of 4.1.",
        VerdictSentence.Of(Yield, Contrast(1.8, 1.4, p: 0.28, margin: null), "pairs"));

    [Fact]
    public void Of_NotTestedAndAlike_SaysThatTheDifferenceWasNextToNone()
    {
        // All plants of every strip were up within 48 hours: there is no spread, and the share itself was anything but next to none.
        var early = new Measure("up-48h", "Up within 48 h of first", Unit.Percent, MeasureKind.Share, Better.Higher, IsHeadline: true);

        Assert.Equal(
            "Not tested, since these strips give no measure of how sure it is: the difference in the share up within 48 hours of the first was next to none.",
            VerdictSentence.Of(early, new(Chains, None, 0, Estimate: null, P: null, Interval: null, Detectable: null, default, Any), "pairs"));
    }

    [Fact]
    public void Of_ShareOnTooFewStrips_SaysNothingThatNoShareCanDifferBy()
    {
        var early = new Measure("up-48h", "Up within 48 h of first", Unit.Percent, MeasureKind.Share, Better.Higher, IsHeadline: true);
        var estimate = new TEstimate(3.8, 20.8, 1, 2, Unit.Percent, Any);

        Assert.Equal(
            "On two pairs only, which is little: no difference in the share up within 48 hours of the first was shown: 3.8\u00A0percentage points more, but anything from 100.0 fewer to 100.0 more fits these strips. Two pairs like these could not be counted on to show any difference there can be.",
            VerdictSentence.Of(early, new(Chains, None, 3.8, estimate, Probability.Of(0.88), estimate.IntervalAt(default), 180, default, Any), "pairs"));
    }

    [Fact]
    public void Of_Equivalent_NamesTheMarginAndThatItWasSetBeforehand() => Assert.Equal(
        "The two are equivalent in yield within 5.0\u00A0bushels an acre, the margin set beforehand: 1.8\u00A0bushels an acre higher, and the whole 80 % interval of this test, 0.3 lower to 3.9 higher, lies within the margin.",
        VerdictSentence.Of(Yield, Contrast(1.8, 1.4, p: 0.28, margin: (5, 0.04)), "pairs"));

    [Fact]
    public void Of_MarginNotReached_SaysNothingOfEquivalence()
    {
        var sentence = VerdictSentence.Of(Yield, Contrast(1.8, 1.4, p: 0.28, margin: (2, 0.4)), "pairs");

        Assert.DoesNotContain("equivalent", sentence, StringComparison.Ordinal);
        Assert.StartsWith("No difference in yield was shown", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ShownWithinTheMargin_SaysBoth() => Assert.Equal(
        "Yield was 1.8\u00A0bushels an acre higher (1.1 to 2.5). It is smaller than 5.0\u00A0bushels an acre, the margin set beforehand.",
        VerdictSentence.Of(Yield, Contrast(1.8, 0.35, p: 0.003, margin: (5, 0.001)), "pairs"));

    [Fact]
    public void Of_IntervalThatAllButTouchesZero_GivesItsNearEndFiguresAndNoOther() => Assert.Equal(
        "Yield was 0.6\u00A0bushels an acre lower (0.0005 to 1.2).",
        VerdictSentence.Of(Yield, Contrast(-0.6159, 0.6154 / 2.015048373333024, p: 0.0996, margin: null), "pairs"));

    [Fact]
    public void Of_VeryLargeNumbers_AreToldToThreeFigures()
    {
        var crust = new Measure("own-crust", "crust", new Unit("kPa"), MeasureKind.Other, Better.Unsaid, IsHeadline: true);

        Assert.StartsWith("No difference in crust was shown: 12,300\u00A0kPa lower", VerdictSentence.Of(crust, Contrast(-12345, 9876, p: 0.3, margin: null), "pairs"), StringComparison.Ordinal);
        Assert.StartsWith("No difference in crust was shown: 2.6E+12\u00A0kPa lower", VerdictSentence.Of(crust, Contrast(-2600586089545, 9e11, p: 0.3, margin: null), "pairs"), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PooledShown_GivesTheMeanAndWhatAnotherSiteWouldShow() => Assert.Equal(
        "Yield was 2.0\u00A0bushels an acre higher over four sites (0.8 to 3.2). At another site like these anything from 1.0 lower to 5.0 higher is to be expected.",
        VerdictSentence.Of(Pooled(2, 0.51, 4, new(-1, 5, default))));

    [Fact]
    public void Of_PooledNotShown_SaysWhatFits() => Assert.Equal(
        "No difference in yield was shown over four sites: 2.0\u00A0bushels an acre higher, but anything from 0.4 lower to 4.4 higher fits them. At another site like these anything from 3.0 lower to 7.0 higher is to be expected.",
        VerdictSentence.Of(Pooled(2, 1.02, 4, new(-3, 7, default))));

    private static Contrast Contrast(double difference, double error, double p, (double Margin, double P)? margin)
    {
        var estimate = new TEstimate(difference, error, 5, 6, Unit.BushelsPerAcre, Any);
        return new(Chains, None, difference, estimate, Probability.Of(p), estimate.IntervalAt(default), 4.1, default, Any)
        {
            Equivalence = margin is { } known ? new(known.Margin, Probability.Of(known.P), default, default, Any) { Interval = estimate.IntervalAt(ConfidenceLevel.FromAlpha(0.2)) } : null,
        };
    }

    private static PooledComparison Pooled(double difference, double error, int sites, Interval prediction)
    {
        var estimate = new PooledEstimate(new(difference, error, sites - 1, sites, Unit.BushelsPerAcre, Any), 1, ErrorWasRaised: false, prediction);
        return new(
            Yield,
            new(Chains, None),
            [.. Enumerable.Range(1, sites).Select(site => new SiteEstimate($"site {site}", estimate.Estimate, 1.0 / sites))],
            estimate with { Prediction = null },
            estimate,
            estimate,
            new(1, sites - 1, DenominatorDegrees: null, Probability.Of(0.5), Any),
            0,
            Mixed: null,
            default,
            []);
    }
}
