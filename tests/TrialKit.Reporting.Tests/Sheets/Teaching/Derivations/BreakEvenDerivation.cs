namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class BreakEvenDerivation
{
    private const string Yields = "Yield, bushels per acre";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var money = sheet.Find("the product costs \\$([0-9.]+) and the pass \\$([0-9.]+); a scouting trip of \\$([0-9.]+) is no longer made. Corn sells at \\$([0-9.]+) a bushel, and hauling and drying of each bushel cost \\$([0-9.]+) and \\$([0-9]+\\.[0-9]+)");
        var (cost, price) = (money[0] + money[1] - money[2], money[3] - money[4] - money[5]);
        var needed = hand.Round(cost / price, 2);
        var d = sheet.Column(Yields, 2).Zip(sheet.Column(Yields, 1), (with, without) => with - without).ToArray();
        var spread = new HandSpread(d, hand);
        var error = sheet.IsSecond ? spread.Error : sheet.Find("paired t, is ([0-9.]+) bushels per acre")[0];
        for (var i = 0; i < d.Length; i++)
        {
            yield return Derived.Of($"d{i + 1}", d[i]);
        }

        yield return Derived.Of("cost", cost);
        yield return Derived.Of("net-price", price);
        yield return Derived.Of("break-even", needed);
        yield return Derived.Of("sum", d.Sum());
        yield return Derived.Of("mean", spread.Mean);
        yield return Derived.Of("worth", Worth(spread.Mean));
        var t = hand.Round((spread.Mean - needed) / error, 2);
        var zero = hand.Round(spread.Mean / error, 2);
        yield return Derived.Of("t", t);
        yield return Derived.Of("pays", Chance(sheet, hand, t, d.Length - 1));
        yield return Derived.Of("wrong-t", zero);
        yield return Derived.Of("wrong-pays", Chance(sheet, hand, zero, d.Length - 1));
        if (sheet.IsSecond)
        {
            foreach (var derived in spread.Answers())
            {
                yield return derived;
            }

            var margin = hand.Round(1.25m * needed, 2);
            var marginT = hand.Round((spread.Mean - margin) / error, 2);
            yield return Derived.Of("margin", margin);
            yield return Derived.Of("margin-t", marginT);
            yield return Derived.Of("margin-pays", Chance(sheet, hand, marginT, d.Length - 1));
            var half = hand.Round(hand.T(sheet, d.Length - 1, 0.10m) * error, 2);
            yield return Derived.Of("half", half);
            yield return Derived.Of("low", spread.Mean - half);
            yield return Derived.Of("high", spread.Mean + half);
            yield return Derived.Of("worth-low", Worth(spread.Mean - half));
            yield return Derived.Of("worth-high", Worth(spread.Mean + half));
        }

        decimal Worth(decimal bushels) => hand.Round(bushels * price, 2) - cost;
    }

    // The table has five pairs of columns: t, and the chance that belongs to it.
    private static decimal Chance(SheetText sheet, Hand hand, decimal t, int degrees)
    {
        var cells = sheet.Table(FormattableString.Invariant($"The chance that belongs to t, with {degrees} degrees of freedom")).SelectMany(row => row.Chunk(2)).ToDictionary(cell => SheetText.Number(cell[0]), cell => SheetText.Number(cell[1]));
        var chance = hand.Tail(hand.Round(Math.Abs(t), 1), degrees, size => cells[size]);
        return hand.Round(100 * (t < 0 ? 1 - chance : chance), 0);
    }
}
