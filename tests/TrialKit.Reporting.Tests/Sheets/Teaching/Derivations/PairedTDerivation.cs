namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class PairedTDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        const string counts = "Plants in a thousandth of an acre";
        var without = sheet.Column(counts, 1);
        var with = sheet.Column(counts, 2);
        var n = with.Length;
        var d = with.Zip(without, (one, other) => one - other).ToArray();
        var mean = hand.Round(d.Sum() / n, 2);
        var squares = d.Select(each => hand.Round((each - mean) * (each - mean), 2)).ToArray();
        var variance = hand.Round(squares.Sum() / (n - 1), 2);
        var deviation = hand.Root(variance, 2);
        var root = hand.Root(n, 2);
        var error = hand.Round(deviation / root, 2);
        var t = hand.Round(mean / error, 2);
        var critical = hand.T(sheet, n - 1, 0.10m);
        for (var i = 0; i < n; i++)
        {
            yield return Derived.Of($"d{i + 1}", d[i]);
            yield return Derived.Of($"square{i + 1}", squares[i]);
        }

        yield return Derived.Of("sum", d.Sum());
        yield return Derived.Of("mean", mean);
        yield return Derived.Of("squares", squares.Sum());
        yield return Derived.Of("variance", variance);
        yield return Derived.Of("deviation", deviation);
        yield return Derived.Of("root", root);
        yield return Derived.Of("error", error);
        yield return Derived.Of("t", t);
        yield return Derived.Of("df", n - 1);
        yield return Derived.Of("critical", critical);
        yield return Derived.Of("verdict", Math.Abs(t) > critical ? "shown" : "not shown");
        if (sheet.IsSecond)
        {
            var half = hand.Round(critical * error, 2);
            yield return Derived.Of("half", half);
            yield return Derived.Of("low", mean - half);
            yield return Derived.Of("high", mean + half);
            yield return Derived.Of("bracket", hand.Bracket(sheet, t, n - 1));
        }

        var (one, two) = (Squares(with, hand), Squares(without, hand));
        var wrong = hand.Root((one + two) / (n * (n - 1)), 2);
        yield return Derived.Of("wrong-with", one);
        yield return Derived.Of("wrong-without", two);
        yield return Derived.Of("wrong-error", wrong);
        yield return Derived.Of("wrong-t", hand.Round(mean / wrong, 2));
    }

    private static decimal Squares(decimal[] counts, Hand hand)
    {
        var mean = hand.Round(counts.Sum() / counts.Length, 2);
        return counts.Sum(count => hand.Round((count - mean) * (count - mean), 2));
    }
}
