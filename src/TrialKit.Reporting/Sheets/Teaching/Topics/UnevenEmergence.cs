using System.Globalization;
using TrialKit.Emergence;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>Uneven emergence plant by plant, and what published figures would make of it, each elsewhere.</summary>
/// <remarks>
/// Single plants: Nemergut et al. 2021, Agron. J.: little loss within 3 days of the first, then 5 % of that plant's yield a day.
/// Whole stands: Liu et al. 2004, Crop Sci. 44:847-854; Nafziger, Carter and Graham 1991, Crop Sci. 31:811-815.
/// </remarks>
internal static class UnevenEmergence
{
    private const int Harmless = 3;
    private const int Near = 2;
    private const int PercentADay = 5;
    private const int EarliestLate = 4;
    private const int LatestLate = 8;
    private const int Pairs = 4;
    private const decimal SeedInches = 6.25m;

    // Liu et al. 2004, two leaves late; Nafziger et al. 1991, a quarter of the plants 10 to 12 days late.
    private const decimal OneInSix = 4;
    private const decimal OneInFour = 6.8m;
    private const string Usual = "";
    private const string Firm = "firm-";

    public static ExerciseTopic Topic { get; } = new(
        "uneven-emergence",
        "Uneven emergence, and what it may cost",
        30,
        "twelve plants along a tape: lags, shares, and three published figures",
        "two strips of sixteen plants, their difference, and a plant between its neighbours",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var isFirst = level == ExerciseLevel.First;
        var (n, usual, firm) = isFirst ? (12, (Least: 2, Most: 4), (Least: 0, Most: 2)) : (16, (Least: 4, Most: 6), (Least: 1, Most: 3));
        var strips = InventedTrial.Laid(data, Pairs, "usual", "firm");
        var rows = strips.Select(strip => Row.Drawn(data, n, strip.Treatment == "usual" ? usual : firm)).ToArray();
        var (first, second) = (RowOf("usual"), RowOf("firm"));
        Rounded yield = data.Whole(170, 230);
        var lateLags = (isFirst ? [first] : (Row[])[first, second]).SelectMany(row => row.Lags).Where(lag => lag >= EarliestLate).ToArray();
        return new()
        {
            Given =
            [
                new Paragraph($"Every morning somebody walked along a tape beside one row of corn and wrote down which plants had come up since the day before. The table has {(isFirst ? "the plants of one tape" : "the plants of two tapes: one where the row was closed as usual, one where the closing wheels pressed harder")}, in the order they stand. About {yield.Text} bushels per acre are usual here."),
                new Table(
                    "Days from planting to emergence, plant by plant along the tape",
                    [new("Plant", Alignment: ColumnAlignment.Right), new(isFirst ? "Day" : "Day, closed as usual", Alignment: ColumnAlignment.Right), .. isFirst ? [] : (TableColumn[])[new("Day, pressed harder", Alignment: ColumnAlignment.Right)]],
                    [.. Enumerable.Range(0, n).Select(plant => TableRow.Of([NumberText.Count(plant + 1), NumberText.Count(first.Days[plant]), .. isFirst ? [] : (string[])[NumberText.Count(second.Days[plant])]]))]),
                EvennessPart.Published("Published on late plants in corn, elsewhere", LatePlants.Published, "Other seasons, other hybrids, other stands."),
            ],
            Questions = [.. OnTape(first, second, n, isFirst), .. isFirst ? [] : (Question[])[Neighbours(first)], .. Cost(first, second, yield, isFirst)],
            Wrong = AllLost(first, yield),
            Truths =
            [
                new("Days behind the first, of a late plant", (EarliestLate + LatestLate) / 2.0, lateLags.Average()),
                isFirst
                    ? new("Late plants of twelve", (usual.Least + usual.Most) / 2.0, first.Late)
                    : new("Late plants of sixteen, closed as usual less pressed harder", (usual.Least + usual.Most - firm.Least - firm.Most) / 2.0, first.Late - second.Late),
            ],
            Drawn = string.Create(CultureInfo.InvariantCulture, $"One plant of each tape comes first, most others within two days of it. From {usual.Least} to {usual.Most} of {n} are late where the row was closed as usual{(isFirst ? "" : $", from {firm.Least} to {firm.Most} where it was pressed harder")}, each number equally likely; a late plant is {EarliestLate} to {LatestLate} days behind, each equally likely. No yield was drawn: what unevenness costs here nobody knows."),
            Sources = [.. LatePlants.Published.Select(finding => finding.Study).Distinct(StringComparer.Ordinal).Select(study => study.TrimEnd('.') + ".")],
            Cautions = [new Note(NoteWeight.Doubt, "A published figure is not this field's loss", "It was found elsewhere, in another season, with other hybrids and stands. It is there to compare with. What unevenness costs in a field is found by weighing strips.")],
            Files = Trial(strips, rows, n),
        };

        Row RowOf(string treatment) => rows[strips.Select((strip, i) => (strip, i)).First(each => each.strip.Block == 1 && each.strip.Treatment == treatment).i];
    }

    private static IEnumerable<Question> OnTape(Row first, Row second, int n, bool isFirst)
    {
        yield return new(
            isFirst
                ? "For each plant take its day less the day of the first plant of the tape: its lag. Add the lags; the mean to one decimal."
                : "For each plant take its day less the day of the first plant of its own tape: its lag. Add the lags of each tape; the means to one decimal.",
            [
                new FormGrid(
                    [new("Plant", 0.6), new(isFirst ? "Lag" : "Lag, as usual", 1.2), .. isFirst ? [] : (FormColumn[])[new("Lag, harder", 1.2)]],
                    [.. Enumerable.Range(1, n).Select(plant => (string[])[NumberText.Count(plant), "", .. isFirst ? [] : (string[])[""]])]),
                Boxes(isFirst, "sum of lags", "mean lag"),
            ],
            [.. first.LagSteps(Usual), .. isFirst ? [] : second.LagSteps(Firm)])
        {
            Remark = "A plant is dated by the walk that found it. With a walk every morning the delay is half a day on average for all and hardly moves a mean lag; with walks days apart it does, and no lag should be read from them.",
        };
        yield return new(
            "What percent of the plants came within two days of the first? What percent more than three days behind it? One decimal.",
            [Boxes(isFirst, "within two days, %", "more than three days, %")],
            [.. first.ShareSteps(Usual), .. isFirst ? [] : second.ShareSteps(Firm)])
        {
            Remark = "\"All up within 48 hours\" is common practice and has no source. The first plant of a longer tape is earlier: compare tapes of one length.",
        };
    }

    private static Question Neighbours(Row row)
    {
        var middle = Enumerable.Range(1, row.Days.Length - 2).MaxBy(plant => row.Days[plant]);
        return new(
            "Closed as usual: of the plants that have a neighbour on both sides take the latest (the first of them if there are several). How many days is it behind the mean of its two neighbours? One decimal.",
            [new AnswerRoom(1, "days behind its neighbours")],
            [
                KeyStep.Of(
                    "neighbours",
                    $"Plant {NumberText.Count(middle + 1)}",
                    string.Create(CultureInfo.InvariantCulture, $"{row.Days[middle]} − ({row.Days[middle - 1]} + {row.Days[middle + 1]}) ÷ 2"),
                    row.Days[middle] - ((Rounded)(row.Days[middle - 1] + row.Days[middle + 1]) / 2).To(1)),
            ])
        {
            Remark = "Neighbours take the light from a late plant, and they use what it leaves. The lag behind them says more of that plant than the lag behind the first of the tape.",
        };
    }

    private static IEnumerable<Question> Cost(Row first, Row second, Rounded yield, bool isFirst)
    {
        yield return new(
            "The study of single plants: little loss within three days, then 5 % of that plant's yield a day. For each plant that is more than three days behind take (lag − 3) × 5 %. Add these, and divide by the number of all plants: percent of the row, to one decimal.",
            [new AnswerRoom(1), Boxes(isFirst, "sum, %", "of the row, %")],
            [.. first.LossSteps(Usual), .. isFirst ? [] : second.LossSteps(Firm)])
        {
            Remark = "Neighbours of a late plant may yield more; the figure leaves that out. It is rather too large for the row.",
        };
        var single = (yield * first.Loss / 100).To(1);
        var (sixth, quarter) = ((yield * Rounded.Given(OneInSix, 0) / 100).To(1), (yield * Rounded.Given(OneInFour, 1) / 100).To(1));
        Rounded[] all = [single, sixth, quarter];
        yield return new(
            $"{(isFirst ? "In" : "Closed as usual, in")} bushels per acre, to one decimal, with the usual yield: (a) by the percent of the row that you found; (b) by Liu et al., one plant in six two leaves late; (c) by Nafziger et al., a quarter of the plants 10 to 12 days late. From where to where do the three reach?",
            [new AnswerRoom(2, "(a)", "(b)", "(c)"), new AnswerRoom(0, "smallest", "largest")],
            [
                KeyStep.Of("single", "(a) single plants", $"{yield.Text} × {first.Loss.Text} ÷ 100", single),
                KeyStep.Of("sixth", "(b) one in six", $"{yield.Text} × {OneInSix.ToString(CultureInfo.InvariantCulture)} ÷ 100", sixth),
                KeyStep.Of("quarter", "(c) a quarter", $"{yield.Text} × {OneInFour.ToString(CultureInfo.InvariantCulture)} ÷ 100", quarter),
                KeyStep.Of("smallest", "Smallest", "of the three", all.Aggregate(Rounded.Smaller)),
                KeyStep.Of("largest", "Largest", "of the three", all.Aggregate(Rounded.Larger)),
            ])
        {
            Remark = "Three figures from three places. None was found with plants that were as late, and as many, as these.",
        };
        if (!isFirst)
        {
            var gain = first.Loss - second.Loss;
            yield return new(
                "By the study of single plants: how much less is lost where the row was pressed harder, in percent of the row and in bushels per acre, to one decimal each?",
                [new AnswerRoom(1, "percent of the row", "bushels per acre")],
                [
                    KeyStep.Of("gain", "Percent of the row", $"{first.Loss.Text} − {second.Loss.Text}", gain),
                    KeyStep.Of("gain-bushels", "Bushels per acre", $"{yield.Text} × {gain.InSum} ÷ 100", (yield * gain / 100).To(1)),
                ])
            {
                Remark = "Two tapes are one pair of strips: what differs between them may be the ground as well as the wheels. And no yield was weighed.",
            };
        }

        yield return new(
            "Name two reasons why none of these figures is the loss of this field. What would tell it?",
            [new AnswerRoom(4)],
            [])
        {
            Remark = "Another season, hybrid and stand; plants that were late by another amount; neighbours that make up for a part. Pairs of strips, one even and one not, weighed at harvest, would tell.",
        };
    }

    private static Block Boxes(bool isFirst, params IReadOnlyList<string> answers) => isFirst
        ? new AnswerRoom(0, answers)
        : new FormGrid([new("Tape", 0.8), .. answers.Select(answer => new FormColumn(answer, 1.2))], [["as usual", .. answers.Select(_ => "")], ["harder", .. answers.Select(_ => "")]]);

    private static WrongAnswer AllLost(Row row, Rounded yield) => new(
        "The late plants are counted as lost",
        "A late plant is not a missing plant. It yields less than the others, how much less depends on how late it is, and its neighbours use a part of what it leaves. \"A plant two leaves behind is a weed\" is a saying, not a finding; Nafziger et al. reject it.",
        KeyStep.Of("wrong-bushels", "Bushels per acre of the wrong way", $"{yield.Text} × {row.LatePercent.Text} ÷ 100", (yield * row.LatePercent / 100).To(1)));

    private static IReadOnlyList<ExerciseFile> Trial(IReadOnlyList<InventedStrip> strips, Row[] rows, int n)
    {
        // At 34,000 seeds per acre in rows 30 inches apart there are 1.95 seeds to the foot.
        var feet = n == 12 ? "6.5" : "8.6";
        var counted = InventedTrial.Planted.AddDays(28);
        return new InventedTrial("Closing wheels, a teaching sheet", "Do plants come up more evenly when the closing wheels press harder?", [("usual", "As usual"), ("firm", "Pressed harder")], strips).Files(
            InventedTrial.Table("stand-counts.csv", "strip,spot,date,length_ft,plants", strips.Select(strip => string.Create(CultureInfo.InvariantCulture, $"{strip.Name},A,{counted:yyyy-MM-dd},{feet},{n}"))),
            InventedTrial.Table(
                "emergence.csv",
                "strip,spot,date,plants,length_ft",
                strips.Zip(rows).SelectMany(each => each.Second.Mornings.Select(day => string.Create(CultureInfo.InvariantCulture, $"{each.First.Name},A,{InventedTrial.Planted.AddDays(day):yyyy-MM-dd} 08:00,{each.Second.UpBy(day)},{feet}")))),
            InventedTrial.Table(
                "plants.csv",
                "strip,spot,plant,position_in,first_seen",
                strips.Zip(rows).SelectMany(each => each.Second.Days.Select((day, plant) => string.Create(CultureInfo.InvariantCulture, $"{each.First.Name},A,{plant + 1},{SeedInches * (plant + 1)},{InventedTrial.Planted.AddDays(day):yyyy-MM-dd} 08:00")))));
    }

    /// <summary>The plants of one tape: days from planting, in order.</summary>
    private sealed record Row(int[] Days)
    {
        public int[] Lags { get; } = [.. Days.Select(day => day - Days.Min())];

        /// <summary>The mornings of the walks: from the day before the first plant to that of the last.</summary>
        public IEnumerable<int> Mornings => Enumerable.Range(Days.Min() - 1, Days.Max() - Days.Min() + 2);

        public int Late => Lags.Count(lag => lag > Harmless);

        public Rounded LatePercent => Percent(Late);

        public Rounded Loss => ((Rounded)Points / Days.Length).To(1);

        private int Points => Lags.Sum(lag => PercentADay * Math.Max(0, lag - Harmless));

        public int UpBy(int day) => Days.Count(each => each <= day);

        public static Row Drawn(InventedNumbers data, int n, (int Least, int Most) late)
        {
            var start = data.Whole(7, 11);
            var count = data.Whole(late.Least, late.Most);
            int[] lags = [0, .. Enumerable.Range(1, n - 1).Select(plant => plant <= count ? data.Whole(EarliestLate, LatestLate) : data.Whole(0, Near))];
            return new([.. data.Shuffled(lags).Select(lag => start + lag)]);
        }

        public IEnumerable<KeyStep> LagSteps(string prefix) =>
        [
            .. Lags.Select((lag, plant) => KeyStep.Of($"{prefix}lag{plant + 1}", Named(prefix, $"plant {plant + 1}"), string.Create(CultureInfo.InvariantCulture, $"{Days[plant]} − {Days.Min()}"), lag)),
            KeyStep.Of($"{prefix}sum", Named(prefix, "sum"), string.Join(" + ", Lags.Select(NumberText.Count)), Lags.Sum()),
            KeyStep.Of($"{prefix}mean", Named(prefix, "mean lag"), string.Create(CultureInfo.InvariantCulture, $"{Lags.Sum()} ÷ {Days.Length}"), ((Rounded)Lags.Sum() / Days.Length).To(1)),
        ];

        public IEnumerable<KeyStep> ShareSteps(string prefix)
        {
            var within = Lags.Count(lag => lag <= Near);
            yield return KeyStep.Of($"{prefix}within", Named(prefix, "within two days, %"), Work(within), Percent(within));
            yield return KeyStep.Of($"{prefix}late", Named(prefix, "more than three days, %"), Work(Late), LatePercent);
        }

        public IEnumerable<KeyStep> LossSteps(string prefix)
        {
            var late = Lags.Where(lag => lag > Harmless).Select(lag => string.Create(CultureInfo.InvariantCulture, $"({lag} − {Harmless}) × {PercentADay}"));
            yield return KeyStep.Of($"{prefix}points", Named(prefix, "sum, %"), string.Join(" + ", late), Points);
            yield return KeyStep.Of($"{prefix}loss", Named(prefix, "of the row, %"), string.Create(CultureInfo.InvariantCulture, $"{Points} ÷ {Days.Length}"), Loss);
        }

        private static string Named(string prefix, string what) => prefix.Length == 0 ? char.ToUpperInvariant(what[0]) + what[1..] : $"Harder: {what}";

        private Rounded Percent(int plants) => (100 * (Rounded)plants / Days.Length).To(1);

        private string Work(int plants) => string.Create(CultureInfo.InvariantCulture, $"100 × {plants} ÷ {Days.Length}");
    }
}
