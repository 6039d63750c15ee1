using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>The one place where a comparison becomes a sentence that can be read aloud.</summary>
/// <remarks>Treatment against control; the difference before the level, its interval beside it; a large p is never told as sameness.</remarks>
public static class VerdictSentence
{
    /// <summary>The sentence of one comparison.</summary>
    /// <param name="measure">What was compared.</param>
    /// <param name="contrast">How.</param>
    /// <param name="replicates">What a replicate is called, such as <c>pairs</c>.</param>
    public static string Of(Measure measure, Contrast contrast, string replicates)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(contrast);
        var words = MeasureWords.Of(measure);
        if (contrast.Interval is not { } interval)
        {
            var plain = AmountText.For(measure, Math.Abs(contrast.Difference));
            return $"{words.Opening} {plain.Directed(contrast.Difference, words)}; these strips give no measure of how sure that is.";
        }

        var text = AmountText.For(measure, new[] { contrast.Difference, interval.Low, interval.High }.Max(Math.Abs));
        return contrast.Verdict == Verdict.Shown
            ? $"{words.Opening} {text.Directed(contrast.Difference, words)} ({text.Range(interval.Low, interval.High, words)})."
            : $"No difference in {words.Noun} was shown: {text.Directed(contrast.Difference, words)}, but anything from {text.Range(interval.Low, interval.High, words)} fits these strips." + Detectable(contrast, text, replicates);
    }

    private static string Detectable(Contrast contrast, AmountText text, string replicates) =>
        contrast is { Detectable: { } detectable, Estimate: { } estimate }
            ? $" {NumberText.CountWord(estimate.Replicates)} {replicates} like these would usually show a difference of {text.Size(detectable)}."
            : "";
}
