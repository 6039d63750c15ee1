using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>Degree-days of a few days by three methods: the simple average above 50, corn's 86/50, and a triangle with a flat top at 86 F.</summary>
/// <remarks>
/// McMaster and Wilhelm 1997, Agric. For. Meteorol. 87:291-300; the triangle: Sevacherian and others 1977, J. Econ. Entomol. 70:399-402.
/// A triangle of sides that rise from the minimum to the maximum and fall back has (Tx - L)^2 / (2 (Tx - Tn)) above a level L that it crosses.
/// </remarks>
internal static class DegreeDaysByHand
{
    private const int Lower = 50;
    private const int Upper = 86;
    private const int Places = 2;

    // Lowest and highest minimum and maximum of each kind of day: cool night, mild, hot, cold.
    private static readonly (int Low, int High, int LowMax, int HighMax) CoolNight = (38, 47, 60, 76);
    private static readonly (int Low, int High, int LowMax, int HighMax) Mild = (51, 58, 64, 82);
    private static readonly (int Low, int High, int LowMax, int HighMax) HotAfterCool = (42, 48, 88, 94);
    private static readonly (int Low, int High, int LowMax, int HighMax) Hot = (58, 66, 88, 96);
    private static readonly (int Low, int High, int LowMax, int HighMax) Cold = (32, 38, 44, 49);

    public static ExerciseTopic Topic { get; } = new(
        "degree-days",
        "Degree-days by hand, three ways",
        30,
        "four days, the simple average and corn's 86/50, and a triangle for two of them",
        "six days, a cold one among them, the triangle for all, and the day a need is met",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        (int Low, int High, int LowMax, int HighMax)[] kinds = level == ExerciseLevel.First ? [CoolNight, Mild, Hot, CoolNight] : [CoolNight, Mild, HotAfterCool, Hot, Cold, CoolNight];
        var days = data.Shuffled(kinds).Select(kind => new Day(data.Whole(kind.LowMax, kind.HighMax), data.Whole(kind.Low, kind.High))).ToArray();
        var averages = days.Select(day => Rounded.Larger(day.Mean - Lower, 0)).ToArray();
        var clipped = days.Select(day => day.Clipped - Lower).ToArray();
        var triangles = days.Select(day => day.Triangle).ToArray();
        var asked = level == ExerciseLevel.First
            ? (int[])[Array.FindIndex(days, day => day.Crosses), Array.FindIndex(days, day => !day.Crosses && day.Maximum.Written < Upper)]
            : [.. Enumerable.Range(0, days.Length)];
        return new()
        {
            Given =
            [
                new Paragraph("Seed does not count days; it counts warmth. A degree-day is a day one degree warmer than the level below which nothing grows. Stations keep the highest and the lowest temperature of a day, and there are several ways to make warmth of two numbers. Here are three, for the days after corn was planted."),
                new Table(
                    "The days after planting",
                    [new("Day", Alignment: ColumnAlignment.Right), new("Highest", "°F", ColumnAlignment.Right), new("Lowest", "°F", ColumnAlignment.Right)],
                    [.. days.Select((day, i) => TableRow.Of(NumberText.Count(i + 1), day.Maximum.Text, day.Minimum.Text))]),
                new BulletList(
                [
                    RichText.Of("Simple average. ", Emphasis.Strong).Then("The mean of highest and lowest, less 50; never below 0."),
                    RichText.Of("Corn 86/50. ", Emphasis.Strong).Then("First bring each of the two within 50 and 86: what is below 50 becomes 50, what is above 86 becomes 86. Then the mean of the two, less 50."),
                    RichText.Of("Triangle. ", Emphasis.Strong).Then("The temperature rises in a straight line from the lowest to the highest and falls back. If the lowest is 50 or more, the area above 50 is the mean less 50. If the highest is 50 or less it is 0. Otherwise it is (highest − 50)² ÷ (2 × (highest − lowest)). When the highest is above 86, take off the tip: (highest − 86)² ÷ (2 × (highest − lowest))."),
                ]),
            ],
            Questions =
            [
                new(
                    "Work out the degree-days of each day by the simple average, to two decimals, and add them up.",
                    [Form(Enumerable.Range(0, days.Length), "Mean", "Degree-days"), new AnswerRoom(0, "sum of the simple average")],
                    [
                        .. days.Select((day, i) => KeyStep.Of($"average{i + 1}", $"Day {i + 1}", $"({day.Maximum.Text} + {day.Minimum.Text}) ÷ 2 = {day.Mean.Text}, less 50", averages[i])),
                        KeyStep.Of("average", "Sum", Added(averages), Rounded.Sum(averages)),
                    ]),
                new(
                    "Now the same days by corn's 86/50.",
                    [Form(Enumerable.Range(0, days.Length), "Highest as counted", "Lowest as counted", "Degree-days"), new AnswerRoom(0, "sum of 86/50")],
                    [
                        .. days.Select((day, i) => KeyStep.Of($"clipped{i + 1}", $"Day {i + 1}", $"({day.Top.Text} + {day.Bottom.Text}) ÷ 2 − 50", clipped[i])),
                        KeyStep.Of("clipped", "Sum", Added(clipped), Rounded.Sum(clipped)),
                    ]),
                new(
                    $"Now by the triangle, for {(asked.Length == days.Length ? "every day" : $"days {string.Join(" and ", asked.Order().Select(i => NumberText.Count(i + 1)))}")}. Round the area, and a tip that is taken off, to two decimals each.",
                    [Form(asked.Order(), "Area above 50", "Tip above 86", "Degree-days"), new AnswerRoom(2)],
                    [.. asked.Order().Select(i => KeyStep.Of($"triangle{i + 1}", $"Day {i + 1}", days[i].TriangleWork, triangles[i]))]),
                new(
                    "By how much does 86/50 exceed the simple average over all these days? Which days make the difference, and why?",
                    [new AnswerRoom(2, "86/50 less simple average")],
                    [KeyStep.Of("excess", "86/50 less simple average", $"{Rounded.Sum(clipped).Text} − {Rounded.Sum(averages).Text}", Rounded.Sum(clipped) - Rounded.Sum(averages))])
                {
                    Remark = "A night below 50 takes nothing away under 86/50, so it gains there; an afternoon above 86 adds nothing more, so it loses. A day between the two levels is the same by all three ways.",
                },
                .. level == ExerciseLevel.First ? [] : Further(days, averages, clipped, triangles),
            ],
            Wrong = new(
                "86/50 by clipping the mean in place of the two extremes",
                "The mean of a day is nearly never below 50 or above 86 in spring, so clipping it does nothing, and the cool nights count against the warm afternoons. Clip highest and lowest first, then average. The two ways are both in use under the same name; a figure of degree-days means little until the way is told.",
                [.. Enumerable.Range(0, days.Length).Select(i => KeyStep.Of($"wrong{i + 1}", $"Day {i + 1}", $"mean {days[i].Mean.Text} within 50 and 86, less 50", Rounded.Smaller(Rounded.Larger(days[i].Mean, Lower), Upper) - Lower))]),
            Truths = [new("Mean of highest and lowest over these days, °F", kinds.Average(kind => (kind.Low + kind.High + kind.LowMax + kind.HighMax) / 4.0), days.Average(day => (day.Maximum.Exact + day.Minimum.Exact) / 2), Places)],
            Drawn = "Each kind of day (cool night, mild, hot and so on) has its own range of highest and lowest temperatures; every whole degree within it is equally likely, and the order of the days is drawn.",
            Sources =
            [
                "McMaster & Wilhelm 1997, Growing degree-days: one equation, two interpretations, Agric. For. Meteorol. 87:291-300.",
                "Gilmore & Rogers 1958, Heat units as a method of measuring maturity in corn, Agron. J. 50:611-615.",
                "Sevacherian, Stern & Mueller 1977, Heat accumulation for timing Lygus control measures, J. Econ. Entomol. 70:399-402.",
            ],
            Files = Trial(data, days),
        };
    }

    private static IEnumerable<Question> Further(Day[] days, Rounded[] averages, Rounded[] clipped, Rounded[] triangles)
    {
        var need = (int)Math.Floor(0.6 * (double)Rounded.Sum(averages).Written);
        yield return new(
            $"Add the triangle's days too. Suppose this seed needs {NumberText.Count(need)} degree-days. On which day is the need met by each of the three ways?",
            [new AnswerRoom(3, "sum of the triangle", "day, simple average", "day, 86/50", "day, triangle")],
            [
                KeyStep.Of("triangle", "Sum of the triangle", Added(triangles), Rounded.Sum(triangles)),
                Met("met-average", "Day, simple average", averages, need),
                Met("met-clipped", "Day, 86/50", clipped, need),
                Met("met-triangle", "Day, triangle", triangles, need),
            ])
        {
            Remark = "A need is only good for the way it was found by. Published needs of corn go with 86/50.",
        };
    }

    private static KeyStep Met(string id, string label, Rounded[] days, int need)
    {
        var sums = Enumerable.Range(1, days.Length).Select(count => Rounded.Sum(days.Take(count))).ToArray();
        return KeyStep.Words(id, label, "running sums " + string.Join(", ", sums.Select(sum => sum.Text)), Day(sum => sum.Written >= need), Day(sum => (decimal)sum.Exact >= need));

        string Day(Func<Rounded, bool> isMet) => Array.FindIndex(sums, sum => isMet(sum)) is var index and >= 0 ? NumberText.Count(index + 1) : "not met";
    }

    private static FormGrid Form(IEnumerable<int> days, params IReadOnlyList<string> columns) => new(
        [new("Day", 0.5), .. columns.Select(column => new FormColumn(column, 1.4))],
        [.. days.Select(day => (string[])[NumberText.Count(day + 1), .. columns.Select(_ => "")])]);

    private static string Added(Rounded[] values) => string.Join(" + ", values.Select(value => value.Text));

    // Stand counts make a trial of it; the heat is what the sheet is about.
    private static IReadOnlyList<ExerciseFile> Trial(InventedNumbers data, Day[] days)
    {
        var strips = InventedTrial.Laid(data, 3, "shallow", "deep");
        var counts = strips.Select(strip => (strip.Name, 1, data.Binomial(34, 0.85))).ToArray();
        return new InventedTrial("Degree-days, a teaching sheet", "How warm were the days after planting?", [("shallow", "1.5 in deep"), ("deep", "2.5 in deep")], strips)
        {
            MoreSettings = "\n[weather]\nfile = \"weather.csv\"\nheat = \"corn 86/50\"\ncount_planting_day = false\n",
        }.Files(
            InventedTrial.StandCounts(counts),
            InventedTrial.Table(
                "weather.csv",
                "date,tmax_f,tmin_f",
                [Row(0, 64, 44), .. days.Select((day, i) => Row(i + 1, (int)day.Maximum.Written, (int)day.Minimum.Written))]));

        static string Row(int day, int maximum, int minimum) => string.Create(CultureInfo.InvariantCulture, $"{InventedTrial.Planted.AddDays(day):yyyy-MM-dd},{maximum},{minimum}");
    }

    /// <summary>A day's extremes and what the three ways make of them.</summary>
    private sealed record Day(Rounded Maximum, Rounded Minimum)
    {
        public Rounded Mean => ((Maximum + Minimum) / 2).To(Places);

        public Rounded Top => Rounded.Larger(Rounded.Smaller(Maximum, Upper), Lower);

        public Rounded Bottom => Rounded.Smaller(Rounded.Larger(Minimum, Lower), Upper);

        public Rounded Clipped => ((Top + Bottom) / 2).To(Places);

        public bool Crosses => Minimum.Written < Lower && Maximum.Written > Lower;

        public Rounded Triangle => IsHot ? Area - Tip : Area;

        public string TriangleWork
        {
            get
            {
                var area = Maximum.Written <= Lower ? "never above 50"
                    : Crosses ? $"({Maximum.Text} − 50)² ÷ (2 × {(Maximum - Minimum).Text})"
                    : $"{Mean.Text} − 50";
                return IsHot ? $"{area} = {Area.Text}; tip ({Maximum.Text} − 86)² ÷ (2 × {(Maximum - Minimum).Text}) = {Tip.Text}" : area;
            }
        }

        private bool IsHot => Maximum.Written > Upper;

        private Rounded Area => Maximum.Written <= Lower ? Rounded.Given(0, Places)
            : Crosses ? Above(Lower)
            : Mean - Lower;

        private Rounded Tip => Above(Upper);

        private Rounded Above(int level) => ((Maximum - level).Square() / (2 * (Maximum - Minimum))).To(Places);
    }
}
