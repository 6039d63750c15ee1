namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class SpotsDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var rows = sheet.Table("Plants in a thousandth of an acre, spot by spot").Select(row => row.Skip(2).Select(SheetText.Number).ToArray()).ToArray();
        var (slow, fast) = (rows.Where((_, i) => i % 2 == 0).ToArray(), rows.Where((_, i) => i % 2 == 1).ToArray());
        var spots = slow[0].Length;
        var (slowMeans, fastMeans) = (Means(slow, hand), Means(fast, hand));
        var byStrip = fastMeans.Zip(slowMeans, (one, other) => one - other).ToArray();
        var bySpot = fast.SelectMany((strip, pair) => strip.Select((count, spot) => count - slow[pair][spot])).ToArray();
        for (var i = 0; i < byStrip.Length; i++)
        {
            yield return Derived.Of($"slow{i + 1}", slowMeans[i]);
            yield return Derived.Of($"fast{i + 1}", fastMeans[i]);
            yield return Derived.Of($"d{i + 1}", byStrip[i]);
        }

        for (var i = 0; i < bySpot.Length; i++)
        {
            yield return Derived.Of($"spot-d{i + 1}", bySpot[i]);
        }

        foreach (var (prefix, differences) in new[] { ("", byStrip), ("spot-", bySpot) })
        {
            foreach (var derived in Paired(sheet, hand, prefix, differences))
            {
                yield return derived;
            }
        }

        var (one, two) = (Error(byStrip, hand), Error(bySpot, hand));
        yield return Derived.Of("ratio", hand.Round(Math.Max(one, two) / Math.Min(one, two), 2));
        yield return Derived.Of("wrong-df", bySpot.Length - 1);
        if (sheet.IsSecond)
        {
            Assert.Equal(4 * spots, (int)sheet.Find("spots had been ([0-9]+) in each strip")[0]);
            yield return Derived.Of("half-error", hand.Round(two / 2, 2));
        }
    }

    private static decimal[] Means(decimal[][] strips, Hand hand) => [.. strips.Select(strip => hand.Round(strip.Sum() / strip.Length, 2))];

    private static IEnumerable<Derived> Paired(SheetText sheet, Hand hand, string prefix, decimal[] d)
    {
        var (mean, critical) = (hand.Round(d.Sum() / d.Length, 2), hand.T(sheet, d.Length - 1, 0.10m));
        var t = hand.Round(mean / Error(d, hand), 2);
        yield return Derived.Of(prefix + "mean", mean);
        yield return Derived.Of(prefix + "squares", Squares(d, hand));
        yield return Derived.Of(prefix + "variance", Variance(d, hand));
        yield return Derived.Of(prefix + "error", Error(d, hand));
        yield return Derived.Of(prefix + "t", t);
        yield return Derived.Of(prefix + "critical", critical);
        yield return Derived.Of(prefix + "verdict", Math.Abs(t) > critical ? "shown" : "not shown");
    }

    private static decimal Squares(decimal[] d, Hand hand)
    {
        var mean = hand.Round(d.Sum() / d.Length, 2);
        return d.Sum(each => hand.Round((each - mean) * (each - mean), 2));
    }

    private static decimal Variance(decimal[] d, Hand hand) => hand.Round(Squares(d, hand) / (d.Length - 1), 2);

    private static decimal Error(decimal[] d, Hand hand) => hand.Root(Variance(d, hand) / d.Length, 2);
}
