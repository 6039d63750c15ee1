using System.Globalization;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>How many pairs of strips a trial needs, from a field where all strips were treated alike.</summary>
/// <remarks>
/// The true difference shown with power P at level alpha is about (t of alpha, two tails + t of 2 (1 - P), two tails) s / sqrt(n), with n - 1 degrees of freedom:
/// Cochran and Cox 1957, Experimental Designs, section 2.21. The program's own count uses the noncentral t in its place.
/// </remarks>
internal static class HowManyStrips
{
    private const double Alpha = 0.10;
    private const double Power = 0.80;
    private const double StripDeviation = 4;
    private const double MeanYield = 185;
    private const int Fewest = 3;
    private const int Most = 24;
    private const int Places = 2;
    private static readonly int[] Tried = [4, 8, 16];

    public static ExerciseTopic Topic { get; } = new(
        "how-many-strips",
        "How many strips?",
        30,
        "the spread of six pairs that were treated alike, what trials of three sizes can show, and the size that is needed",
        "eight pairs, and the same in percent of the mean as the program asks for it",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var n = level == ExerciseLevel.First ? 6 : 8;
        var pairs = Draw(data, n);
        var strips = InventedTrial.Laid(data, n, "one", "two");
        var d = pairs.Select(pair => pair.Treated - pair.Control).ToArray();
        var squares = d.Select(each => each.Square().To(Places)).ToArray();
        var sum = Rounded.Sum(squares);
        var variance = (sum / n).To(Places);
        var deviation = variance.Root().To(Places);

        // What the grower wants to see is set beside the spread, so that the answer lies within the table.
        Rounded wanted = Math.Max(1, (int)Math.Round(data.Between(0.8, 1.3) * deviation.Exact, MidpointRounding.AwayFromZero));
        return new()
        {
            Given =
            [
                new Paragraph($"A grower thinks of trying a row cleaner next year and asks how many pairs of strips it takes. Last year the whole field was treated alike, and the combine weighed {NumberText.CountWord(n).ToLowerInvariant()} pairs of strips side by side. Whatever differs within a pair is what a trial in this field will have to be seen through."),
                new Paragraph($"The grower wants to see a true difference of {wanted.Text} bushels per acre with a chance of four in five, at the level of 0.10: one false alarm in ten when nothing differs."),
                new Table(
                    "Yield of strips that were treated alike, bushels per acre",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("One strip", Alignment: ColumnAlignment.Right), new("Its neighbour", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
                new Table(
                    "Student's t for a trial of so many pairs",
                    [.. Enumerable.Range(0, 2).SelectMany(_ => (TableColumn[])
                    [
                        new("Pairs", Alignment: ColumnAlignment.Right),
                        new("t, level", Alignment: ColumnAlignment.Right),
                        new("t, four in five", Alignment: ColumnAlignment.Right),
                        new("Root", Alignment: ColumnAlignment.Right),
                    ])],
                    [.. Enumerable.Range(Fewest, (Most - Fewest + 1) / 2).Select(count => TableRow.Of([.. Factors(count), .. Factors(count + ((Most - Fewest + 1) / 2))]))]),
                new Paragraph("The row of a number of pairs is that of one degree of freedom less. t, level: passed by |t| with a probability of 0.10 when there is no true difference. t, four in five: passed by t, on its one side, with a probability of 0.20. Root: of the number of pairs.", TextSize.Small),
            ],
            Questions =
            [
                new(
                    "For each pair take the neighbour less the one strip, and square it, to two decimals. Nothing was done to either strip, so the true difference is 0 and no mean is taken off.",
                    [
                        new FormGrid(
                            [new("Pair", 0.6), new("Difference d", 1.2), new("Squared", 1.2)],
                            [.. Enumerable.Range(1, n).Select(pair => (string[])[NumberText.Count(pair), "", ""]), ["Sum", "", ""]]),
                    ],
                    [
                        .. d.Select((each, i) => KeyStep.Of($"d{i + 1}", $"d of pair {i + 1}", $"{pairs[i].Treated.Text} − {pairs[i].Control.Text}", each)),
                        .. squares.Select((each, i) => KeyStep.Of($"square{i + 1}", $"Square of pair {i + 1}", $"{d[i].InSum}²", each)),
                        KeyStep.Of("squares", "Sum of squares", string.Join(" + ", squares.Select(each => each.Text)), sum),
                    ]),
                new(
                    "Divide the sum by the number of pairs: the variance of a difference. Its root is the standard deviation s. Two decimals each.",
                    [new AnswerRoom(1, "variance", "standard deviation s")],
                    [
                        KeyStep.Of("variance", "Variance", $"{sum.Text} ÷ {n}", variance),
                        KeyStep.Of("deviation", "Standard deviation", $"√{variance.Text}", deviation),
                    ]),
                new(
                    "A trial of some number of pairs shows, four times in five, a true difference of (t for the level + t for four in five) × s ÷ root of pairs. Work it out for three sizes of trial; round the product and the quotient to two decimals.",
                    [
                        new FormGrid(
                            [new("Pairs", 0.6), new("Sum of the two t", 1.2), new("times s", 1.2), new("divided by the root", 1.3)],
                            [.. Tried.Select(count => (string[])[NumberText.Count(count), "", "", ""])]),
                    ],
                    [.. Tried.Select(count => KeyStep.Of($"shown-with-{count}", $"With {count} pairs", Work(deviation, count), Shown(deviation, count)))])
                {
                    Remark = "Four times the pairs show about half the difference, and somewhat less than half, because t is smaller too.",
                },
                Needed(deviation, wanted),
                .. level == ExerciseLevel.First ? [] : Further(pairs, deviation, wanted, n),
            ],
            Wrong = LevelAlone(deviation, wanted),
            Truths =
            [
                new("Variance of a pair's difference, (bu/ac)²", 2 * StripDeviation * StripDeviation, d.Average(each => each.Exact * each.Exact)),
                new("Neighbour less one strip, bu/ac", 0, d.Average(each => each.Exact)),
            ],
            Drawn = $"Each strip scatters about its place in the field with a standard deviation of {NumberText.Number(StripDeviation, 0)} bushels per acre, so a difference of two has a variance of 2 × {NumberText.Number(StripDeviation, 0)}² = {NumberText.Number(2 * StripDeviation * StripDeviation, 0)}. A handful of pairs gives that variance only roughly, and the number of pairs needed with it.",
            Sources =
            [
                "Cochran & Cox 1957, Experimental Designs, 2nd ed., section 2.21, on the number of replications.",
                "Lenth 1989, Cumulative distribution function of the noncentral t distribution, Appl. Statist. 38:185-189, which the program uses in place of the sum of two t.",
            ],
            Files = Trial(pairs, strips),
        };
    }

    private static string[] Factors(int pairs) => [NumberText.Count(pairs), Level(pairs).Text, Chance(pairs).Text, Root(pairs).Text];

    private static Question Needed(Rounded deviation, Rounded wanted)
    {
        var (written, exact) = Enough(count => Shown(deviation, count), wanted);
        return new(
            "What is the fewest pairs with which the difference shown is no larger than what the grower wants to see? Try the sizes that you think come near, and write down the first that is enough.",
            [new AnswerRoom(5, "fewest pairs", "difference shown with them")],
            [
                KeyStep.Words("fewest", "Fewest pairs", $"the first of the table with {wanted.Text} or less{Before(deviation, written)}", NumberText.Count(written), NumberText.Count(exact)),
                KeyStep.Of("shown-fewest", "Shown with them", Work(deviation, written), Rounded.Read(Shown(deviation, written).Written, Shown(deviation, exact).Exact, Places)),
            ])
        {
            Remark = "More spots or a longer strip are cheaper than more pairs and do not replace them: the ground differs from strip to strip however well each is weighed.",
        };
    }

    private static string Before(Rounded deviation, int count) => count > Fewest ? $"; with {NumberText.Count(count - 1)} it is {Shown(deviation, count - 1).Text}" : "";

    private static IEnumerable<Question> Further((Rounded Control, Rounded Treated)[] pairs, Rounded deviation, Rounded wanted, int n)
    {
        var sum = Rounded.Sum(pairs.Select(pair => pair.Control + pair.Treated));
        var mean = (sum / (2 * n)).To(1);
        var root = ((Rounded)2).Root().To(Places);
        var strip = (deviation / root).To(Places);
        var cv = (100 * strip / mean).To(1);
        var percent = (100 * wanted / mean).To(1);
        var table = new ReplicateTable((double)cv.Written, 2, ConfidenceLevel.FromAlpha(Alpha), Power);
        var needed = table.Required((double)percent.Written);
        yield return new(
            "The program asks for percent. Add all strips and divide by their number: the mean yield, to one decimal. The spread of one strip is s divided by the root of 2, to two decimals; in percent of the mean it is the coefficient of variation, to one decimal. What is wanted in percent of the mean?",
            [new AnswerRoom(2, "mean yield", "spread of a strip"), new AnswerRoom(1, "coefficient of variation, %", "wanted, %")],
            [
                KeyStep.Of("mean", "Mean yield", $"{sum.Text} ÷ {2 * n}", mean),
                KeyStep.Of("strip", "Spread of a strip", $"{deviation.Text} ÷ {root.Text}", strip),
                KeyStep.Of("cv", "Coefficient of variation, %", $"100 × {strip.Text} ÷ {mean.Text}", cv),
                KeyStep.Of("wanted", "Wanted, %", $"100 × {wanted.Text} ÷ {mean.Text}", percent),
            ])
        {
            Remark = string.Create(CultureInfo.InvariantCulture, $"trialkit replicates --cv {cv.Written} --difference {percent.Written} says {needed} pairs. It uses the exact distribution; the sum of two t comes near it and asks for as many pairs or one more. Percents rounded to one decimal may move its count by another pair."),
        };
        yield return new(
            "With some number of pairs an exact test can give no p below 2 ÷ (2 × 2 × ... × 2), one 2 for each pair. How small can p be with the fewest pairs of question 4? Five decimals. With four pairs, can it come to 0.10?",
            [new AnswerRoom(1, "smallest p", "with four pairs")],
            [Smallest(deviation, wanted)])
        {
            Remark = "With four pairs the smallest is 2 ÷ 16 = 0.125: no result, however plain, comes to 0.10. Five pairs are the least for that level.",
        };
    }

    private static KeyStep Smallest(Rounded deviation, Rounded wanted)
    {
        var (written, exact) = Enough(count => Shown(deviation, count), wanted);
        return KeyStep.Of("p-smallest", "Smallest p", $"2 ÷ {NumberText.Count(1 << written)}", Rounded.Read(2m / (1 << written), 2.0 / (1 << exact), 5));
    }

    private static WrongAnswer LevelAlone(Rounded deviation, Rounded wanted)
    {
        var (written, exact) = Enough(Alone, wanted);
        return new(
            "Only t for the level is taken",
            "Then a true difference as large as the grower wants lies just at the edge of what is shown. Luck puts the trial's difference below the truth as often as above, so the trial misses it every other time. The second t is the room that luck needs.",
            KeyStep.Words("wrong-fewest", "Fewest pairs of the wrong way", $"the first with {wanted.Text} or less", NumberText.Count(written), NumberText.Count(exact)),
            KeyStep.Of("wrong-shown", "Shown every other time", $"{Level(written).Text} × {deviation.Text} ÷ {Root(written).Text}", Rounded.Read(Alone(written).Written, Alone(exact).Exact, Places)));

        Rounded Alone(int count) => ((Level(count) * deviation).To(Places) / Root(count)).To(Places);
    }

    private static (int Written, int Exact) Enough(Func<int, Rounded> shown, Rounded wanted) =>
    (
        Enumerable.Range(Fewest, Most - Fewest + 1).First(count => shown(count).Written <= wanted.Written),
        Enumerable.Range(Fewest, Most - Fewest + 1).First(count => shown(count).Exact <= wanted.Exact));

    private static Rounded Shown(Rounded deviation, int count) => (((Level(count) + Chance(count)) * deviation).To(Places) / Root(count)).To(Places);

    private static string Work(Rounded deviation, int count) => $"({Level(count).Text} + {Chance(count).Text}) × {deviation.Text} ÷ {Root(count).Text}";

    private static Rounded Level(int pairs) => CriticalTable.T(pairs - 1, Alpha);

    private static Rounded Chance(int pairs) => CriticalTable.T(pairs - 1, 2 * (1 - Power));

    private static Rounded Root(int pairs) => ((Rounded)pairs).Root().To(Places);

    private static (Rounded Control, Rounded Treated)[] Draw(InventedNumbers data, int n)
    {
        while (true)
        {
            var pairs = Enumerable.Range(0, n).Select(_ => Pair(data)).ToArray();

            // Pairs that all agree have no spread; they are drawn again.
            if (pairs.Any(pair => Math.Abs(pair.Treated.Written - pair.Control.Written) >= 1))
            {
                return pairs;
            }
        }
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data)
    {
        var place = data.Normal(MeanYield, 2 * StripDeviation);
        return (Strip(), Strip());

        Rounded Strip() => Rounded.Given((decimal)data.Normal(place, StripDeviation), 1);
    }

    private static IReadOnlyList<ExerciseFile> Trial((Rounded Control, Rounded Treated)[] pairs, IReadOnlyList<InventedStrip> strips)
    {
        var trial = new InventedTrial("Strips treated alike, a teaching sheet", "How much do neighbouring strips differ when nothing is done?", [("one", "One strip"), ("two", "Its neighbour")], strips);
        return trial.Files(InventedTrial.Harvest(trial.ByStrip(pairs)));
    }
}
