using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>What the first page says beside its answers.</summary>
internal static class PageWords
{
    /// <summary>What of the comparisons that the page leaves out was shown, the headline measures by name, and where all of them stand.</summary>
    /// <param name="left">The measures it leaves out, with their comparisons.</param>
    /// <param name="names">Whether to say which treatments showed it.</param>
    /// <param name="most">The most measures named.</param>
    public static string Others(IReadOnlyList<(Measure Measure, ImmutableArray<Contrast> Contrasts)> left, bool names, int most)
    {
        var count = left.Sum(entry => entry.Contrasts.Length);
        var shown = left.Sum(entry => entry.Contrasts.Count(contrast => contrast.Verdict == Verdict.Shown));
        var untested = left.Sum(entry => entry.Contrasts.Count(contrast => contrast.Verdict == Verdict.NotJudged));
        var without = untested == 0 ? "" : $" and {NumberText.CountWord(untested).ToLowerInvariant()} not tested";
        var headlines = left
            .Where(entry => entry.Measure is { IsHeadline: true, Kind: not MeasureKind.Heat })
            .Select(entry => (entry.Measure, Shown: entry.Contrasts.Where(contrast => contrast.Verdict == Verdict.Shown).Select(contrast => contrast.Treatment.Label).Distinct(StringComparer.Ordinal).ToArray()))
            .Where(entry => entry.Shown.Length > 0)
            .Select(entry => MeasureWords.Of(entry.Measure).Noun + (names ? $" ({string.Join(", ", entry.Shown)})" : ""))
            .ToArray();
        var named = headlines.Length == 0 ? "" : headlines.Length <= most ? $"Also shown: {Listed(headlines)}. " : $"Also shown: {string.Join("; ", headlines.Take(most))} and {NumberText.CountWord(headlines.Length - most).ToLowerInvariant()} more. ";
        return $"{named}{NumberText.CountWord(count)} more {(count == 1 ? "comparison" : "comparisons")}, {(shown == 0 ? "none" : NumberText.CountWord(shown).ToLowerInvariant())} shown{without}, {(count == 1 ? "stands" : "stand")} under Every comparison.";
    }

    private static string Listed(string[] names) => names.Length == 1 ? names[0] : $"{string.Join("; ", names[..^1])} and {names[^1]}";

    /// <summary>How the picture is read.</summary>
    public static string Picture(bool pairs) => pairs
        ? "Strong lines: treatments; thin: strips. Each dot is a pair, the bar the mean with its range. A mark beside a sentence has a scale of its own."
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

    /// <summary>What several treatments came to on one measure, where they are not all without a difference.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="contrasts">The comparisons, two or more.</param>
    /// <param name="name">How a comparison is called.</param>
    /// <param name="replicates">What a replicate is called, such as <c>blocks</c>.</param>
    /// <param name="most">The most comparisons of one outcome that are named; of more, the largest differences.</param>
    public static RichText Several(Measure measure, ImmutableArray<Contrast> contrasts, Func<Contrast, string> name, string replicates, int most)
    {
        var words = MeasureWords.Of(measure);
        var intervals = contrasts.Select(contrast => contrast.Interval).OfType<Interval>().ToArray();
        var text = AmountText.For(measure, contrasts.Select(contrast => Math.Abs(contrast.Difference)).Concat(intervals.Select(interval => Math.Max(Math.Abs(interval.Low), Math.Abs(interval.High)))).Max());
        var unshown = contrasts.Where(contrast => contrast is { Verdict: not Verdict.Shown, Interval: not null }).ToArray();
        var untested = contrasts.Where(contrast => contrast.Interval is null).ToArray();
        var shown = contrasts.Where(contrast => contrast.Verdict == Verdict.Shown).ToArray();
        var told = shown.Length <= most ? shown : [.. shown.OrderByDescending(contrast => Math.Abs(contrast.Difference)).Take(most)];
        string[] parts =
        [
            .. told.Select(contrast => $"{text.Directed(contrast.Difference, words)} with {name(contrast)} ({text.Range(contrast.Interval!.Value.Low, contrast.Interval.Value.High, words)})"),
            .. shown.Length > told.Length ? [$"and {NumberText.CountWord(shown.Length - told.Length).ToLowerInvariant()} smaller ones shown"] : Array.Empty<string>(),
            .. unshown.Length > 0 ? [$"not shown {Named(unshown)} ({Reach()})"] : Array.Empty<string>(),
            .. untested.Length > 0 ? [$"not tested {Named(untested)}"] : Array.Empty<string>(),
        ];
        return RichText.Of($"{measure.Label}: ", Emphasis.Strong).Then($"{string.Join(", ", parts)}.");

        string Named(Contrast[] group) => group.Length <= most ? $"with {Listed([.. group.Select(name)])}" : $"in {NumberText.CountWord(group.Length).ToLowerInvariant()} comparisons";

        string Reach()
        {
            var range = text.Range(unshown.Min(contrast => contrast.Interval!.Value.Low), unshown.Max(contrast => contrast.Interval!.Value.High), words);
            var least = unshown.Where(contrast => contrast.Detectable is not null).MaxBy(contrast => contrast.Detectable);
            return least is { Estimate: { } estimate, Detectable: { } detectable }
                ? $"{range}; {NumberText.CountWord(estimate.Replicates).ToLowerInvariant()} {replicates} like these {VerdictSentence.Usually(measure, detectable, text.Amount(detectable))}"
                : range;
        }
    }

    /// <summary>What of worths and doubts stands on other pages; null where the page has all.</summary>
    /// <param name="worth">Whether the page leaves the worth out.</param>
    /// <param name="doubts">How many doubts it leaves out.</param>
    public static string? More(bool worth, int doubts)
    {
        string[] parts =
        [
            .. worth ? ["What it is worth stands under What the difference is worth"] : Array.Empty<string>(),
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
    /// <param name="next">The next trial after it.</param>
    /// <param name="replicates">What a replicate is called, such as <c>pairs</c>.</param>
    public static string Next(Measure measure, Contrast contrast, NextTrial next, string replicates)
    {
        var half = contrast.Detectable!.Value / 2;
        var needed = next.Replicates(half) is { } count ? NumberText.CountWord(count) : $"More than {NumberText.Count(NextTrial.Most)}";
        return $"{needed} {replicates} like these would usually show a difference in {MeasureWords.Of(measure).Noun} of {AmountText.For(measure, half).Amount(half)}, half of what {NumberText.CountWord(contrast.Estimate!.Replicates).ToLowerInvariant()} can show. Try it in another field or year before counting on it.";
    }
}
