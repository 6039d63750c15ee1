using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>The one place where a comparison becomes a sentence that can be read aloud.</summary>
/// <remarks>Treatment against control; the difference before the level, its interval beside it; a large p is never told as sameness.</remarks>
public static class VerdictSentence
{
    private const int FewReplicates = 4;

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
            return $"Not tested, since these strips give no measure of how sure it is: {Lowered(words.Opening)} {plain.Directed(contrast.Difference, words)}.";
        }

        var largest = new[] { contrast.Difference, interval.Low, interval.High }.Max(Math.Abs);
        var text = contrast.Verdict == Verdict.Shown ? AmountText.FineEnough(measure, largest, interval) : AmountText.For(measure, largest);
        var limit = contrast.Estimate is { Replicates: < FewReplicates } few ? $"On {NumberText.CountWord(few.Replicates).ToLowerInvariant()} {replicates} only, which is little: " : "";
        return limit + (contrast.Verdict == Verdict.Shown
            ? $"{Opened(words.Opening, limit)} {text.Directed(contrast.Difference, words)} ({text.Range(interval.Low, interval.High, words)})."
            : $"{Opened("No difference in", limit)} {words.Noun} was shown: {text.Directed(contrast.Difference, words)}, but anything from {text.Range(interval.Low, interval.High, words)} fits these strips." + Detectable(contrast, text, replicates));
    }

    private static string Opened(string opening, string limit) => limit.Length > 0 ? Lowered(opening) : opening;

    private static string Lowered(string opening) => char.ToLowerInvariant(opening[0]) + opening[1..];

    private static string Detectable(Contrast contrast, AmountText text, string replicates) =>
        contrast is { Detectable: { } detectable, Estimate: { } estimate }
            ? $" {NumberText.CountWord(estimate.Replicates)} {replicates} like these would usually show a difference of {text.Size(detectable)}."
            : "";
}
