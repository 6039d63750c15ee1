using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Tests.Words;

/// <summary>What the first page says of the comparisons that it leaves out.</summary>
public class PageWordsTests
{
    private static readonly Measure Depth = new("depth-sd", "Seed depth, SD", Unit.Inches, MeasureKind.Length, Better.Lower, IsHeadline: false);
    private static readonly Treatment Chains = new("chains", "Drag chains", Cost: null, Products: []);
    private static readonly Treatment None = new("none", "No chains", Cost: null, Products: []);

    [Theory]
    [InlineData(0, 1, 0, "One more comparison, none shown, stands under Every comparison.")]
    [InlineData(0, 0, 1, "One more comparison, none shown and one not tested, stands under Every comparison.")]
    [InlineData(1, 2, 0, "Three more comparisons, one shown, stand under Every comparison.")]
    [InlineData(2, 1, 2, "Five more comparisons, two shown and two not tested, stand under Every comparison.")]
    public void Others_ShownNotShownAndUntested_AreToldApart(int shown, int notShown, int untested, string text) => Assert.Equal(
        text,
        PageWords.Others([(Depth, [.. Enumerable.Repeat(Contrast(0.01), shown), .. Enumerable.Repeat(Contrast(0.5), notShown), .. Enumerable.Repeat(Contrast(null), untested)])], names: false, most: 3));

    private static Contrast Contrast(double? p) =>
        new(Chains, None, 1, Estimate: null, p is { } known ? Probability.Of(known) : null, Interval: null, Detectable: null, default, new Method("a test", "a source", "a page"));
}
