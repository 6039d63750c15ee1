using System.Globalization;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Stand;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>Whether to keep a thin stand or replant it, by a published table, with the costs and with what the counts leave open.</summary>
/// <remarks>Nafziger 1994, J. Prod. Agric. 7:59-62; between its entries straight.</remarks>
internal static class KeepOrReplantByTable
{
    private const int Seeds = 34;
    private const double Alpha = 0.10;
    private const double HoeGain = 0.06;
    private const double Patchy = 0.04;
    private const int Year = 2026;
    private static readonly DateOnly Counted = new(Year, 5, 12);
    private static readonly Dictionary<(DateOnly Planted, int Thousands), int> Entries =
        StandResponse.Entries.ToDictionary(entry => (OfYear(entry.Planted), (int)Math.Round(entry.Stand.PerAcre / 1000)), entry => entry.Percent);

    private static readonly DateOnly[] Dates = [.. Entries.Keys.Select(entry => entry.Planted).Distinct().Order()];
    private static readonly int[] Stands = [.. Entries.Keys.Select(entry => entry.Thousands).Distinct().Order()];

    public static ExerciseTopic Topic { get; } = new(
        "replant",
        "Keep the stand or replant it",
        30,
        "six pairs of counts, the table, and the costs, for two stands",
        "eight pairs, a later date between those of the table, and the decision at both ends of an interval",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var isFirst = level == ExerciseLevel.First;
        var n = isFirst ? 6 : 8;
        var share = isFirst ? data.Between(0.46, 0.62) : data.Between(0.52, 0.66);
        var pairs = Enumerable.Range(0, n).Select(_ => Pair(data, share)).ToArray();
        var strips = InventedTrial.Laid(data, n, "left", "hoed");
        var terms = Case.Drawn(data);
        var left = new Choice("left", "Left as it is", pairs.Select(pair => pair.Control), terms);
        var hoed = new Choice("hoed", "Hoed", pairs.Select(pair => pair.Treated), terms);
        var delay = data.Whole(1, 4);
        return new()
        {
            Given =
            [
                new Paragraph($"A crust kept much of a field of corn from coming up. It was planted on {NumberText.ShortDate(terms.Planted)}. In one strip of each of {NumberText.CountWord(n).ToLowerInvariant()} pairs the crust was broken with a rotary hoe. On {NumberText.ShortDate(Counted)} the plants in a thousandth of an acre were counted in each strip, so a count is thousands of plants per acre. The field could be planted again on {NumberText.ShortDate(terms.Replanted)} with {terms.ReplantStand.Text} thousand plants per acre standing after it{(isFirst ? "" : $", or, if it rains, {NumberText.Count(delay)} {(delay == 1 ? "day" : "days")} later")}."),
                new Paragraph($"Where everything goes right this field yields {terms.Best.Text} bushels per acre. Seed, fuel and work of replanting cost ${terms.Cost.Text} per acre; a bushel is worth ${terms.Price.Text}, net of hauling and drying."),
                new Table(
                    "Plants in a thousandth of an acre",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("Left as it is", Alignment: ColumnAlignment.Right), new("Hoed", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
                new Table(
                    "Corn yield in percent of the best, by planting date and thousand plants per acre",
                    [new("Planted"), .. Stands.Select(stand => new TableColumn(NumberText.Count(stand), Alignment: ColumnAlignment.Right))],
                    [.. Dates.Select(date => TableRow.Of([NumberText.ShortDate(date), .. Stands.Select(stand => NumberText.Count(Entries[(date, stand)]))]))]),
                new Paragraph($"{StandResponse.Source}. Between two entries go straight from one to the other.", TextSize.Small),
                .. isFirst ? [] : (Block[])[CriticalTable.OfT(n - 2, n - 1, n)],
            ],
            Questions =
            [
                new(
                    "What is the mean stand where the crust was left, and where it was hoed? Thousand plants per acre, one decimal.",
                    [new AnswerRoom(2, "left as it is", "hoed")],
                    [left.StandStep, hoed.StandStep]),
                new(
                    "What percent of the best do the two stands reach if they are kept? Take the row of the planting date, the two stands of the table on either side of yours, and go from the lower one as large a part of the way as your stand has gone; one decimal.",
                    [new AnswerRoom(4, "left as it is, %", "hoed, %")],
                    [left.KeptStep, hoed.KeptStep]),
                new(
                    "What percent of the best would the replanted field reach, by the table? It stands there.",
                    [new AnswerRoom(0, "replanted, %")],
                    [terms.AfterStep])
                {
                    Remark = "The late date takes its part away from a full stand too. That is what a thin stand must be held against, not the best.",
                },
                new(
                    "For each of the two stands: how many points are gained by replanting? How many bushels per acre is that, to one decimal, and how many dollars after the cost of replanting, to two decimals? Below zero it is a loss. What does the table say then: keep or replant?",
                    [
                        new FormGrid([new("Stand", 1.2), new("Points gained", 1), new("Bushels", 1), new("After the cost, $", 1), new("Keep or replant", 1.2)], [["left as it is", "", "", "", ""], ["hoed", "", "", "", ""]]),
                        new AnswerRoom(2),
                    ],
                    [.. left.WorthSteps(), .. hoed.WorthSteps()])
                {
                    Remark = "By the table, and before anything that it does not know: gaps in the stand that is left, weeds, how well the replanted field stands, the calendar of the rest of the farm.",
                },
                .. isFirst ? [] : Further(left, terms, delay, n),
            ],
            Wrong = HeldAgainstTheBest(left, terms),
            Truths =
            [
                new("Stand left as it is, thousand plants per acre", Seeds * share, pairs.Average(pair => pair.Control.Exact)),
                new("Hoed less left as it is, thousand plants per acre", Seeds * HoeGain, pairs.Average(pair => (pair.Treated - pair.Control).Exact)),
            ],
            Drawn = string.Create(CultureInfo.InvariantCulture, $"Each seed of {Seeds} came through the crust with a chance of {share:0.000} on average, {HoeGain:0.00} more where it was hoed; the chance changes from pair to pair. What the two fields would have yielded nobody drew: the table is all this sheet knows of that."),
            Sources =
            [
                $"{StandResponse.Source}.",
                "Student 1908, The probable error of a mean, Biometrika 6:1-25.",
            ],
            Cautions = [new Note(NoteWeight.Doubt, "A second opinion", StandResponse.Caution)],
            Files = Trial(pairs, strips, terms),
        };
    }

    private static IEnumerable<Question> Further(Choice left, Case terms, int delay, int n)
    {
        var (before, after) = (terms.Replanted, Dates.First(date => date > terms.Replanted));
        var (from, to) = (Entries[(before, (int)terms.ReplantStand.Written)], Entries[(after, (int)terms.ReplantStand.Written)]);
        var gap = after.DayNumber - before.DayNumber;
        yield return new(
            "If it rains: what percent would the replanted field reach on the later day, going straight from the row above to the row below? One decimal.",
            [new AnswerRoom(1, "replanted later, %")],
            [KeyStep.Of("later", "Replanted later, %", string.Create(CultureInfo.InvariantCulture, $"{from} + ({to} − {from}) × {delay} ÷ {gap}"), (from + ((Rounded)((to - from) * delay) / gap)).To(1))]);
        var spread = left.Spread;
        yield return new(
            "How well is the stand known that was left as it is? With the mean to two decimals, take it from each count, square, add; divide by the number of pairs less one; take the root; divide by the root of the number of pairs. Two decimals at each step.",
            [new AnswerRoom(3, "mean", "sum of squares", "variance"), new AnswerRoom(0, "standard deviation", "root of the number of pairs", "standard error")],
            [KeyStep.Of("mean", "Mean", $"{spread.Sum.Text} ÷ {n}", spread.Mean), .. spread.Steps()]);
        var critical = CriticalTable.T(n - 1, Alpha);
        var half = (critical * spread.Error).To(1);
        var low = new Choice("low", "Lower end", left.Stand - half, terms);
        var high = new Choice("high", "Upper end", left.Stand + half, terms);
        yield return new(
            "The 90 % interval: the mean stand of question 1, less and plus the table's value of t at 0.10 times the standard error, to one decimal. Work the decision at both ends as in questions 2 and 4, with the first date of replanting. Is it the same at both?",
            [
                new AnswerRoom(1, "times the standard error"),
                new FormGrid([new("End", 0.8), new("Stand", 0.8), new("Kept, %", 0.8), new("Points gained", 1), new("Bushels", 1), new("After the cost, $", 1), new("Keep or replant", 1.2)], [["lower", "", "", "", "", "", ""], ["upper", "", "", "", "", "", ""]]),
                new AnswerRoom(2),
            ],
            [
                KeyStep.Of("half", "Half the interval", $"{critical.Text} × {spread.Error.Text}", half),
                KeyStep.Of("stand-low", "Lower end", $"{left.Stand.Text} − {half.Text}", low.Stand),
                KeyStep.Of("stand-high", "Upper end", $"{left.Stand.Text} + {half.Text}", high.Stand),
                low.KeptStep,
                .. low.WorthSteps(),
                high.KeptStep,
                .. high.WorthSteps(),
            ])
        {
            Remark = "The same at both ends: the counts suffice, and what is left in doubt is the table. Not the same: count more places before the planter is fetched.",
        };
    }

    private static WrongAnswer HeldAgainstTheBest(Choice left, Case terms)
    {
        var gain = 100 - left.Kept;
        var bushels = (gain * terms.Best / 100).To(1);
        return new(
            "The thin stand is held against the best",
            "A field that is replanted does not start again in April. What replanting can give is the table's figure for the later date, and that is what a stand must be held against. Held against the best nearly every thin stand looks worth replanting.",
            KeyStep.Of("wrong-gain", "Points of the wrong way", $"100 − {left.Kept.Text}", gain),
            KeyStep.Of("wrong-net", "After the cost, $", $"{bushels.Text} × {terms.Price.Text} − {terms.Cost.Text}", (bushels * terms.Price).To(2) - terms.Cost));
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data, double share)
    {
        var here = share + data.Between(-Patchy, Patchy);
        return (data.Binomial(Seeds, here), data.Binomial(Seeds, here + HoeGain));
    }

    private static DateOnly OfYear(DateOnly date) => new(Year, date.Month, date.Day);

    private static IReadOnlyList<ExerciseFile> Trial((Rounded Control, Rounded Treated)[] pairs, IReadOnlyList<InventedStrip> strips, Case terms)
    {
        var trial = new InventedTrial("A crust, a teaching sheet", "Does breaking the crust save the stand?", [("left", "Left as it is"), ("hoed", "Hoed")], strips) { PlantedOn = terms.Planted };
        return trial.Files(InventedTrial.Table(
            "stand-counts.csv",
            "strip,spot,date,length_ft,plants",
            trial.ByStrip(pairs).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Strip},1,{Counted:yyyy-MM-dd},{InventedTrial.ThousandthOfAnAcre},{each.Value.Written}"))));
    }

    /// <summary>Dates, prices and what a field can yield.</summary>
    private sealed record Case(DateOnly Planted, DateOnly Replanted, Rounded ReplantStand, Rounded Best, Rounded Cost, Rounded Price)
    {
        public Rounded After => Entries[(Replanted, (int)ReplantStand.Written)];

        public KeyStep AfterStep => KeyStep.Words("after", "Replanted, %", $"{NumberText.ShortDate(Replanted)}, {ReplantStand.Text} thousand", After.Text, After.Text);

        public static Case Drawn(InventedNumbers data) => new(
            new DateOnly(Year, 4, 15).AddDays(5 * data.Whole(1, 3)),
            new DateOnly(Year, 5, 10).AddDays(5 * data.Whole(1, 3)),
            2 * data.Whole(14, 16),
            data.Whole(180, 230),
            data.Whole(60, 110),
            Rounded.Given(0.05m * data.Whole(76, 96), 2));
    }

    /// <summary>One stand: kept, or replanted.</summary>
    private sealed class Choice
    {
        private readonly string id;
        private readonly string label;
        private readonly Case terms;

        public Choice(string id, string label, IEnumerable<Rounded> counts, Case terms)
            : this(id, label, new PencilSpread(counts), terms)
        {
        }

        public Choice(string id, string label, Rounded stand, Case terms)
        {
            (this.id, this.label, Stand, this.terms) = (id, label, stand, terms);
            (Kept, KeptWork) = Read(stand, terms.Planted);
        }

        private Choice(string id, string label, PencilSpread spread, Case terms)
            : this(id, label, (spread.Sum / spread.Count).To(1), terms) => Counts = spread;

        public Rounded Stand { get; }

        public Rounded Kept { get; }

        public PencilSpread Spread => Counts ?? throw new InvalidOperationException("The end of an interval has no spread of its own.");

        public KeyStep StandStep => KeyStep.Of($"stand-{id}", label, $"({Spread.Added}) ÷ {Spread.Count}", Stand);

        public KeyStep KeptStep => KeyStep.Of($"kept-{id}", $"{label}: kept, %", KeptWork, Kept);

        private PencilSpread? Counts { get; }

        private string KeptWork { get; }

        public IEnumerable<KeyStep> WorthSteps()
        {
            var gain = terms.After - Kept;
            var bushels = (gain * terms.Best / 100).To(1);
            var net = (bushels * terms.Price).To(2) - terms.Cost;
            yield return KeyStep.Of($"gain-{id}", $"{label}: points gained", $"{terms.After.Text} − {Kept.Text}", gain);
            yield return KeyStep.Of($"bushels-{id}", $"{label}: bushels", $"{gain.InSum} × {terms.Best.Text} ÷ 100", bushels);
            yield return KeyStep.Of($"net-{id}", $"{label}: after the cost, $", $"{bushels.InSum} × {terms.Price.Text} − {terms.Cost.Text}", net);
            yield return KeyStep.Comparison($"verdict-{id}", $"{label}: keep or replant", $"{net.Text} against 0", net, 0, "replant", "keep");
        }

        // On paper between the two stands around the rounded one; at full precision the table as the program reads it.
        private static (Rounded Kept, string Work) Read(Rounded stand, DateOnly planted)
        {
            var below = Stands.Last(each => each <= stand.Written && each < Stands[^1]);
            var above = Stands.First(each => each > below);
            var (from, to) = (Entries[(planted, below)], Entries[(planted, above)]);
            var exact = StandResponse.PercentAt(planted, PlantDensity.FromPerAcre(1000 * stand.Exact))
                ?? throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"A stand of {stand.Exact} thousand was found; the table goes from {Stands[0]} to {Stands[^1]}."));
            return (
                Rounded.Read(from + ((to - from) * (stand.Written - below) / (above - below)), exact, 1),
                string.Create(CultureInfo.InvariantCulture, $"{from} + ({to} − {from}) × ({stand.Text} − {below}) ÷ {above - below}"));
        }
    }
}
