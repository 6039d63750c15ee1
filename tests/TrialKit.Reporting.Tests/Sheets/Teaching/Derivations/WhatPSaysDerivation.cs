using System.Globalization;

namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class WhatPSaysDerivation
{
    private const string Outcomes = "What came of it, yield in bushels per acre";
    private const string Lists = "p of twenty trials in each of the two fields";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var p = SheetText.Number(sheet.Table(Outcomes)[0][4]);
        var trials = sheet.Table(Lists).SelectMany(row => row.Chunk(3)).ToArray();
        var (nothing, something) = (trials.Select(trial => SheetText.Number(trial[1])).ToArray(), trials.Select(trial => SheetText.Number(trial[2])).ToArray());
        yield return Derived.Of("share-nothing", Share(nothing.Count(each => each <= p), nothing, hand));
        yield return Derived.Of("share-larger", Share(something.Count(each => each > p), something, hand));
        yield return Derived.Of("share-missed", Share(something.Count(each => each > 0.10m), something, hand));
        yield return Derived.Of("wrong-chance", 1 - p);
        yield return Derived.Of("wrong-near-nothing", Near(nothing));
        yield return Derived.Of("wrong-near-something", Near(something));
        foreach (var (row, prefix) in sheet.Table(Outcomes).Zip(sheet.IsSecond ? ["", "b-"] : (string[])[""]))
        {
            foreach (var derived in Trial(sheet, hand, row, prefix))
            {
                yield return derived;
            }
        }
    }

    private static IEnumerable<Derived> Trial(SheetText sheet, Hand hand, string[] row, string prefix)
    {
        var (pairs, mean, error) = ((int)SheetText.Number(row[1]), SheetText.Number(row[2]), SheetText.Number(row[3]));
        var t = hand.Round(mean / error, 2);
        var half = hand.Round(hand.T(sheet, pairs - 1, 0.10m) * error, 2);
        var (low, high) = (mean - half, mean + half);
        yield return Derived.Of($"{prefix}t", t);
        yield return Derived.Of($"{prefix}bracket", hand.Bracket(sheet, t, pairs - 1));
        yield return Derived.Of($"{prefix}half", half);
        yield return Derived.Of($"{prefix}low", low);
        yield return Derived.Of($"{prefix}high", high);
        yield return Derived.Of($"{prefix}fits", string.Join(", ", Enumerable.Range(-2, 7).Select(step => 2 * step).Where(value => low <= value && value <= high).Select(Written)));
        yield return Derived.Of($"{prefix}pays", high > 2 ? "not ruled out" : "ruled out");
    }

    private static decimal Share(int count, decimal[] trials, Hand hand) => hand.Round((decimal)count / trials.Length, 2);

    private static string Near(decimal[] trials) => string.Create(CultureInfo.InvariantCulture, $"{trials.Count(each => each is >= 0.2m and <= 0.4m)} of {trials.Length}");

    private static string Written(int value) => value.ToString(CultureInfo.InvariantCulture).Replace('-', '\u2212');
}
