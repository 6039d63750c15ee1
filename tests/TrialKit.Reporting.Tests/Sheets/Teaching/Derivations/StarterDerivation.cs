using System.Globalization;

namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class StarterDerivation
{
    private const string Hazards = "Kept out of the furrow by published sources";
    private const string Counts = "Plants in a thousandth of an acre, in June";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var label = sheet.Find("([0-9]+) % N, ([0-9]+) % P2O5 and ([0-9]+) % K2O, no sulfur, ([0-9.]+) pounds a gallon");
        var (n, p, k, density) = (label[0], label[1], label[2], label[3]);
        var rate = sheet.Find("puts out ([0-9]+) gallons per acre")[0];
        var gallons = sheet.IsSecond ? hand.Round(rate * sheet.Find("gallons per acre: ([0-9]+) % of it in the furrow")[0] / 100, 1) : rate;
        var furrow = Amounts(gallons, "", label, hand).ToArray();
        var added = furrow.Single(each => each.Id == "added").Number!.Value;
        foreach (var derived in furrow)
        {
            yield return derived;
        }

        yield return Derived.Of("row", hand.Round(added * 30 / 522.72m, 3));
        var perGallon = hand.Round(density * (n + k) / 100, 3);
        yield return Derived.Of("gallon", perGallon);
        foreach (var (id, source) in ((string, string)[])[("kansas", "Kansas State University"), ("laboratory", "A soil-testing laboratory's guide"), ("tri-state", "The Tri-State recommendations")])
        {
            var limit = Limit(sheet, source, "with the seed");
            yield return Derived.Of(id, Against(added, limit));
            yield return Derived.Of($"reach-{id}", hand.Round(limit / perGallon, 1));
        }

        if (sheet.IsSecond)
        {
            var band = Amounts(rate - gallons, "band-", label, hand).ToArray();
            var bandAdded = band.Single(each => each.Id == "band-added").Number!.Value;
            foreach (var derived in band)
            {
                yield return derived;
            }

            yield return Derived.Of("gallons", gallons);
            yield return Derived.Of("band-gallons", rate - gallons);
            yield return Derived.Of("row-narrow", hand.Round(added * 20 / 522.72m, 3));
            yield return Derived.Of("band-laboratory", Against(bandAdded, Limit(sheet, "A soil-testing laboratory's guide", "in a 2x2 band")));
            yield return Derived.Of("band-ohio", Against(bandAdded, Limit(sheet, "Ohio State University", "in a 2x2 band")));
        }

        var offered = sheet.Words("The dealer offers to mix in some (.+?)\\.");
        yield return Derived.Of("offered", sheet.Table(Hazards).Any(row => row[0] == offered) ? "never" : "not on the list");
        var d = sheet.Column(Counts, 2).Zip(sheet.Column(Counts, 1), (with, without) => with - without).ToArray();
        yield return Derived.Of("stand", hand.Round(d.Sum() / d.Length, 2));
        yield return Derived.Of("lower", d.Count(each => each < 0).ToString(CultureInfo.InvariantCulture));
        var wrong = hand.Round(gallons * (n + k) / 100, 2);
        yield return Derived.Of("wrong-added", wrong);
        yield return Derived.Of("wrong-kansas", Against(wrong, Limit(sheet, "Kansas State University", "with the seed")));
    }

    private static IEnumerable<Derived> Amounts(decimal gallons, string prefix, decimal[] label, Hand hand)
    {
        var product = hand.Round(gallons * label[3], 2);
        decimal[] nutrients = [.. label.Take(3).Select(percent => hand.Round(product * percent / 100, 2))];
        yield return Derived.Of($"{prefix}product", product);
        yield return Derived.Of($"{prefix}n", nutrients[0]);
        yield return Derived.Of($"{prefix}p2o5", nutrients[1]);
        yield return Derived.Of($"{prefix}k2o", nutrients[2]);
        yield return Derived.Of($"{prefix}added", nutrients[0] + nutrients[2]);
    }

    // In whole pounds, as the limits are printed.
    private static string Against(decimal amount, decimal limit) => decimal.Round(amount, 0, MidpointRounding.AwayFromZero) > limit ? "over" : "not over";

    // The line whose soil and rows are those of the story; lines differ in one of the two.
    private static decimal Limit(SheetText sheet, string source, string where)
    {
        var isSandy = sheet.Words("inches apart on (sandy|medium|fine) soil") == "sandy";
        var exchange = sheet.Find("capacity \\(CEC\\) is ([0-9]+) meq")[0];
        return SheetText.Number(sheet.Table($"Published screening limits for corn {where}, pounds per acre").Single(row => row[0] == source && row[2] is "not stated" or "30 in" && Holds(row[1]))[4]);

        bool Holds(string soil) => soil switch
        {
            "sandy soil" => isSandy,
            "medium and fine soil" => !isSandy,
            "any soil" => true,
            _ when soil.StartsWith("CEC below ", StringComparison.Ordinal) => exchange <= SheetText.Number(soil["CEC below ".Length..]),
            _ when soil.StartsWith("CEC above ", StringComparison.Ordinal) => exchange > SheetText.Number(soil["CEC above ".Length..]),
            _ => throw new InvalidOperationException($"The sheet has a limit for '{soil}'."),
        };
    }
}
