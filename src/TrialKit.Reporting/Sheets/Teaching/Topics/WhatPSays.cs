using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>What a p of about 0.30 says and what it does not: beside the trial stand twenty others where nothing differs and twenty where something does.</summary>
/// <remarks>Wasserstein and Lazar 2016, Am. Stat. 70:129-133. Where nothing differs p is uniform, so that a share p of trials reaches it.</remarks>
internal static class WhatPSays
{
    private const double LeastP = 0.25;
    private const double MostP = 0.35;
    private const int Pairs = 6;
    private const int MorePairs = 12;
    private const double Deviation = 4;
    private const double SmallDeviation = 2;
    private const int Trials = 20;
    private const double Effect = 3;
    private const double Alpha = 0.10;
    private const decimal NotShownAbove = 0.10m;
    private const int Pays = 2;
    private const string Lists = "p of twenty trials in each of the two fields";
    private static readonly int[] Asked = [-4, -2, 0, 2, 4, 6, 8];

    public static ExerciseTopic Topic { get; } = new(
        "p-of-030",
        "What a p of 0.30 does and does not say",
        25,
        "one trial, and forty others whose truth is known, to count in",
        "a second trial with nearly the same p that says something else",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var pairs = DrawYields(data);
        var strips = InventedTrial.Laid(data, Pairs, "usual", "slow");
        var trial = Outcome.Of([.. pairs.Select(pair => (pair.Treated - pair.Control).Exact)]);
        var other = level == ExerciseLevel.First ? null : Within(() => Outcome.Drawn(data, MorePairs, 0, SmallDeviation));
        var nothing = Enumerable.Range(0, Trials).Select(_ => Outcome.Drawn(data, Pairs, 0, Deviation)).ToArray();
        var something = Enumerable.Range(0, Trials).Select(_ => Outcome.Drawn(data, Pairs, Effect, Deviation)).ToArray();
        return new()
        {
            Given =
            [
                new Paragraph($"A grower planted slower than usual in one strip of each of {NumberText.CountWord(Pairs).ToLowerInvariant()} pairs; a coin had said which. The table holds what came of it at harvest, slower less usual. The standard error was worked as on the sheet of the paired t. \"So speed makes no difference,\" says a neighbour who saw the p. Does it say that?{(other is null ? "" : " A second trial, on another farm, asked the same with more pairs on more even ground.")}"),
                new Table(
                    "What came of it, yield in bushels per acre",
                    [new("Trial"), new("Pairs", Alignment: ColumnAlignment.Right), new("Mean difference", Alignment: ColumnAlignment.Right), new("Standard error", Alignment: ColumnAlignment.Right), new("p", Alignment: ColumnAlignment.Right)],
                    [Row("A", trial), .. other is null ? [] : (TableRow[])[Row("B", other)]]),
                CriticalTable.OfT(other is null ? [Pairs - 1] : [Pairs - 1, MorePairs - 1]),
                new Paragraph($"And here are forty more trials of {NumberText.CountWord(Pairs).ToLowerInvariant()} pairs, on two fields whose truth is known because they are invented. In field N the two strips of a pair were treated alike. In field S one strip of each pair got something that brings {NumberText.Number(Effect, 0)} bushels, in truth, every time. The ground is as uneven as in trial A."),
                new Table(
                    Lists,
                    [.. Enumerable.Range(0, 2).SelectMany(_ => (TableColumn[])[new("Trial", Alignment: ColumnAlignment.Right), new("p, field N", Alignment: ColumnAlignment.Right), new("p, field S", Alignment: ColumnAlignment.Right)])],
                    [.. Enumerable.Range(0, Trials / 2).Select(row => TableRow.Of([.. Listed(row, nothing, something), .. Listed(row + (Trials / 2), nothing, something)]))]),
            ],
            Questions = [.. Reading(trial, ""), .. Counting(trial, nothing, something), .. Fitting(trial, ""), Statements(), .. other is null ? [] : Further(trial, other)],
            Wrong = OneLessP(trial, nothing, something),
            Truths =
            [
                new("Trial A: slower less usual, bu/ac", 0, trial.Mean.Exact),
                new("Field N: share of trials with p as small as that of trial A", trial.P.Exact, nothing.Count(each => each.P.Written <= trial.P.Written) / (double)Trials, 3),
                new("Field S: difference, bu/ac", Effect, something.Average(each => each.Mean.Exact)),
                .. other is null ? [] : (ExerciseTruth[])[new("Trial B: slower less usual, bu/ac", 0, other.Mean.Exact)],
            ],
            Drawn = $"All differences are normal, with a standard deviation of {NumberText.Number(Deviation, 0)} bushels in trial A and in both fields{(other is null ? "" : $" and of {NumberText.Number(SmallDeviation, 0)} in trial B")}. In truth speed made no difference. Trials were drawn until p came between {NumberText.Number(LeastP, 2)} and {NumberText.Number(MostP, 2)}; that favours neither direction.",
            Sources =
            [
                "Wasserstein & Lazar 2016, The ASA statement on p-values: context, process, and purpose, Am. Stat. 70:129-133.",
                "Altman & Bland 1995, Absence of evidence is not evidence of absence, BMJ 311:485.",
                "Student 1908, The probable error of a mean, Biometrika 6:1-25.",
            ],
            Files = Trial(pairs, strips),
        };
    }

    private static string[] Listed(int trial, Outcome[] nothing, Outcome[] something) => [NumberText.Count(trial + 1), nothing[trial].P.Text, something[trial].P.Text];

    private static TableRow Row(string name, Outcome outcome) => TableRow.Of(name, NumberText.Count(outcome.Pairs), outcome.Mean.Signed, outcome.Error.Text, outcome.P.Text);

    private static IEnumerable<Question> Reading(Outcome trial, string prefix)
    {
        var t = trial.T;
        var (written, exact) = CriticalTable.Bracket(t, trial.Pairs - 1);
        yield return new(
            $"{(prefix.Length == 0 ? "Trial A" : "Trial B")}: divide the mean difference by its standard error, to two decimals. That is t, with one degree of freedom less than there are pairs. What does the table of t say of p, and does that agree with the p printed?",
            [new AnswerRoom(1, "t", "p lies")],
            [
                KeyStep.Of($"{prefix}t", "t", $"{trial.Mean.Text} ÷ {trial.Error.Text}", t),
                KeyStep.Words($"{prefix}bracket", "p lies", $"t of {t.Size().Text} in the row of {trial.Pairs - 1}", written, exact),
            ]);
    }

    private static IEnumerable<Question> Counting(Outcome trial, Outcome[] nothing, Outcome[] something)
    {
        var reached = nothing.Count(each => each.P.Written <= trial.P.Written);
        yield return new(
            "Field N, where nothing differs: in how many of the twenty trials is p as small as that of trial A, or smaller? What share of the twenty is that, to two decimals? Hold it against the p of trial A.",
            [new AnswerRoom(1, "trials", "share of twenty")],
            [Share("share-nothing", "Share of field N", reached)])
        {
            Remark = "That is all p says: where nothing differs, this share of trials gives a difference as far out by luck. One list of twenty wobbles; put the lists of the class together, and the share comes near the p of each.",
        };
        var missed = something.Count(each => each.P.Written > trial.P.Written);
        var notShown = something.Count(each => each.P.Written > NotShownAbove);
        yield return new(
            "Field S, where something differs every time: in what share of the twenty trials is p larger than that of trial A? In what share is it above 0.10, so that a report at that level says \"not shown\"? Two decimals.",
            [new AnswerRoom(1, "larger than in trial A", "above 0.10")],
            [Share("share-larger", "Share larger", missed), Share("share-missed", "Share above 0.10", notShown)])
        {
            Remark = "A p like that of trial A comes where nothing differs and where something does. Six pairs on uneven ground miss a true difference of this size in about half of all trials.",
        };
    }

    private static KeyStep Share(string id, string label, int count) => KeyStep.Of(id, label, $"{NumberText.Count(count)} ÷ {Trials}", ((Rounded)count / Trials).To(2));

    private static IEnumerable<Question> Fitting(Outcome trial, string prefix)
    {
        var (low, high) = trial.Interval;
        yield return new(
            $"{(prefix.Length == 0 ? "Trial A" : "Trial B")}: the 90 % interval reaches from the mean less to the mean plus the table's value at 0.10 times the standard error, to two decimals. Which of the true differences −4, −2, 0, 2, 4, 6, 8 lie within it? Slower planting pays from 2 bushels on: does the trial rule out that it pays?",
            [new AnswerRoom(2, "times the standard error", "lower end", "upper end"), new AnswerRoom(0, "true differences that fit", "that it pays is")],
            [
                KeyStep.Of($"{prefix}half", "Half the interval", $"{trial.Critical.Text} × {trial.Error.Text}", trial.Half),
                KeyStep.Of($"{prefix}low", "Lower end", $"{trial.Mean.Text} − {trial.Half.Text}", low),
                KeyStep.Of($"{prefix}high", "Upper end", $"{trial.Mean.Text} + {trial.Half.Text}", high),
                KeyStep.Words($"{prefix}fits", "These fit", $"from {low.Text} to {high.Text}", Listed(value => value >= low.Written && value <= high.Written), Listed(value => value >= low.Exact && value <= high.Exact)),
                KeyStep.Comparison($"{prefix}pays", "That it pays is", $"upper end {high.Text} against {Pays}", high, Pays, "not ruled out", "ruled out"),
            ])
        {
            Remark = "Zero is among what fits; so is everything else in the interval. Read both ends and ask whether you would do the same at either.",
        };

        static string Listed(Func<int, bool> fits) => string.Join(", ", Asked.Where(fits).Select(NumberText.Count));
    }

    private static Question Statements() => new(
        "Right or wrong? Mark each, and write a reason for one that is wrong.",
        [
            new FormGrid(
                [new("Said of trial A", 5), new("Right", 0.6), new("Wrong", 0.7)],
                [
                    ["a. Where speed does nothing, a share p of trials is as far out.", "", ""],
                    ["b. The chance that speed does nothing is p.", "", ""],
                    ["c. The chance that slower planting is better is 1 less p.", "", ""],
                    ["d. Speed makes no difference.", "", ""],
                    ["e. What fits trial A is its interval; it tells no more.", "", ""],
                ]),
            new AnswerRoom(2),
        ],
        [])
    {
        Remark = "Right: a and e. b and c turn p round: p starts from nothing differing and cannot say how likely that start is. d takes not shown for shown to be nothing; field S shows how often that is wrong.",
    };

    private static IEnumerable<Question> Further(Outcome trial, Outcome other) =>
    [
        .. Reading(other, "b-"),
        .. Fitting(other, "b-"),
        new(
            "The p of both trials is nearly the same. Which of the two tells the grower more, and what?",
            [new AnswerRoom(3)],
            [])
        {
            Remark = $"Trial A leaves open everything from {trial.Interval.Low.Text} to {trial.Interval.High.Text}, trial B everything from {other.Interval.Low.Text} to {other.Interval.High.Text}. The shorter interval tells more. p by itself does not tell the two apart.",
        },
    ];

    private static WrongAnswer OneLessP(Outcome trial, Outcome[] nothing, Outcome[] something) => new(
        "One less p as the chance that there is a difference",
        "p is counted among trials where nothing differs. How many fields are such fields is not in it, so it cannot be turned round. Among the forty trials, those with a p near that of trial A come from field N and from field S; how many from each depends on how many trials each field had, which here was our choice.",
        KeyStep.Of("wrong-chance", "One less p", $"1 − {trial.P.Text}", Rounded.Given(1, 3) - trial.P),
        KeyStep.Words("wrong-near-nothing", "Field N, p from 0.200 to 0.400", "counted in the table", Near(nothing), Near(nothing)),
        KeyStep.Words("wrong-near-something", "Field S, p from 0.200 to 0.400", "counted in the table", Near(something), Near(something)));

    private static string Near(Outcome[] trials) => $"{NumberText.Count(trials.Count(each => each.P.Written is >= 0.2m and <= 0.4m))} of {Trials}";

    private static (Rounded Control, Rounded Treated)[] DrawYields(InventedNumbers data)
    {
        while (true)
        {
            var pairs = Enumerable.Range(0, Pairs).Select(_ => Pair(data)).ToArray();
            var differences = pairs.Select(pair => (pair.Treated - pair.Control).Exact).ToArray();
            if (differences.Distinct().Count() > 1 && IsWithin(Outcome.Of(differences)))
            {
                return pairs;
            }
        }
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data)
    {
        var usual = Rounded.Given((decimal)data.Between(170, 200), 1);
        return (usual, usual + Rounded.Given((decimal)data.Normal(0, Deviation), 1));
    }

    private static Outcome Within(Func<Outcome> draw)
    {
        while (true)
        {
            if (draw() is var outcome && IsWithin(outcome))
            {
                return outcome;
            }
        }
    }

    private static bool IsWithin(Outcome outcome) => outcome.P.Exact is >= LeastP and <= MostP;

    private static IReadOnlyList<ExerciseFile> Trial((Rounded Control, Rounded Treated)[] pairs, IReadOnlyList<InventedStrip> strips)
    {
        var trial = new InventedTrial("Planting speed, a teaching sheet", "Does planting slower change the yield?", [("usual", "Usual speed"), ("slow", "Slower")], strips);
        return trial.Files(InventedTrial.Harvest(trial.ByStrip(pairs)));
    }

    /// <summary>What is printed of a trial: pairs, mean difference, its standard error and p.</summary>
    private sealed record Outcome(int Pairs, Rounded Mean, Rounded Error, Rounded P)
    {
        private const int Places = 2;

        public Rounded T => (Mean / Error).To(Places);

        public Rounded Critical => CriticalTable.T(Pairs - 1, Alpha);

        public Rounded Half => (Critical * Error).To(Places);

        public (Rounded Low, Rounded High) Interval => (Mean - Half, Mean + Half);

        public static Outcome Drawn(InventedNumbers data, int pairs, double effect, double deviation) =>
            Of([.. Enumerable.Range(0, pairs).Select(_ => data.Normal(effect, deviation))]);

        public static Outcome Of(double[] differences)
        {
            var mean = differences.Average();
            var error = Math.Sqrt(differences.Sum(each => (each - mean) * (each - mean)) / (differences.Length - 1) / differences.Length);
            var p = PrintedTables.PofT(mean / error, differences.Length - 1).Value;
            return new(differences.Length, Rounded.Given((decimal)mean, Places), Rounded.Given((decimal)error, Places), Rounded.Given((decimal)p, 3));
        }
    }
}
