using System.Globalization;

namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class HowManyStripsDerivation
{
    private const string Yields = "Yield of strips that were treated alike, bushels per acre";
    private const string Factors = "Student's t for a trial of so many pairs";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var (one, two) = (sheet.Column(Yields, 1), sheet.Column(Yields, 2));
        var d = two.Zip(one, (neighbour, strip) => neighbour - strip).ToArray();
        var squares = d.Select(each => hand.Round(each * each, 2)).ToArray();
        var variance = hand.Round(squares.Sum() / d.Length, 2);
        var deviation = hand.Root(variance, 2);
        for (var i = 0; i < d.Length; i++)
        {
            yield return Derived.Of($"d{i + 1}", d[i]);
            yield return Derived.Of($"square{i + 1}", squares[i]);
        }

        yield return Derived.Of("squares", squares.Sum());
        yield return Derived.Of("variance", variance);
        yield return Derived.Of("deviation", deviation);
        var wanted = sheet.Find("a true difference of ([0-9]+) bushels per acre with a chance")[0];
        var sizes = Rows(sheet).Select(row => (int)row[0]).Order().ToArray();
        var shown = sizes.ToDictionary(size => size, size => Shown(sheet, hand, size, deviation, withChance: true));
        var alone = sizes.ToDictionary(size => size, size => Shown(sheet, hand, size, deviation, withChance: false));
        foreach (var size in (int[])[4, 8, 16])
        {
            yield return Derived.Of($"shown-with-{size}", shown[size]);
        }

        var fewest = sizes.First(size => shown[size] <= wanted);
        var fewestAlone = sizes.First(size => alone[size] <= wanted);
        yield return Derived.Of("fewest", Written(fewest));
        yield return Derived.Of("shown-fewest", shown[fewest]);
        yield return Derived.Of("wrong-fewest", Written(fewestAlone));
        yield return Derived.Of("wrong-shown", alone[fewestAlone]);
        if (sheet.IsSecond)
        {
            var mean = hand.Round((one.Sum() + two.Sum()) / (one.Length + two.Length), 1);
            var strip = hand.Round(deviation / hand.Root(2, 2), 2);
            yield return Derived.Of("mean", mean);
            yield return Derived.Of("strip", strip);
            yield return Derived.Of("cv", hand.Round(100 * strip / mean, 1));
            yield return Derived.Of("wanted", hand.Round(100 * wanted / mean, 1));
            yield return Derived.Of("p-smallest", hand.Round(Enumerable.Range(0, fewest).Aggregate(2m, (p, _) => p / 2), 5));
        }
    }

    private static decimal Shown(SheetText sheet, Hand hand, int pairs, decimal deviation, bool withChance)
    {
        var row = Rows(sheet).Single(row => row[0] == pairs);
        var level = hand.Looked(row[1], pairs - 1, 0.10);
        var chance = withChance ? hand.Looked(row[2], pairs - 1, 0.40) : 0;
        return hand.Round(hand.Round((level + chance) * deviation, 2) / hand.Root(pairs, 2), 2);
    }

    // Two blocks side by side: pairs, the two t, and the root.
    private static IEnumerable<decimal[]> Rows(SheetText sheet) => sheet.Table(Factors).SelectMany(row => row.Chunk(4)).Select(row => row.Select(SheetText.Number).ToArray());

    private static string Written(int value) => value.ToString(CultureInfo.InvariantCulture);
}
