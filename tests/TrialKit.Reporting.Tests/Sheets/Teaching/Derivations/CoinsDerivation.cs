namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

/// <summary>All 256 falls of the coins are gone through, sign by sign, where the key counts sets of cards.</summary>
internal static class CoinsDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        const string counts = "Plants up on the eighth day, of forty seeds";
        var d = sheet.Column(counts, 2).Zip(sheet.Column(counts, 1), (touching, lifted) => touching - lifted).ToArray();
        var sums = Enumerable.Range(0, 256).Select(fall => d.Select((card, i) => ((fall >> i) & 1) == 1 ? -card : card).Sum()).ToArray();
        var far = sums.Count(sum => Math.Abs(sum) >= Math.Abs(d.Sum()));
        var (plus, minus) = (d.Where(card => card > 0).Sum(), -d.Where(card => card < 0).Sum());
        for (var i = 0; i < d.Length; i++)
        {
            yield return Derived.Of($"d{i + 1}", d[i]);
        }

        yield return Derived.Of("sum", d.Sum());
        yield return Derived.Of("plus", plus);
        yield return Derived.Of("minus", minus);
        yield return Derived.Of("smaller", Math.Min(plus, minus));
        yield return Derived.Of("sets", far / 2m);
        yield return Derived.Of("ways", far);
        yield return Derived.Of("p", hand.Round(far / 256m, 3));
        yield return Derived.Of("wrong-p", hand.Round(sums.Count(sum => d.Sum() > 0 ? sum >= d.Sum() : sum <= d.Sum()) / 256m, 3));
        if (sheet.IsSecond)
        {
            yield return Derived.Of("smallest", hand.Round(2 / 256m, 3));
            yield return Derived.Of("mean", hand.Round(d.Sum() / 8, 1));
        }
    }
}
