using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>What the first page says beside its answers.</summary>
internal static class PageWords
{
    /// <summary>Where the comparisons that the page leaves out stand.</summary>
    /// <param name="left">How many it leaves out.</param>
    /// <param name="shown">How many of them showed a difference.</param>
    public static string Others(int left, int shown) => left == 1
        ? $"One more comparison was made; {(shown == 1 ? "a difference was shown. It" : "no difference was shown. It")} stands under Every comparison."
        : $"{NumberText.CountWord(left)} more comparisons were made and {NumberText.CountWord(shown).ToLowerInvariant()} of them {(shown == 1 ? "was" : "were")} shown; all stand under Every comparison.";

    /// <summary>How the picture is read.</summary>
    public static string Picture(bool pairs) => pairs
        ? "Strong lines: treatments; thin: strips. Each dot is a pair, the bar the mean with its range."
        : "Lines: treatments; dots: strips. At the right dots are blocks, bars differences with ranges.";

    /// <summary>That none of several treatments showed a difference, with the reach of their intervals and what would have been seen.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="contrasts">The comparisons, two or more, each with an interval and a detectable difference.</param>
    /// <param name="replicates">What a replicate is called, such as <c>blocks</c>.</param>
    public static string NoneShown(Measure measure, IReadOnlyList<Contrast> contrasts, string replicates)
    {
        var words = MeasureWords.Of(measure);
        var (low, high) = (contrasts.Min(contrast => contrast.Interval!.Value.Low), contrasts.Max(contrast => contrast.Interval!.Value.High));
        var text = AmountText.For(measure, Math.Max(Math.Abs(low), Math.Abs(high)));
        var least = contrasts.MaxBy(contrast => contrast.Detectable)!;
        return $"No difference in {words.Noun} was shown in any of the {NumberText.CountWord(contrasts.Count).ToLowerInvariant()} comparisons: their ranges reach from {text.Range(low, high, words)}. {NumberText.CountWord(least.Estimate!.Replicates)} {replicates} like these {VerdictSentence.Usually(measure, least.Detectable!.Value, text.Amount(least.Detectable!.Value))}.";
    }

    /// <summary>What of worths and doubts stands on other pages; null where the page has all.</summary>
    public static string? More(int worths, int doubts)
    {
        string[] parts =
        [
            .. worths > 0 ? [$"{NumberText.CountWord(worths)} more {(worths == 1 ? "worth" : "worths")} under What the difference is worth"] : Array.Empty<string>(),
            .. doubts > 0 ? [$"{NumberText.CountWord(doubts)} more {(doubts == 1 ? "doubt" : "doubts")} under Doubts and notes"] : Array.Empty<string>(),
        ];
        return parts.Length == 0 ? null : string.Join("; ", parts.Select((part, i) => i == 0 ? part : char.ToLowerInvariant(part[0]) + part[1..])) + ".";
    }

    /// <summary>What the words of the page mean, in short; the whole stands over the comparisons.</summary>
    public static string Level(Trials.Design design) =>
        $"Ranges are {design.Level} intervals; shown means at the {NumberText.Level(design.Level.Alpha)} level; usually means four times in five.";

    /// <summary>How large a next trial would have to be.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="contrast">The comparison whose spread is taken; its detectable difference is known.</param>
    /// <param name="replicates">What a replicate is called, such as <c>pairs</c>.</param>
    public static string Next(Measure measure, Contrast contrast, string replicates)
    {
        var half = contrast.Detectable!.Value / 2;
        var needed = NextTrial.Replicates(contrast, half) is { } count ? NumberText.CountWord(count) : $"More than {NumberText.Count(NextTrial.Most)}";
        return $"{needed} {replicates} like these would usually show a difference in {MeasureWords.Of(measure).Noun} of {AmountText.For(measure, half).Amount(half)}, half of what {NumberText.CountWord(contrast.Estimate!.Replicates).ToLowerInvariant()} can show. Try it in another field or year before counting on it.";
    }
}
