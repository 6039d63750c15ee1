namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class StandCountsDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var counts = sheet.Column("Plants counted along a thousandth of an acre, at places drawn beforehand", 1);
        var n = counts.Length;
        var said = sheet.Find("rows ([0-9]+) inches apart at ([0-9,]+) seeds per acre.*acre has ([0-9,]+) square feet");
        var (width, seeds, thousandth) = (hand.Round(said[0] / 12, 3), said[1] / 1000, said[2] / 1000);
        var length = hand.Round(thousandth / width, 2);
        var mean = hand.Round(counts.Sum() / n, 1);
        var factor = hand.Round(17.42m / length, 2);
        yield return Derived.Of("width", width);
        yield return Derived.Of("length", length);
        yield return Derived.Of("feet", Math.Floor(length));
        yield return Derived.Of("inches", hand.Round((length - Math.Floor(length)) * 12, 0));
        yield return Derived.Of("sum", counts.Sum());
        yield return Derived.Of("mean", mean);
        yield return Derived.Of("stand", 1000 * mean);
        yield return Derived.Of("seeds", seeds);
        yield return Derived.Of("share", hand.Round(100 * mean / seeds, 1));
        yield return Derived.Of("spot-off", 1000);
        yield return Derived.Of("mean-off", hand.Round(1000m / n, 0));
        yield return Derived.Of("wrong-factor", factor);
        yield return Derived.Of("wrong-mean", hand.Round(mean * factor, 1));
        if (!sheet.IsSecond)
        {
            yield break;
        }

        var squares = counts.Select(count => hand.Round((count - mean) * (count - mean), 2)).ToArray();
        var variance = hand.Round(squares.Sum() / (n - 1), 2);
        var deviation = hand.Root(variance, 2);
        for (var i = 0; i < n; i++)
        {
            yield return Derived.Of($"square{i + 1}", squares[i]);
        }

        yield return Derived.Of("squares", squares.Sum());
        yield return Derived.Of("variance", variance);
        yield return Derived.Of("deviation", deviation);
        yield return Derived.Of("error", hand.Round(deviation / hand.Root(n, 2), 2));
        var neighbour = sheet.Find("counted ([0-9]+) plants along ([0-9]+) feet");
        var area = hand.Round(neighbour[1] * width, 2);
        yield return Derived.Of("area", area);
        yield return Derived.Of("neighbour", hand.Round(neighbour[0] * thousandth / area, 1));
    }
}
