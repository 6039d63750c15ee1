using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>The paired t worked with a pencil: differences, their mean and spread, standard error, t, interval.</summary>
/// <remarks>Student 1908, Biometrika 6:1-25.</remarks>
internal static class PairedTByHand
{
    private const double Effect = 2;
    private const int Seeds = 34;
    private const double UsualShare = 0.85;
    private const double Alpha = 0.10;

    public static ExerciseTopic Topic { get; } = new(
        "paired-t",
        "Paired t by hand",
        30,
        "six pairs, a table for the working, up to t and the verdict",
        "eight pairs, and the interval, the bracket of p and the answer in words",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var n = level == ExerciseLevel.First ? 6 : 8;
        var pairs = Draw(data, n);
        var strips = InventedTrial.Laid(data, n, "none", "chains");
        var d = pairs.Select(pair => pair.Treated - pair.Control).ToArray();
        var spread = new PencilSpread(d);
        var (mean, error) = (spread.Mean, spread.Error);
        var t = (mean / error).To(2);
        var critical = CriticalTable.T(n - 1, Alpha);
        var half = (critical * error).To(2);
        return new()
        {
            Given =
            [
                new Paragraph($"A grower hung drag chains behind the closing wheels on one planter pass and left them off the next, {NumberText.CountWord(n).ToLowerInvariant()} times across a field; a coin said which came first. In June the stand of each strip was counted along 17 ft 5 in of row. That is a thousandth of an acre at 30-inch rows, so a count is thousands of plants per acre. Do chains change the stand?"),
                new Table(
                    "Plants in a thousandth of an acre",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("No chains", Alignment: ColumnAlignment.Right), new("Chains", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
                CriticalTable.OfT(n - 2, n - 1, n, (2 * n) - 2),
            ],
            Questions =
            [
                new(
                    "For each pair, take the count with chains less the count without. The pair is one observation: from here on there is one number a pair. Write the differences with their signs into the table.",
                    [new FormGrid(
                        [new("Pair", 0.6), new("Difference d", 1.2), new("d less the mean", 1.3), new("Squared", 1.2)],
                        [.. Enumerable.Range(1, n).Select(pair => (string[])[NumberText.Count(pair), "", "", ""]), ["Sum", "", "", ""]])],
                    [.. d.Select((each, i) => KeyStep.Of($"d{i + 1}", $"d of pair {i + 1}", $"{pairs[i].Treated.Text} − {pairs[i].Control.Text}", each))]),
                new(
                    "Add the differences and divide by the number of pairs. Round the mean to two decimals.",
                    [new AnswerRoom(1, "sum", "mean difference")],
                    [
                        KeyStep.Of("sum", "Sum", spread.Added, spread.Sum),
                        KeyStep.Of("mean", "Mean difference", $"{spread.Sum.Text} ÷ {n}", mean),
                    ]),
                new(
                    "Take the mean from each difference and square what is left, to two decimals each, in the table. Add the squares.",
                    [new AnswerRoom(0, "sum of squares")],
                    [.. spread.Squares()]),
                new(
                    "Divide by the number of pairs less one: the variance of the differences. Its root is their standard deviation. Divide that by the root of the number of pairs: the standard error of the mean. Two decimals at each step.",
                    [new AnswerRoom(2, "variance", "standard deviation", "root of the number of pairs", "standard error")],
                    [.. spread.ToError()]),
                new(
                    "t is the mean divided by its standard error, to two decimals. Its degrees of freedom are the number of pairs less one.",
                    [new AnswerRoom(1, "t", "degrees of freedom")],
                    [
                        KeyStep.Of("t", "t", $"{mean.Text} ÷ {error.Text}", t),
                        KeyStep.Of("df", "Degrees of freedom", $"{n} − 1", (Rounded)n - 1),
                    ]),
                new(
                    "The grower said beforehand that one false alarm in ten is a fair price for something as cheap as chains. Find the value of t in the table at 0.10 in your row. Is a difference shown at that level?",
                    [new AnswerRoom(1, "value of the table", "shown or not shown")],
                    [
                        KeyStep.Of("critical", "Value of the table", $"{n - 1} degrees of freedom, 0.10", critical),
                        KeyStep.Comparison("verdict", "Shown?", $"{t.Size().Text} against {critical.Text}", t.Size(), critical, "shown", "not shown"),
                    ])
                {
                    Remark = "Not shown is no showing of no difference: it says that this trial could not tell the two apart.",
                },
                .. level == ExerciseLevel.First ? [] : Further(mean, error, t, critical, half, n),
            ],
            Wrong = Unpaired(pairs, mean, n),
            Truths = [new("Chains less none, thousand plants per acre", Effect, d.Average(each => each.Exact))],
            Drawn = $"Each seed of {Seeds} in a thousandth of an acre came up with a chance that changes from pair to pair and is higher with chains by the same amount in every pair: {NumberText.Number(Effect, 1)} thousand plants per acre. One field's differences scatter around that.",
            Sources =
            [
                "Student 1908, The probable error of a mean, Biometrika 6:1-25.",
                "Snedecor & Cochran 1989, Statistical Methods, 8th ed., chapter 6, on paired samples.",
            ],
            Files = Trial(pairs, strips),
        };
    }

    private static IEnumerable<Question> Further(Rounded mean, Rounded error, Rounded t, Rounded critical, Rounded half, int n)
    {
        var bracket = CriticalTable.Bracket(t, n - 1);
        yield return new(
            "The 90 % interval reaches from the mean less to the mean plus the table's value times the standard error, to two decimals. Say in one sentence what it tells the grower.",
            [new AnswerRoom(3, "times the standard error", "lower end", "upper end")],
            [
                KeyStep.Of("half", "Half the interval", $"{critical.Text} × {error.Text}", half),
                KeyStep.Of("low", "Lower end", $"{mean.Text} − {half.Text}", mean - half),
                KeyStep.Of("high", "Upper end", $"{mean.Text} + {half.Text}", mean + half),
            ])
        {
            Remark = "In words: true differences within the interval, in thousand plants per acre, go with these counts; those outside it do not go well with them.",
        };
        yield return new(
            "Between which two probabilities at the head of the table does your t fall? That is as near to p as a table gets.",
            [new AnswerRoom(1, "p lies")],
            [KeyStep.Words("bracket", "p lies", $"t of {t.Size().Text} in the row of {n - 1}", bracket.Written, bracket.Exact)]);
    }

    private static WrongAnswer Unpaired((Rounded Control, Rounded Treated)[] pairs, Rounded mean, int n)
    {
        var (with, without) = (Squares(pairs.Select(pair => pair.Treated)), Squares(pairs.Select(pair => pair.Control)));
        var error = ((with + without) / (n * (n - 1))).Root().To(2);
        return new(
            "All counts in two heaps, chains here and none there",
            $"Comparing two heaps of {n} with {(2 * n) - 2} degrees of freedom forgets which strips lay side by side. What the ground does to both strips of a pair then counts as chance. It may make the error larger or, by luck, smaller; the trial was laid out in pairs, so pairs are what is compared.",
            KeyStep.Of("wrong-with", "Sum of squares with chains", "each count less the mean of its heap, squared; two decimals", with),
            KeyStep.Of("wrong-without", "Sum of squares without", "the same", without),
            KeyStep.Of("wrong-error", "Standard error", $"√(({with.Text} + {without.Text}) ÷ ({n} × {n - 1}))", error),
            KeyStep.Of("wrong-t", "t of the wrong way", $"{mean.Text} ÷ {error.Text}", (mean / error).To(2)));
    }

    private static Rounded Squares(IEnumerable<Rounded> counts)
    {
        Rounded[] all = [.. counts];
        var mean = (Rounded.Sum(all) / all.Length).To(2);
        return Rounded.Sum(all.Select(count => (count - mean).Square().To(2)));
    }

    // A spread is needed to divide by; differences that are all the same are drawn again, which favours neither side.
    private static (Rounded Control, Rounded Treated)[] Draw(InventedNumbers data, int n)
    {
        while (true)
        {
            var pairs = Enumerable.Range(0, n).Select(_ => Pair(data)).ToArray();
            if (pairs.Select(pair => (pair.Treated - pair.Control).Written).Distinct().Count() > 2)
            {
                return pairs;
            }
        }
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data)
    {
        var share = UsualShare + data.Between(-0.06, 0.04);
        return (data.Binomial(Seeds, share - (Effect / Seeds / 2)), data.Binomial(Seeds, share + (Effect / Seeds / 2)));
    }

    private static IReadOnlyList<ExerciseFile> Trial((Rounded Control, Rounded Treated)[] pairs, IReadOnlyList<InventedStrip> strips) =>
        new InventedTrial("Drag chains, a teaching sheet", "Do drag chains change the stand?", [("none", "No chains"), ("chains", "Drag chains")], strips)
            .Files(InventedTrial.StandCounts(strips.Select(strip => (strip.Name, 1, (int)(strip.Treatment == "none" ? pairs[strip.Block - 1].Control : pairs[strip.Block - 1].Treated).Written))));
}
