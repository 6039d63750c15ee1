using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>What a difference of yield must be to pay for its cost, and the chance that the true difference is above that.</summary>
/// <remarks>
/// Break-even is net added cost over net price; the chance is the lower tail of t at (mean - break-even) / standard error:
/// the paired form of Munkvold and others 2001, Phytopathology 91:477-484.
/// </remarks>
internal static class BreakEvenAndChance
{
    private const double Effect = 5;
    private const double Deviation = 6;
    private const double FarthestMean = 1.5;
    private const double LeastSpread = 0.75;
    private const double Alpha = 0.10;
    private const int Places = 2;
    private const int TableRows = 11;
    private const int TableBlocks = 5;

    public static ExerciseTopic Topic { get; } = new(
        "break-even",
        "Break-even, and the chance that it pays",
        30,
        "six pairs of yields with their standard error given, up to the chance that it pays",
        "eight pairs, the standard error by hand, a margin, and what the interval is worth",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var isFirst = level == ExerciseLevel.First;
        var n = isFirst ? 6 : 8;
        var pairs = Draw(data, n);
        var strips = InventedTrial.Laid(data, n, "none", "fungicide");
        var d = pairs.Select(pair => pair.Treated - pair.Control).ToArray();
        var spread = new PencilSpread(d);
        var error = isFirst ? Rounded.Given((decimal)spread.Error.Exact, Places) : spread.Error;
        var money = Money.Drawn(data);
        var chances = new ChanceTable(n - 1);
        var worth = (spread.Mean * money.NetPrice).To(Places) - money.Cost;
        var pays = chances.Above(spread.Mean, error, money.BreakEven);
        return new()
        {
            Given =
            [
                new Paragraph($"A grower sprayed a fungicide in one strip of each of {NumberText.CountWord(n).ToLowerInvariant()} pairs; a coin had said which. The strips were weighed. Per acre the product costs ${money.Product.Text} and the pass ${money.Pass.Text}; a scouting trip of ${money.Saved.Text} is no longer made. Corn sells at ${money.Price.Text} a bushel, and hauling and drying of each bushel cost ${money.Hauling.Text} and ${money.Drying.Text}.{(isFirst ? $" The standard error of the mean difference, worked as on the sheet of the paired t, is {error.Text} bushels per acre." : "")}"),
                new Table(
                    "Yield, bushels per acre",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("No fungicide", Alignment: ColumnAlignment.Right), new("Fungicide", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
                chances.Printed,
                new Paragraph("Below zero turn the sign of t and take the chance from 1.", TextSize.Small),
            ],
            Questions =
            [
                new(
                    "What does the fungicide cost per acre, net of what is saved? What is a bushel worth, net of hauling and drying? Their quotient is the break-even response: the bushels per acre that pay for it, to two decimals.",
                    [new AnswerRoom(1, "net added cost, $/ac", "net price, $/bu", "break-even, bu/ac")],
                    [
                        KeyStep.Of("cost", "Net added cost, $/ac", $"{money.Product.Text} + {money.Pass.Text} − {money.Saved.Text}", money.Cost),
                        KeyStep.Of("net-price", "Net price, $/bu", $"{money.Price.Text} − {money.Hauling.Text} − {money.Drying.Text}", money.NetPrice),
                        KeyStep.Of("break-even", "Break-even, bu/ac", $"{money.Cost.Text} ÷ {money.NetPrice.Text}", money.BreakEven),
                    ]),
                new(
                    "Take each pair's difference, fungicide less none, and their mean, to two decimals.",
                    [new FormGrid([new("Pair", 0.6), new("Difference d", 1.2), .. isFirst ? [] : (FormColumn[])[new("d less the mean", 1.3), new("Squared", 1.2)]], [.. Enumerable.Range(1, n).Select(pair => (string[])[NumberText.Count(pair), "", .. isFirst ? [] : (string[])["", ""]])]), new AnswerRoom(0, "sum", "mean difference")],
                    [
                        .. d.Select((each, i) => KeyStep.Of($"d{i + 1}", $"d of pair {i + 1}", $"{pairs[i].Treated.Text} − {pairs[i].Control.Text}", each)),
                        KeyStep.Of("sum", "Sum", spread.Added, spread.Sum),
                        KeyStep.Of("mean", "Mean difference", $"{spread.Sum.Text} ÷ {n}", spread.Mean),
                    ]),
                .. isFirst ? [] : (Question[])[Spread(spread)],
                new(
                    "What is the mean difference worth per acre, after the cost? Mean times net price, less net added cost, to two decimals.",
                    [new AnswerRoom(1, "worth, $/ac")],
                    [KeyStep.Of("worth", "Worth, $/ac", $"{spread.Mean.Text} × {money.NetPrice.Text} − {money.Cost.Text}", worth)]),
                new(
                    "How sure is that? t is the mean less the break-even response, divided by the standard error, to two decimals. Find the t nearest to yours in the table of chances: the chance that the true difference is above break-even, in whole percents.",
                    [new AnswerRoom(1, "t", "chance that it pays, %")],
                    [
                        KeyStep.Of("t", "t", $"({spread.Mean.Text} − {money.BreakEven.Text}) ÷ {error.Text}", pays.T),
                        KeyStep.Of("pays", "Chance that it pays, %", pays.Work, pays.Percent),
                    ])
                {
                    Remark = "This field, this year, this price; and no other knowledge than these strips. The chance that it pays and \"a difference was shown\" answer two questions: the one asks for more than the cost, the other for anything but nothing.",
                },
                .. isFirst ? [] : Further(spread, money, chances, n),
            ],
            Wrong = AboveZero(spread, error, chances),
            Truths = [new("Fungicide less none, bu/ac", Effect, d.Average(each => each.Exact))],
            Drawn = string.Create(CultureInfo.InvariantCulture, $"Pair differences are normal with mean {Effect} and standard deviation {Deviation} bushels per acre. Trials whose mean fell more than {FarthestMean} standard errors to either side of the truth, or whose spread was below {LeastSpread} of the true one, were drawn again: so far out the tables of this sheet do not reach. With a true {Effect} bushels it pays when break-even lies below {Effect}; this sheet's truth is {(money.BreakEven.Exact < Effect ? "that it pays" : "that it does not pay")}."),
            Sources =
            [
                "Munkvold and others 2001, Phytopathology 91:477-484: the chance that a treatment pays; here in its paired form.",
                "Partial budgets as in extension forms: what is added and what is saved, per acre.",
                "Student 1908, The probable error of a mean, Biometrika 6:1-25.",
            ],
            Files = Trial(pairs, strips, money),
        };
    }

    private static Question Spread(PencilSpread spread) => new(
        "The spread: take the mean from each difference, square, add; divide by the number of pairs less one; take the root; divide by the root of the number of pairs. Two decimals at each step.",
        [new AnswerRoom(1, "sum of squares", "variance", "standard deviation"), new AnswerRoom(0, "root of the number of pairs", "standard error")],
        [.. spread.Steps()]);

    private static IEnumerable<Question> Further(PencilSpread spread, Money money, ChanceTable chances, int n)
    {
        var wanted = (money.BreakEven * Rounded.Given(1.25m, Places)).To(Places);
        var margin = chances.Above(spread.Mean, spread.Error, wanted);
        yield return new(
            "The grower wants a quarter more than the cost back, for the trouble and the risk: 1.25 times break-even, to two decimals. What is the chance that the true difference is above that? t to two decimals, whole percents.",
            [new AnswerRoom(1, "1.25 times break-even", "t", "chance with the margin, %")],
            [
                KeyStep.Of("margin", "1.25 times break-even", $"1.25 × {money.BreakEven.Text}", wanted),
                KeyStep.Of("margin-t", "t", $"({spread.Mean.Text} − {wanted.Text}) ÷ {spread.Error.Text}", margin.T),
                KeyStep.Of("margin-pays", "Chance with the margin, %", margin.Work, margin.Percent),
            ]);
        var critical = CriticalTable.T(n - 1, Alpha);
        var half = (critical * spread.Error).To(Places);
        var (low, high) = (spread.Mean - half, spread.Mean + half);
        yield return new(
            "The 90 % interval of the difference: mean less and plus the table's value of t at 0.10 times the standard error. What are its two ends worth per acre after the cost? Two decimals. Would you spray at either end?",
            [
                CriticalTable.OfT(n - 2, n - 1, n),
                new FormGrid([new("End", 0.8), new("Difference, bu/ac", 1.2), new("Worth after the cost, $/ac", 1.4)], [["lower", "", ""], ["upper", "", ""]]),
                new AnswerRoom(2, "t times the standard error"),
            ],
            [
                KeyStep.Of("half", "Half the interval", $"{critical.Text} × {spread.Error.Text}", half),
                KeyStep.Of("low", "Lower end, bu/ac", $"{spread.Mean.Text} − {half.Text}", low),
                KeyStep.Of("high", "Upper end, bu/ac", $"{spread.Mean.Text} + {half.Text}", high),
                KeyStep.Of("worth-low", "Worth there, $/ac", $"{low.Text} × {money.NetPrice.Text} − {money.Cost.Text}", (low * money.NetPrice).To(Places) - money.Cost),
                KeyStep.Of("worth-high", "Worth there, $/ac", $"{high.Text} × {money.NetPrice.Text} − {money.Cost.Text}", (high * money.NetPrice).To(Places) - money.Cost),
            ])
        {
            Remark = "Where one end is a loss and the other a gain, the trial has not told; the chance says how the weight lies between them. Where both ends agree, so does the decision.",
        };
    }

    private static WrongAnswer AboveZero(PencilSpread spread, Rounded error, ChanceTable chances)
    {
        var zero = chances.Above(spread.Mean, error, 0);
        return new(
            "The chance of a gain is taken for the chance that it pays",
            "Left out is the cost: t was taken against zero. What comes out is the chance that there is more grain, which is larger than the chance that the grain pays for the fungicide. The same mistake is made with p: a small p says that something differs, and nothing of what it is worth.",
            KeyStep.Of("wrong-t", "t against zero", $"{spread.Mean.Text} ÷ {error.Text}", zero.T),
            KeyStep.Of("wrong-pays", "Chance of any gain, %", zero.Work, zero.Percent));
    }

    // What lies too far out for the printed table is drawn again. The window of the mean reaches as far to either side of the truth; the spread does not depend on the mean.
    private static (Rounded Control, Rounded Treated)[] Draw(InventedNumbers data, int n)
    {
        while (true)
        {
            var pairs = Enumerable.Range(0, n).Select(_ => Pair(data)).ToArray();
            var d = pairs.Select(pair => (pair.Treated - pair.Control).Exact).ToArray();
            var mean = d.Average();
            var deviation = Math.Sqrt(d.Sum(each => (each - mean) * (each - mean)) / (n - 1));
            if (Math.Abs(mean - Effect) <= FarthestMean * Deviation / Math.Sqrt(n) && deviation >= LeastSpread * Deviation)
            {
                return pairs;
            }
        }
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data)
    {
        var control = Rounded.Given((decimal)data.Between(165, 205), 1);
        return (control, control + Rounded.Given((decimal)data.Normal(Effect, Deviation), 1));
    }

    private static IReadOnlyList<ExerciseFile> Trial((Rounded Control, Rounded Treated)[] pairs, IReadOnlyList<InventedStrip> strips, Money money)
    {
        var trial = new InventedTrial("Fungicide, a teaching sheet", "Does the fungicide pay?", [("none", "No fungicide"), ("fungicide", "Fungicide")], strips)
        {
            MoreSettings = string.Create(CultureInfo.InvariantCulture, $"\n[money]\ngrain_price = \"{money.Price.Written} $/bu\"\nhauling = \"{money.Hauling.Written} $/bu\"\ndrying = \"{money.Drying.Written} $/bu\"\nmargin = \"25 %\"\n"),
            LastTreatment = string.Create(CultureInfo.InvariantCulture, $"cost = \"{(money.Product + money.Pass).Written} $/ac\"\nsaved = \"{money.Saved.Written} $/ac\"\n"),
        };
        return trial.Files(InventedTrial.Harvest(trial.ByStrip(pairs)));
    }

    /// <summary>Prices and costs, in dollars.</summary>
    private sealed record Money(Rounded Product, Rounded Pass, Rounded Saved, Rounded Price, Rounded Hauling, Rounded Drying)
    {
        private const decimal Step = 0.05m;

        public Rounded Cost => Product + Pass - Saved;

        public Rounded NetPrice => Price - Hauling - Drying;

        public Rounded BreakEven => (Cost / NetPrice).To(Places);

        public static Money Drawn(InventedNumbers data) => new(
            Dollars(data.Whole(180, 320)), Dollars(data.Whole(60, 120)), Dollars(data.Whole(20, 60)), Dollars(data.Whole(76, 104)), Dollars(data.Whole(2, 4)), Dollars(data.Whole(1, 3)));

        private static Rounded Dollars(int steps) => Rounded.Given(Step * steps, Places);
    }

    /// <summary>The lower tail of t in steps of a tenth, as it is printed on the sheet and read off it.</summary>
    private sealed class ChanceTable(int degrees)
    {
        public Table Printed => new(
            string.Create(CultureInfo.InvariantCulture, $"The chance that belongs to t, with {degrees} degrees of freedom"),
            [.. Enumerable.Range(0, TableBlocks).SelectMany(_ => (TableColumn[])[new("t", Alignment: ColumnAlignment.Right), new("Chance", Alignment: ColumnAlignment.Right)])],
            [.. Enumerable.Range(0, TableRows).Select(row => TableRow.Of([.. Enumerable.Range(0, TableBlocks).SelectMany(block => Cell(row + (TableRows * block)))]))]);

        public (Rounded T, Rounded Percent, string Work) Above(Rounded mean, Rounded error, Rounded value)
        {
            var t = ((mean - value) / error).To(Places);
            var tenths = (int)(10 * t.Size().To(1).Written);
            if (tenths >= TableRows * TableBlocks)
            {
                throw new InvalidOperationException($"A t of {t.Text} was found; the table of chances reaches to {(TableRows * TableBlocks) - 1} tenths.");
            }

            var read = Lower(tenths);
            var chance = Rounded.Read(t.Written < 0 ? 1 - read.Written : read.Written, Tail(t.Exact), 3);
            return (t, (100 * chance).To(0), t.Written < 0 ? $"1 − {read.Text} = {chance.Text}, at {t.Size().To(1).Text}" : $"{read.Text} in the table, at {t.Size().To(1).Text}");
        }

        private string[] Cell(int tenths) => [Rounded.Given(tenths / 10m, 1).Text, Lower(tenths).Text];

        private Rounded Lower(int tenths) => Rounded.Given((decimal)Tail(tenths / 10.0), 3);

        private double Tail(double t) => PrintedTables.PofT(t, degrees).Value / 2 is var outer && t < 0 ? outer : 1 - outer;
    }
}
