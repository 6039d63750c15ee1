using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>The same counts judged strip by strip and, wrongly, spot by spot, in a field where nothing differs.</summary>
/// <remarks>Hurlbert 1984, Ecol. Monogr. 54:187-211.</remarks>
internal static class SpotsAreNotReplicates
{
    private const int Seeds = 34;
    private const double UsualShare = 0.80;
    private const double StripDeviation = 0.07;
    private const double Furthest = 0.19;
    private const double Alpha = 0.10;
    private const string Slow = "slow";
    private const string Fast = "fast";

    public static ExerciseTopic Topic { get; } = new(
        "spots-not-replicates",
        "Why spots are not replicates",
        40,
        "three pairs of strips with three spots in each",
        "four pairs with four spots, and how far the smaller error is too small",
        Make);

    /// <summary>Whether a sheet's counts show a difference, strip by strip and spot by spot.</summary>
    /// <param name="paper">The sheet.</param>
    internal static (bool ByStrips, bool BySpots) Shown(ExercisePaper paper) =>
        (IsShown(paper, "verdict"), IsShown(paper, "spot-verdict"));

    private static bool IsShown(ExercisePaper paper, string step) => paper.Key.Single(each => each.Id == step).Full == "shown";

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var (pairs, spots) = level == ExerciseLevel.First ? (3, 3) : (4, 4);
        var strips = InventedTrial.Laid(data, pairs, Slow, Fast);
        var field = Draw(data, pairs, spots);
        var means = field.Select(pair => (Slow: (Rounded.Sum(pair.Slow) / spots).To(2), Fast: (Rounded.Sum(pair.Fast) / spots).To(2))).ToArray();
        var byStrip = new Paired([.. means.Select(pair => pair.Fast - pair.Slow)], Alpha);
        var bySpot = new Paired([.. field.SelectMany(pair => pair.Fast.Zip(pair.Slow, (fast, slow) => fast - slow))], Alpha);
        return new()
        {
            Given =
            [
                new Paragraph($"Someone drove {NumberText.CountWord(pairs).ToLowerInvariant()} pairs of strips, one of each pair at 4 and one at 6 miles an hour, and counted the plants in a thousandth of an acre at {NumberText.CountWord(spots).ToLowerInvariant()} spots of every strip. Is the stand of the faster strips another one? Work it out twice: with a strip as one observation, and with a spot as one."),
                new Table(
                    "Plants in a thousandth of an acre, spot by spot",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("Speed"), .. Enumerable.Range(1, spots).Select(spot => new TableColumn($"Spot {NumberText.Count(spot)}", Alignment: ColumnAlignment.Right))],
                    [.. field.SelectMany((pair, i) => (TableRow[])[Row(i, "4 mph", pair.Slow), Row(i, "6 mph", pair.Fast)])]),
                CriticalTable.OfT(pairs - 1, pairs, (pairs * spots) - 1, pairs * spots),
            ],
            Questions =
            [
                new(
                    "The mean of each strip, to two decimals, and in each pair the mean at 6 mph less the mean at 4 mph.",
                    [new FormGrid([new("Pair", 0.6), new("Mean, 4 mph", 1.2), new("Mean, 6 mph", 1.2), new("Difference", 1.2)], [.. Enumerable.Range(1, pairs).Select(pair => (string[])[NumberText.Count(pair), "", "", ""])])],
                    [
                        .. field.SelectMany((pair, i) => (KeyStep[])
                        [
                            KeyStep.Of($"slow{i + 1}", $"Pair {i + 1}, 4 mph", $"({Sum(pair.Slow)}) ÷ {spots}", means[i].Slow),
                            KeyStep.Of($"fast{i + 1}", $"Pair {i + 1}, 6 mph", $"({Sum(pair.Fast)}) ÷ {spots}", means[i].Fast),
                            KeyStep.Of($"d{i + 1}", $"Difference of pair {i + 1}", $"{means[i].Fast.Text} − {means[i].Slow.Text}", byStrip.Differences[i]),
                        ]),
                    ]),
                new(
                    "With the strip as the observation: the mean of the differences; their sum of squares about it, each square to two decimals; the variance; the standard error, √(variance ÷ number of differences); and t. Two decimals at each step. Is a difference shown at 0.10?",
                    [new AnswerRoom(3, "mean", "sum of squares", "variance", "standard error", "t", "value of the table", "shown or not shown")],
                    [.. byStrip.Steps("")])
                {
                    Remark = "The strips were driven; the spots were only looked at. How strips vary is what decides, and there is one number of that for each pair.",
                },
                new(
                    $"Now as if every spot were a strip of its own: {NumberText.Count(pairs * spots)} differences, spot 1 less spot 1 and so on. Work out the same again.",
                    [
                        new FormGrid([new("Pair", 0.6), .. Enumerable.Range(1, spots).Select(spot => new FormColumn($"Spot {NumberText.Count(spot)}", 1))], [.. Enumerable.Range(1, pairs).Select(pair => (string[])[NumberText.Count(pair), .. Enumerable.Repeat("", spots)])]),
                        new AnswerRoom(4, "mean", "sum of squares", "variance", "standard error", "t", "value of the table", "shown or not shown"),
                    ],
                    [
                        .. bySpot.Differences.Select((each, i) => KeyStep.Of($"spot-d{i + 1}", $"Pair {(i / spots) + 1}, spot {(i % spots) + 1}", $"{field[i / spots].Fast[i % spots].Text} − {field[i / spots].Slow[i % spots].Text}", each)),
                        .. bySpot.Steps("spot-"),
                    ]),
                new(
                    "The means agree, but for rounding. What has become smaller, and what has become larger? Which of the two workings may the grower believe, and why?",
                    [new AnswerRoom(4, "larger error ÷ smaller error")],
                    [KeyStep.Of("ratio", "Larger error ÷ smaller error", $"of {byStrip.Error.Text} and {bySpot.Error.Text}", (Rounded.Larger(byStrip.Error, bySpot.Error) / Rounded.Smaller(byStrip.Error, bySpot.Error)).To(2))])
                {
                    Remark = "Spots of one strip share its ground, its pass, its seed box. More of them tell more of that strip, not of what another pass would have done. The table's value fell too, since the degrees of freedom were counted from spots. By chance a single sheet can come out the other way round; over many sheets it does not.",
                },
                .. level == ExerciseLevel.First ? [] : Further(spots, bySpot),
            ],
            Wrong = new(
                "More spots make up for few strips",
                "Nothing differs in this field. Judged by strips, one such sheet in ten shows a difference at 0.10, as it should; judged by spots more than one in four does. Put a class's sheets together, each with a seed of its own, and count.",
                KeyStep.Of("wrong-df", "Degrees of freedom claimed", $"{pairs} × {spots} − 1", (Rounded)(pairs * spots) - 1)),
            Truths = [new("6 mph less 4 mph, thousand plants per acre", 0, byStrip.Differences.Average(each => each.Exact), 2)],
            Drawn = $"Each strip has a chance of its own that a seed comes up, about {NumberText.Percent(UsualShare)} with a standard deviation of {NumberText.Number(100 * StripDeviation, 0)} points whatever the speed; the seeds at its spots come up with that chance. Speed does nothing.",
            Sources =
            [
                "Hurlbert 1984, Pseudoreplication and the design of ecological field experiments, Ecol. Monogr. 54:187-211.",
                "Student 1908, The probable error of a mean, Biometrika 6:1-25.",
            ],
            Files = new InventedTrial("Speed, a teaching sheet", "Does speed change the stand?", [(Slow, "4 mph"), (Fast, "6 mph")], strips)
                .Files(InventedTrial.StandCounts(strips.SelectMany(strip => (strip.Treatment == Slow ? field[strip.Block - 1].Slow : field[strip.Block - 1].Fast).Select((plants, spot) => (strip.Name, spot + 1, (int)plants.Written))))),
        };
    }

    private static IEnumerable<Question> Further(int spots, Paired bySpot)
    {
        yield return new(
            $"Suppose the spots had been {NumberText.Count(4 * spots)} in each strip, with the same scatter. Spot by spot the standard error would be half as large. What would the standard error of question 3 be, to two decimals, and why would the grower be no wiser?",
            [new AnswerRoom(2, "half the error")],
            [KeyStep.Of("half-error", "Half the error", $"{bySpot.Error.Text} ÷ 2", (bySpot.Error / 2).To(2))])
        {
            Remark = "With spots without end each strip would be known exactly, and the differences of the strips would still be as many as there are pairs.",
        };
    }

    private static TableRow Row(int pair, string speed, Rounded[] counts) => TableRow.Of([NumberText.Count(pair + 1), speed, .. counts.Select(count => count.Text)]);

    private static string Sum(Rounded[] counts) => string.Join(" + ", counts.Select(count => count.Text));

    // Drawn again when strips or spots leave nothing to take a spread of, which favours neither speed.
    private static (Rounded[] Slow, Rounded[] Fast)[] Draw(InventedNumbers data, int pairs, int spots)
    {
        while (true)
        {
            var field = Enumerable.Range(0, pairs).Select(_ => (Slow: Strip(data, spots), Fast: Strip(data, spots))).ToArray();
            var byStrip = field.Select(pair => Rounded.Sum(pair.Fast).Written - Rounded.Sum(pair.Slow).Written).ToArray();
            if (byStrip.Max() - byStrip.Min() >= spots)
            {
                return field;
            }
        }
    }

    private static Rounded[] Strip(InventedNumbers data, int spots)
    {
        var share = UsualShare + Math.Clamp(data.Normal(0, StripDeviation), -Furthest, Furthest);
        return [.. Enumerable.Range(0, spots).Select(_ => (Rounded)data.Binomial(Seeds, share))];
    }
}
