using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
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
            return $"Not tested, since these strips give no measure of how sure it is: {plain.Found(contrast.Difference, words, Lowered(words.Opening))}.";
        }

        var margin = contrast.IsWithinMargin ? contrast.Equivalence!.Margin : 0;
        var largest = new[] { contrast.Difference, interval.Low, interval.High, margin }.Max(Math.Abs);
        var text = contrast.Verdict == Verdict.Shown ? AmountText.FineEnough(measure, largest) : AmountText.For(measure, largest);
        var limit = contrast.Estimate is { Replicates: < FewReplicates } few ? $"On {NumberText.CountWord(few.Replicates).ToLowerInvariant()} {replicates} only, which is little: " : "";
        return limit + contrast.Verdict switch
        {
            Verdict.Shown => $"{text.Found(contrast.Difference, words, Opened(words.Opening, limit))} ({text.Range(interval.Low, interval.High, words)})." + Small(contrast, text),
            Verdict.Equivalent => $"{Opened("The two are equivalent in", limit)} {words.Noun} within {text.Told(margin)}, the margin set beforehand: {text.Directed(contrast.Difference, words)}{Within(contrast, text, words)}.",
            _ => $"{Opened("No difference in", limit)} {words.Noun} was shown: {text.Directed(contrast.Difference, words)}, but anything from {text.Range(interval.Low, interval.High, words)} fits these strips." + Detectable(measure, contrast, text, replicates),
        };
    }

    /// <summary>The sentence of one comparison over several sites.</summary>
    /// <param name="pooled">What the sites together showed.</param>
    public static string Of(PooledComparison pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        var words = MeasureWords.Of(pooled.Measure);
        var (difference, interval, another) = (pooled.Reml.Estimate.Value, pooled.Interval, pooled.Reml.Prediction!.Value);
        var text = AmountText.For(pooled.Measure, new[] { difference, interval.Low, interval.High, another.Low, another.High }.Max(Math.Abs));
        var sites = $"{NumberText.CountWord(pooled.Sites.Length).ToLowerInvariant()} sites";
        var found = pooled.Verdict == Verdict.Shown
            ? $"{text.Found(difference, words, words.Opening)} over {sites} ({text.Range(interval.Low, interval.High, words)})."
            : $"No difference in {words.Noun} was shown over {sites}: {text.Directed(difference, words)}, but anything from {text.Range(interval.Low, interval.High, words)} fits them.";
        return $"{found} At another site like these anything from {text.Range(another.Low, another.High, words)} is to be expected.";
    }

    // The test of equivalence at alpha goes with the interval of 1 - 2 alpha, not with that of the verdict on a difference.
    private static string Within(Contrast contrast, AmountText text, MeasureWords words) =>
        contrast.Equivalence!.Interval is { } interval ? $", and the whole {interval.Level} interval of this test, {text.Range(interval.Low, interval.High, words)}, lies within the margin" : "";

    private static string Small(Contrast contrast, AmountText text) =>
        contrast.IsWithinMargin ? $" It is smaller than {text.Told(contrast.Equivalence!.Margin)}, the margin set beforehand." : "";

    private static string Opened(string opening, string limit) => limit.Length > 0 ? Lowered(opening) : opening;

    private static string Lowered(string opening) => char.ToLowerInvariant(opening[0]) + opening[1..];

    private static string Detectable(Measure measure, Contrast contrast, AmountText text, string replicates) =>
        contrast is { Detectable: { } detectable, Estimate: { } estimate }
            ? $" {NumberText.CountWord(estimate.Replicates)} {replicates} like these {Usually(measure, detectable, text.Size(detectable))}."
            : "";

    /// <summary>What strips usually show: <c>would usually show a difference of 8</c>; nothing where that is more than the measure can differ by.</summary>
    internal static string Usually(Measure measure, double detectable, string amount) => detectable > MeasureText.Most(measure)
        ? "could not be counted on to show any difference there can be"
        : $"would usually show a difference of {amount}";
}
