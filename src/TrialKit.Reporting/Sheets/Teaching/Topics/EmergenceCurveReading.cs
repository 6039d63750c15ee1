using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>Reading a curve of emergence: final share, the days by which a tenth, half and nine tenths of the plants are up, straight between visits.</summary>
internal static class EmergenceCurveReading
{
    private const int Seeds = 40;
    private const double Share = 0.9;
    private const double Spread = 1.5;
    private const double Median = 10.5;
    private const double Sooner = 1;
    private const int EarlyDay = 10;
    private static readonly int[] Visits = [5, 7, 8, 9, 10, 11, 12, 14, 16];

    public static ExerciseTopic Topic { get; } = new(
        "emergence-curve",
        "Reading an emergence curve",
        30,
        "one row: final emergence, and the days by which a tenth, half and nine tenths are up",
        "two rows side by side, and the mean day beside the median",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var strips = InventedTrial.Laid(data, 3, "none", "starter");
        var series = strips.Select(strip => Draw(data, strip.Treatment == "none" ? Median : Median - Sooner)).ToArray();
        var control = series[First(strips, "none")];
        var treated = series[First(strips, "starter")];
        Row[] rows = level == ExerciseLevel.First ? [new("", "", control)] : [new("no starter", "none-", control), new("starter", "starter-", treated)];
        return new()
        {
            Given =
            [
                new Paragraph($"Forty seeds along a flagged row of corn{(level == ExerciseLevel.First ? " were" : " without starter, and forty in the next strip with it, were")} visited from the fifth day after planting, and every plant that stood was counted. A plant that stands at a visit and did not at the one before came up at some time between; we say that it did so evenly, so the curve runs straight from visit to visit."),
                new Table(
                    "Plants up, of forty seeds",
                    [new("Day after planting", Alignment: ColumnAlignment.Right), .. rows.Select(row => new TableColumn(rows.Length == 1 ? "Plants up" : Capital(row.Name), Alignment: ColumnAlignment.Right))],
                    [.. Visits.Select((day, i) => TableRow.Of([NumberText.Count(day), .. rows.Select(row => row.Up[i].Text)]))]),
                new FigureBlock(
                    new EmergenceCurvesFigure(
                        InventedTrial.Planted,
                        [.. rows.Select((row, tone) => new EmergenceCurve(rows.Length == 1 ? "this row" : row.Name, tone, [.. Visits.Zip(row.Up, (day, up) => new CurvePoint(day, up.Exact / Seeds))], []))],
                        "heat",
                        [],
                        "The share of seeds up by day, as in the table."),
                    Height: 150),
            ],
            Questions =
            [
                .. rows.SelectMany(Questions),
                .. level == ExerciseLevel.First ? [] : Further(rows),
            ],
            Wrong = new(
                "Half of the seeds in place of half of the plants",
                "The day by which half of the seeds sown are up is later, because some seeds never come up; a row that loses seeds then looks late although its plants came early. Both can be asked, but they are two questions. A thin stand and a late stand are not the same trouble.",
                Reached(rows[0], "wrong-half", "Day by which half of the seeds are up", Rounded.Given(Seeds / 2m, 1))),
            Truths =
            [
                new("Seeds that come up in the end, %", 100 * Share, 100.0 * control[^1].Exact / Seeds),
                new($"Seeds up by day {EarlyDay}, no starter, %", 100 * Share * Chance(EarlyDay, Median), 100.0 * control[Array.IndexOf(Visits, EarlyDay)].Exact / Seeds),
            ],
            Drawn = $"A seed comes up with a chance of {NumberText.Percent(Share)}, at a time that scatters evenly about day {NumberText.Number(Median, 1)} without starter and a day sooner with it (a normal distribution, standard deviation {NumberText.Number(Spread, 1)} days).",
            Sources =
            [
                "Coolbear, Francis & Grierson 1984, J. Exp. Bot. 35:1609-1617, and Farooq and others 2005, J. Integr. Plant Biol. 47:187-193: the median time, straight between visits.",
                "Egli & Rucker 2012, Crop Sci. 52:2774-2782: the span from a tenth to nine tenths as a measure of evenness.",
                "Onofri, Mesgaran & Ritz 2022, Weed Science: what a count at a visit says.",
            ],
            Files = new InventedTrial("Emergence, a teaching sheet", "Does starter bring plants up sooner?", [("none", "No starter"), ("starter", "Starter")], strips)
                .Files(InventedTrial.Table(
                    "emergence.csv",
                    "strip,spot,date,plants,length_ft,seeds",
                    from entry in strips.Zip(series)
                    from visit in Visits.Zip(entry.Second)
                    select string.Create(CultureInfo.InvariantCulture, $"{entry.First.Name},A,{InventedTrial.Planted.AddDays(visit.First):yyyy-MM-dd},{visit.Second.Written},20.5,{Seeds}"))),
        };
    }

    private static IEnumerable<Question> Questions(Row row)
    {
        var of = row.Name.Length == 0 ? "" : $"{Capital(row.Name)}. ";
        var final = row.Up[^1];
        var (tenth, half, most) = ((final * Rounded.Given(0.1m, 1)).To(1), (final / 2).To(1), (final * Rounded.Given(0.9m, 1)).To(1));
        var (early, median, late) = (Day(row, tenth), Day(row, half), Day(row, most));
        yield return new(
            $"{of}What share of the seeds came up in the end, in percent to one decimal?",
            [new AnswerRoom(1, "final emergence, %")],
            [KeyStep.Of(row.Id + "final", "Final emergence, %", $"100 × {final.Text} ÷ {Seeds}", (100 * final / Seeds).To(1))]);
        yield return new(
            $"{of}How many plants are half of those that came up in the end (one decimal)? Find the two visits between which the curve passes that number, and go straight between them: day before + days between × (half − plants before) ÷ (plants after − plants before), to two decimals.",
            [new AnswerRoom(2, "half of the plants", "day by which half are up")],
            [
                KeyStep.Of(row.Id + "half", "Half of the plants", $"{final.Text} ÷ 2", half),
                Reached(row, row.Id + "t50", "Day by which half are up", half),
            ]);
        yield return new(
            $"{of}Find in the same way the days by which a tenth and nine tenths of the plants are up. How many days lie between them?",
            [new AnswerRoom(2, "a tenth", "nine tenths", "day for a tenth", "day for nine tenths", "days between")],
            [
                KeyStep.Of(row.Id + "tenth", "A tenth of the plants", $"0.1 × {final.Text}", tenth),
                KeyStep.Of(row.Id + "most", "Nine tenths of the plants", $"0.9 × {final.Text}", most),
                Reached(row, row.Id + "t10", "Day for a tenth", tenth),
                Reached(row, row.Id + "t90", "Day for nine tenths", most),
                KeyStep.Of(row.Id + "spread", "Days between", $"{late.Text} − {early.Text}", late - early),
            ])
        {
            Remark = $"The middle of the plants is up on day {median.Text}. Look at the figure: the steep part of the curve is where the span from a tenth to nine tenths lies.",
        };
    }

    private static IEnumerable<Question> Further(Row[] rows)
    {
        var medians = rows.Select(row => Day(row, (row.Up[^1] / 2).To(1))).ToArray();
        yield return new(
            "By how many days is the row with starter sooner, by the day on which half are up? Is that enough to say that starter brings plants up sooner?",
            [new AnswerRoom(2, "days sooner")],
            [KeyStep.Of("sooner", "Days sooner", $"{medians[0].Text} − {medians[1].Text}", medians[0] - medians[1])])
        {
            Remark = "It is not: two rows are one pair. How far two rows without starter would have differed is not known from one of them.",
        };
        var row = rows[0];
        var fresh = row.Up.Select((up, i) => i == 0 ? up : up - row.Up[i - 1]).ToArray();
        var weighted = Rounded.Sum(fresh.Select((plants, i) => (plants * Visits[i]).To(0)));
        yield return new(
            "For the row without starter: multiply the plants newly up at each visit by its day, add up, and divide by all plants, to two decimals. That is the mean emergence time, with each plant counted on the day it was found. Why is it later than the day by which half are up?",
            [new FormGrid([new("Day", 1), new("Newly up", 1), new("Day × newly up", 1)], [.. Visits.Select(day => (string[])[NumberText.Count(day), "", ""])]), new AnswerRoom(1, "sum", "mean emergence time")],
            [
                .. fresh.Select((plants, i) => KeyStep.Of($"fresh{Visits[i]}", $"Newly up on day {Visits[i]}", i == 0 ? "first visit" : $"{row.Up[i].Text} − {row.Up[i - 1].Text}", plants)),
                KeyStep.Of("weighted", "Sum of day × newly up", string.Join(" + ", fresh.Select((plants, i) => $"{Visits[i]} × {plants.Text}")), weighted),
                KeyStep.Of("mean-time", "Mean emergence time", $"{weighted.Text} ÷ {row.Up[^1].Text}", (weighted / row.Up[^1]).To(2)),
            ])
        {
            Remark = "A plant found at a visit came up before it, on average half the time since the last visit. The mean of days of finding is late by about that.",
        };
    }

    private static KeyStep Reached(Row row, string id, string label, Rounded target)
    {
        var after = After(row, target);
        var (before, next) = (row.Up[after - 1], row.Up[after]);
        return KeyStep.Of(id, label, $"{Visits[after - 1]} + {Visits[after] - Visits[after - 1]} × ({target.Text} − {before.Text}) ÷ ({next.Text} − {before.Text})", Day(row, target));
    }

    private static Rounded Day(Row row, Rounded target)
    {
        var after = After(row, target);
        return (Visits[after - 1] + ((Visits[after] - Visits[after - 1]) * (target - row.Up[after - 1]) / (row.Up[after] - row.Up[after - 1]))).To(2);
    }

    // The first visit at which so many stand; a target to one decimal is exact, so paper and full precision agree on it.
    private static int After(Row row, Rounded target) => Array.FindIndex(row.Up, up => up.Written >= target.Written);

    private static int First(IReadOnlyList<InventedStrip> strips, string treatment) => strips.Select((strip, index) => (strip, index)).First(entry => entry.strip.Treatment == treatment).index;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static double Chance(double day, double median) => 1 - PrintedTables.PofZ((day - median) / Spread).Value;

    // Nobody has seen corn up on the fifth day here; a row whose first visit found more than a few is drawn again, which all but never happens.
    private static Rounded[] Draw(InventedNumbers data, double median)
    {
        while (true)
        {
            double[] times = [.. Enumerable.Range(0, data.Binomial(Seeds, Share)).Select(_ => data.Normal(median, Spread))];
            Rounded[] up = [.. Visits.Select(day => (Rounded)times.Count(time => time <= day))];
            if (10 * up[0].Written < up[^1].Written)
            {
                return up;
            }
        }
    }

    /// <summary>A row's counts at the visits.</summary>
    private sealed record Row(string Name, string Id, Rounded[] Up);
}
