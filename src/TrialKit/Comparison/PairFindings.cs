using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics.Pairs;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>What to doubt about a comparison of pairs.</summary>
internal static class PairFindings
{
    private const int FewPairs = 4;

    public static IEnumerable<Finding> Of(StripMeasure values, ImmutableArray<PairDifference> pairs, ConfidenceLevel level, AllStripsEstimate? allStrips)
    {
        var label = values.Measure.Label;
        var lost = Lost(values, pairs).ToArray();
        if (lost.Length > 0)
        {
            yield return new("pair-incomplete", FindingWeight.Caution, $"{label}: {(lost.Length == 1 ? "pair" : "pairs")} {string.Join(", ", lost)} {(lost.Length == 1 ? "has" : "have")} no value on one strip and {(lost.Length == 1 ? "leaves" : "leave")} the comparison, which rests on {Counted(pairs.Length, "whole pair")}.{Beside(allStrips)}", values.Measure.Id);
        }

        switch (pairs.Length)
        {
            case 0:
                yield return new("no-pairs", FindingWeight.Serious, $"{label}: no pair has a value on both strips, so nothing is compared.", values.Measure.Id);
                yield break;
            case 1:
                yield return new("one-pair", FindingWeight.Serious, $"{label}: one pair gives a difference and no measure of its spread, so nothing can be tested.", values.Measure.Id);
                yield break;
        }

        if (!Spread.Exists(pairs))
        {
            yield return new("no-spread", FindingWeight.Serious, $"{label}: every pair gave the same difference; check the data. No t test was made and no verdict is given; the exact tests printed beside count only which way pairs went.", values.Measure.Id);
        }

        if (pairs.Length < FewPairs)
        {
            yield return new("few-pairs", FindingWeight.Caution, Text($"{label}: {pairs.Length} pairs only; the interval rests on very little."), values.Measure.Id);
        }

        double[] differences = [.. pairs.Select(pair => pair.Difference)];
        var smallest = SignFlips.SmallestP(differences);
        if (smallest >= level.Alpha)
        {
            var equal = pairs.Length - SignFlips.Differing(differences);
            var those = equal == 0 ? "" : Text($", {equal} of them without a difference,");
            yield return new("exact-p-limit", FindingWeight.Note, Text($"{label}: with {pairs.Length} pairs{those} the exact test cannot give a p below {smallest:0.####}, so it can never show a difference at {level.Alpha:0.########}."), values.Measure.Id);
        }
    }

    private static string Beside(AllStripsEstimate? allStrips) => allStrips is null ? "" : Text($" A mixed model of all {allStrips.Strips} strips stands beside the verdict.");

    private static string Counted(int count, string what) => Text($"{count} {what}{(count == 1 ? "" : "s")}");

    private static IEnumerable<string> Lost(StripMeasure values, ImmutableArray<PairDifference> pairs)
    {
        var whole = pairs.Select(pair => pair.Block).ToHashSet(Identifier.Comparer);
        return values.Analysed.Select(entry => entry.Entry.Strip.Block.Trim()).Distinct(Identifier.Comparer).Where(block => !whole.Contains(block));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
