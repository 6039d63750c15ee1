using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>From plants along a stick to plants per acre: the length of row that is a thousandth of an acre, the stand, its share of the seeds, its scatter.</summary>
internal static class StandCountsByHand
{
    private const double Share = 0.88;
    private const string SquareFeetPerThousandth = "43.56";

    // 30 inches is what the stick of the wrong answer was cut for.
    private static readonly int[] Spacings = [15, 20, 22, 36, 38];

    public static ExerciseTopic Topic { get; } = new(
        "stand-counts",
        "Stand counts and the length of row",
        25,
        "the length of a thousandth of an acre, four counts, stand and share of the seeds",
        "six counts, and how well their mean is known, and a count along another length",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var spots = level == ExerciseLevel.First ? 4 : 6;
        var inches = Spacings[data.Whole(0, Spacings.Length - 1)];
        var seeds = data.Whole(31, 36);
        var counts = Draw(data, seeds, spots);
        var width = ((Rounded)inches / 12).To(3);
        var length = (Rounded.Given(43.56m, 2) / width).To(2);
        var whole = Feet(length);
        var rest = ((length - whole) * 12).To(0);
        var sum = Rounded.Sum(counts);
        var mean = (sum / spots).To(1);
        var share = (100 * mean / seeds).To(1);
        var stick = Rounded.Given(17.42m, 2);
        var wrongFactor = (stick / length).To(2);
        return new()
        {
            Given =
            [
                new Paragraph($"Corn was planted in rows {NumberText.Count(inches)} inches apart at {NumberText.Count(seeds * 1000)} seeds per acre. Three weeks later its stand is to be known. An acre has 43,560 square feet, a thousandth of it {SquareFeetPerThousandth}. Count the plants along so much of one row that row length times row width is a thousandth of an acre; then each plant counted stands for a thousand plants per acre."),
                new Table(
                    "Plants counted along a thousandth of an acre, at places drawn beforehand",
                    [new("Spot", Alignment: ColumnAlignment.Right), new("Plants", Alignment: ColumnAlignment.Right)],
                    [.. counts.Select((count, i) => TableRow.Of(NumberText.Count(i + 1), count.Text))]),
            ],
            Questions =
            [
                new(
                    $"How wide is a row in feet (three decimals)? How many feet of row make {SquareFeetPerThousandth} square feet (two decimals)? Say it in feet and whole inches, as you would cut a stick.",
                    [new AnswerRoom(2, "row width, ft", "length, ft", "whole feet", "and inches")],
                    [
                        KeyStep.Of("width", "Row width, ft", $"{inches} ÷ 12", width),
                        KeyStep.Of("length", "Length, ft", $"{SquareFeetPerThousandth} ÷ {width.Text}", length),
                        KeyStep.Of("feet", "Whole feet", $"of {length.Text}", whole),
                        KeyStep.Of("inches", "and inches", $"({length.Text} − {whole.Text}) × 12", rest),
                    ]),
                new(
                    "What is the mean count (one decimal)? How many plants stand on an acre?",
                    [new AnswerRoom(1, "sum", "mean count", "plants per acre")],
                    [
                        KeyStep.Of("sum", "Sum", string.Join(" + ", counts.Select(count => count.Text)), sum),
                        KeyStep.Of("mean", "Mean count", $"{sum.Text} ÷ {spots}", mean),
                        KeyStep.Of("stand", "Plants per acre", $"1,000 × {mean.Text}", (1000 * mean).To(0)),
                    ]),
                new(
                    "How many seeds were dropped on a thousandth of an acre? What share of them became plants, in percent to one decimal?",
                    [new AnswerRoom(1, "seeds", "share, %")],
                    [
                        KeyStep.Of("seeds", "Seeds", $"{NumberText.Count(seeds * 1000)} ÷ 1,000", seeds),
                        KeyStep.Of("share", "Share, %", $"100 × {mean.Text} ÷ {seeds}", share),
                    ]),
                new(
                    "You miscount one plant at one spot. By how many plants per acre is that spot off, and by how many the mean of all spots (no decimals)?",
                    [new AnswerRoom(1, "that spot", "the mean")],
                    [
                        KeyStep.Of("spot-off", "That spot", "one plant × 1,000", 1000),
                        KeyStep.Of("mean-off", "The mean", $"1,000 ÷ {spots}", ((Rounded)1000 / spots).To(0)),
                    ])
                {
                    Remark = "That is why a stand is given to the hundred at most, and why places are drawn beforehand and not picked where the stand looks typical.",
                },
                .. level == ExerciseLevel.First ? [] : Further(data, counts, mean, width, spots),
            ],
            Wrong = new(
                "The stick for 30-inch rows, used in these rows",
                "A stick of 17 ft 5 in (17.42 ft) is a thousandth of an acre in 30-inch rows only. In other rows a plant along it does not stand for a thousand. Measure the rows, then cut the stick.",
                KeyStep.Of("wrong-factor", "Thousandths of an acre along it", $"17.42 ÷ {length.Text}", wrongFactor),
                KeyStep.Of("wrong-mean", "Mean count to be expected along it", $"{mean.Text} × {wrongFactor.Text}, taken for thousands per acre", (mean * wrongFactor).To(1))),
            Truths = [new("Plants on a thousandth of an acre", Share * seeds, counts.Average(count => count.Exact), 2)],
            Drawn = $"Each seed became a plant with a chance of {NumberText.Percent(Share)}, one as the other.",
            Sources =
            [
                "University of Tennessee Extension 2011 and University of Nebraska-Lincoln Extension 2009: tables of row lengths for a thousandth of an acre.",
                "Snedecor & Cochran 1989, Statistical Methods, 8th ed., chapter 4, on the standard error of a mean.",
            ],
            Files = Trial(data, counts, seeds, inches),
        };
    }

    private static IEnumerable<Question> Further(InventedNumbers data, Rounded[] counts, Rounded mean, Rounded width, int spots)
    {
        var squares = counts.Select(count => (count - mean).Square().To(2)).ToArray();
        var variance = (Rounded.Sum(squares) / (spots - 1)).To(2);
        var deviation = variance.Root().To(2);
        var root = ((Rounded)spots).Root().To(2);
        var error = (deviation / root).To(2);
        yield return new(
            "How well is the mean known? Take it from each count, square, add up, divide by the number of spots less one, take the root: the standard deviation. Divide by the root of the number of spots: the standard error of this strip's stand. Two decimals at each step.",
            [new AnswerRoom(3, "sum of squares", "variance", "standard deviation", "standard error, plants")],
            [
                .. counts.Select((count, i) => KeyStep.Of($"square{i + 1}", $"Spot {i + 1}", $"({count.Text} − {mean.Text})²", squares[i])),
                KeyStep.Of("squares", "Sum of squares", string.Join(" + ", squares.Select(each => each.Text)), Rounded.Sum(squares)),
                KeyStep.Of("variance", "Variance", $"{Rounded.Sum(squares).Text} ÷ {spots - 1}", variance),
                KeyStep.Of("deviation", "Standard deviation", $"√{variance.Text}", deviation),
                KeyStep.Of("error", "Standard error", $"{deviation.Text} ÷ √{spots} = {deviation.Text} ÷ {root.Text}", error),
            ])
        {
            Remark = "It is the error of this one strip. How strips of two treatments differ is known from several strips only, however many spots each has.",
        };
        var neighbour = (Feet: data.Whole(18, 24), Plants: data.Whole(28, 42));
        var area = (neighbour.Feet * width).To(2);
        yield return new(
            $"A neighbour with rows as wide as these counted {neighbour.Plants} plants along {neighbour.Feet} feet of one row. How many square feet is that (two decimals), and how many thousand plants per acre (one decimal)?",
            [new AnswerRoom(1, "square feet", "thousand plants per acre")],
            [
                KeyStep.Of("area", "Square feet", $"{neighbour.Feet} × {width.Text}", area),
                KeyStep.Of("neighbour", "Thousand plants per acre", $"{neighbour.Plants} × {SquareFeetPerThousandth} ÷ {area.Text}", (neighbour.Plants * Rounded.Given(43.56m, 2) / area).To(1)),
            ]);
    }

    // The whole feet are the same on paper and at full precision: no length lies within a rounding of a foot.
    private static Rounded Feet(Rounded length) => (int)Math.Floor(length.Written);

    // Counts that are all alike leave nothing to take a spread of.
    private static Rounded[] Draw(InventedNumbers data, int seeds, int spots)
    {
        while (true)
        {
            var counts = Enumerable.Range(0, spots).Select(_ => (Rounded)data.Binomial(seeds, Share)).ToArray();
            if (counts.Select(count => count.Written).Distinct().Count() > 1)
            {
                return counts;
            }
        }
    }

    // The sheet's strip is the first; the others make a trial of it.
    private static IReadOnlyList<ExerciseFile> Trial(InventedNumbers data, Rounded[] counts, int seeds, int inches)
    {
        var strips = InventedTrial.Laid(data, 3, "slow", "fast");
        var all = strips.SelectMany((strip, index) => counts.Select((count, spot) => (strip.Name, spot + 1, index == 0 ? (int)count.Written : data.Binomial(seeds, Share))));
        return new InventedTrial("Stand counts, a teaching sheet", "Does a slower pass change the stand?", [("slow", "4 mph"), ("fast", "6 mph")], strips) { RowInches = inches, Seeds = seeds }
            .Files(InventedTrial.StandCounts(all, (522.72 / inches).ToString("0.###", CultureInfo.InvariantCulture)));
    }
}
