using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Tests.Words;

/// <summary>What the first page says of the comparisons that it leaves out.</summary>
public class PageWordsTests
{
    private static readonly Treatment Chains = new("chains", "Drag chains", Cost: null, Products: []);
    private static readonly Treatment None = new("none", "No chains", Cost: null, Products: []);

    [Theory]
    [InlineData(0, 1, 0, "One more comparison was made; no difference was shown. It stands under Every comparison.")]
    [InlineData(1, 0, 0, "One more comparison was made; a difference was shown. It stands under Every comparison.")]
    [InlineData(0, 0, 1, "One more comparison could not be tested. It stands under Every comparison.")]
    [InlineData(0, 3, 0, "Three more comparisons were made and none of them was shown; all stand under Every comparison.")]
    [InlineData(1, 2, 0, "Three more comparisons were made and one of them was shown; all stand under Every comparison.")]
    [InlineData(2, 1, 1, "Three more comparisons were made and two of them were shown, and one more could not be tested; all stand under Every comparison.")]
    [InlineData(0, 1, 2, "One more comparison was made; no difference was shown, and two more could not be tested; all stand under Every comparison.")]
    [InlineData(0, 0, 3, "Three more comparisons could not be tested; all stand under Every comparison.")]
    public void Others_ShownNotShownAndUntested_AreToldApart(int shown, int notShown, int untested, string text) => Assert.Equal(
        text,
        PageWords.Others([.. Enumerable.Repeat(Contrast(0.01), shown), .. Enumerable.Repeat(Contrast(0.5), notShown), .. Enumerable.Repeat(Contrast(null), untested)]));

    private static Contrast Contrast(double? p) =>
        new(Chains, None, 1, Estimate: null, p is { } known ? Probability.Of(known) : null, Interval: null, Detectable: null, default, new Method("a test", "a source", "a page"));
}
