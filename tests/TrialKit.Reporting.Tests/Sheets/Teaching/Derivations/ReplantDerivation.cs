using System.Globalization;

namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class ReplantDerivation
{
    private const string Counts = "Plants in a thousandth of an acre";
    private const string Percents = "Corn yield in percent of the best, by planting date and thousand plants per acre";
    private const string Day = "((?:Apr|May) [0-9]+)";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var terms = new Terms(sheet, hand);
        var (left, hoed) = (sheet.Column(Counts, 1), sheet.Column(Counts, 2));
        var (leftStand, hoedStand) = (hand.Round(left.Average(), 1), hand.Round(hoed.Average(), 1));
        yield return Derived.Of("stand-left", leftStand);
        yield return Derived.Of("stand-hoed", hoedStand);
        yield return Derived.Of("after", terms.After.ToString(CultureInfo.InvariantCulture));
        foreach (var derived in terms.Choice("left", leftStand).Concat(terms.Choice("hoed", hoedStand)))
        {
            yield return derived;
        }

        var wrong = 100 - terms.Kept(leftStand);
        yield return Derived.Of("wrong-gain", wrong);
        yield return Derived.Of("wrong-net", terms.Net(terms.Bushels(wrong)));
        if (sheet.IsSecond)
        {
            var spread = new HandSpread(left, hand);
            yield return Derived.Of("later", terms.Later());
            yield return Derived.Of("mean", spread.Mean);
            foreach (var derived in spread.Answers())
            {
                yield return derived;
            }

            var half = hand.Round(hand.T(sheet, left.Length - 1, 0.10m) * spread.Error, 1);
            yield return Derived.Of("half", half);
            yield return Derived.Of("stand-low", leftStand - half);
            yield return Derived.Of("stand-high", leftStand + half);
            foreach (var derived in terms.Choice("low", leftStand - half).Concat(terms.Choice("high", leftStand + half)))
            {
                yield return derived;
            }
        }
    }

    private sealed class Terms(SheetText sheet, Hand hand)
    {
        private readonly DateOnly planted = Date(sheet.Words($"It was planted on {Day}\\."));
        private readonly DateOnly again = Date(sheet.Words($"planted again on {Day} with"));
        private readonly decimal againStand = sheet.Find("with ([0-9]+) thousand plants per acre standing after it")[0];
        private readonly decimal best = sheet.Find("this field yields ([0-9]+) bushels")[0];
        private readonly decimal cost = sheet.Find("of replanting cost \\$([0-9]+) per acre")[0];
        private readonly decimal price = sheet.Find("a bushel is worth \\$([0-9]+\\.[0-9]+)")[0];
        private readonly Dictionary<DateOnly, decimal[]> table = sheet.Table(Percents).ToDictionary(row => Date(row[0]), row => row.Skip(1).Select(SheetText.Number).ToArray());

        // The head of the table is the line after its caption.
        private readonly decimal[] stands = [.. sheet.Head(Percents).Skip(1).Select(SheetText.Number)];

        public decimal After => table[again][Array.IndexOf(stands, againStand)];

        public IEnumerable<Derived> Choice(string id, decimal stand)
        {
            var kept = Kept(stand);
            var bushels = Bushels(After - kept);
            yield return Derived.Of($"kept-{id}", kept);
            yield return Derived.Of($"gain-{id}", After - kept);
            yield return Derived.Of($"bushels-{id}", bushels);
            yield return Derived.Of($"net-{id}", Net(bushels));
            yield return Derived.Of($"verdict-{id}", Net(bushels) > 0 ? "replant" : "keep");
        }

        public decimal Kept(decimal stand)
        {
            var above = Array.FindIndex(stands, each => each >= stand);
            var (low, high) = (stands[above - 1], stands[above]);
            var row = table[planted];
            return hand.Round(((row[above - 1] * (high - stand)) + (row[above] * (stand - low))) / (high - low), 1);
        }

        public decimal Bushels(decimal points) => hand.Round(points * best / 100, 1);

        public decimal Net(decimal bushels) => hand.Round(bushels * price, 2) - cost;

        public decimal Later()
        {
            var days = sheet.Find("if it rains, ([0-9]+) days? later")[0];
            var next = table.Keys.Where(date => date > again).Min();
            var (gap, column) = (next.DayNumber - again.DayNumber, Array.IndexOf(stands, againStand));
            return hand.Round(((table[again][column] * (gap - days)) + (table[next][column] * days)) / gap, 1);
        }

        private static DateOnly Date(string text) => DateOnly.ParseExact($"{text} 2026", "MMM d yyyy", CultureInfo.InvariantCulture);
    }
}
