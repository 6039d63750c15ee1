using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>The randomisation test of eight pairs with coins: each toss turns the sign of a card's difference, and all 256 ways are counted.</summary>
/// <remarks>Fisher 1935, The Design of Experiments, section 21. A way is at least as far out as the trial when the cards of its smaller side come to no more than those of the trial's.</remarks>
internal static class CoinsOnCards
{
    private const int Cards = 8;
    private const int Throws = 10;
    private const double Deviation = 3;
    private const int Decimals = 3;
    private const string Name = "plants up on day 8";

    public static ExerciseTopic Topic { get; } = new(
        "coins",
        "A randomisation test with coins",
        40,
        "a plain effect, so that few ways of falling need counting",
        "a smaller effect, more ways to count, and the smallest p that eight pairs can give",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var effect = level == ExerciseLevel.First ? 4.5 : 3.5;
        var pairs = Draw(data, effect);
        var strips = InventedTrial.Laid(data, Cards, "off", "on");
        var d = pairs.Select(pair => pair.Treated - pair.Control).ToArray();
        var sum = Rounded.Sum(d);
        var plus = Rounded.Sum(d.Select(each => Rounded.Larger(each, 0)));
        var minus = Rounded.Sum(d.Select(each => Rounded.Larger(-each, 0)));
        var smaller = Rounded.Smaller(plus, minus);
        var sizes = d.Select(each => (int)each.Size().Written).ToArray();
        var count = Sets(sizes).Count(set => set <= smaller.Written);
        var ways = 1 << Cards;
        var p = ((Rounded)(2 * count) / ways).To(Decimals);
        return new()
        {
            Given =
            [
                new Paragraph("Row cleaners were set to touch the ground in one strip of each pair and lifted in the other; a coin had said which. On the eighth day after planting the plants that were up along forty seeds were counted in each strip. If row cleaners do nothing, then the same strips would have had the same plants whichever way the coin had fallen, and only the sign of each pair's difference would have changed. That can be acted out."),
                new Table(
                    "Plants up on the eighth day, of forty seeds",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("Lifted", Alignment: ColumnAlignment.Right), new("Touching", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
            ],
            Questions =
            [
                new(
                    "Write on each card the plants with row cleaners touching less those with them lifted, with its sign. Cut the cards out, or copy them.",
                    [.. Enumerable.Range(0, 2).Select(row => new FormGrid([.. Enumerable.Range(1 + (row * Cards / 2), Cards / 2).Select(card => new FormColumn($"Card {NumberText.Count(card)}", 1))], [["", "", "", ""]]))],
                    [.. d.Select((each, i) => KeyStep.Of($"d{i + 1}", $"Card {i + 1}", $"{pairs[i].Treated.Text} − {pairs[i].Control.Text}", each))]),
                new(
                    "Add the eight cards: the sum of your trial.",
                    [new AnswerRoom(1, "sum")],
                    [KeyStep.Of("sum", "Sum", string.Join(" + ", d.Select(each => each.InSum)), sum)]),
                new(
                    "Toss a coin for each card: heads leaves its sign, tails turns it. Write down the sum of the eight. Do it ten times. How often did chance alone bring a sum as far from zero as your trial, or farther?",
                    [new FormGrid(
                        [new("Throw", 0.7), new("Sum", 1), new("As far?", 1), new("Throw", 0.7), new("Sum", 1), new("As far?", 1)],
                        [.. Enumerable.Range(1, Throws / 2).Select(i => (string[])[NumberText.Count(i), "", "", NumberText.Count(i + (Throws / 2)), "", ""])])],
                    [])
                {
                    Remark = "Each throw is as far out with the probability of question 5. Put the throws of the whole class together: their share comes near it.",
                },
                new(
                    "Now without tossing. Add the cards above zero, and add the sizes of the cards below zero. A way for the coins to fall is as far out as your trial when the cards on its smaller side come to no more than the smaller of your two heaps. List the sets of cards whose sizes come to that or less; the empty set is one of them. How many are there?",
                    [new AnswerRoom(level == ExerciseLevel.First ? 4 : 6, "cards above zero", "sizes of cards below zero", "smaller heap", "sets")],
                    [
                        KeyStep.Of("plus", "Cards above zero", Heap(d, above: true), plus),
                        KeyStep.Of("minus", "Sizes of cards below zero", Heap(d, above: false), minus),
                        KeyStep.Of("smaller", "Smaller heap", $"of {plus.Text} and {minus.Text}", smaller),
                        KeyStep.Of("sets", "Sets", Listed(sizes, smaller), count),
                    ]),
                new(
                    "Each set is the smaller side once on the one and once on the other side of zero, so twice as many ways are as far out. Eight coins fall in 2 × 2 × 2 × 2 × 2 × 2 × 2 × 2 = 256 ways. What share of all ways is as far out as your trial? Round to three decimals. That share is p.",
                    [new AnswerRoom(1, "ways as far out", "p")],
                    [
                        KeyStep.Of("ways", "Ways as far out", $"2 × {count}", 2 * count),
                        KeyStep.Of("p", "p", $"{2 * count} ÷ {ways}", p),
                    ])
                {
                    Remark = "Nothing was assumed of how counts scatter: only that the coin decided. That is why the coin must be tossed before planting, and its fall kept.",
                },
                .. level == ExerciseLevel.First ? [] : Further(d, ways),
            ],
            Wrong = new(
                "Only the ways that favour row cleaners are counted",
                "Half the ways were left out: those as far out on the other side of zero. The grower would have believed a sum as large against row cleaners too, so both sides count, unless the one side had been ruled out before the trial.",
                KeyStep.Of("wrong-p", "p of the wrong way", $"{count} ÷ {ways}", ((Rounded)count / ways).To(Decimals))),
            Truths = [new($"Touching less lifted, {Name} of forty seeds", effect, d.Average(each => each.Exact))],
            Drawn = $"The differences were drawn from a normal distribution with mean {NumberText.Number(effect, 1)} and standard deviation {NumberText.Number(Deviation, 0)} and rounded to whole plants. The test knows nothing of that.",
            Sources =
            [
                "Fisher 1935, The Design of Experiments, section 21: all ways the coins could have fallen.",
                "Pitman 1937, Significance tests which may be applied to samples from any populations, Suppl. J. R. Stat. Soc. 4:119-130.",
            ],
            Files = new InventedTrial("Row cleaners, a teaching sheet", "Do row cleaners that touch the ground bring plants up sooner?", [("off", "Lifted"), ("on", "Touching")], strips)
                .Files(InventedTrial.Measure(Name, "plants", strips.Select(strip => (strip.Name, strip.Treatment == "off" ? pairs[strip.Block - 1].Control : pairs[strip.Block - 1].Treated)))),
        };
    }

    private static IEnumerable<Question> Further(Rounded[] d, int ways)
    {
        yield return new(
            "What p would eight pairs give if all eight cards had the same sign and none were zero? And what is the mean difference of your trial, to one decimal?",
            [new AnswerRoom(1, "smallest p", "mean difference")],
            [
                KeyStep.Of("smallest", "Smallest p", $"2 ÷ {ways}", ((Rounded)2 / ways).To(Decimals)),
                KeyStep.Of("mean", "Mean difference", $"{Rounded.Sum(d).Text} ÷ {Cards}", (Rounded.Sum(d) / Cards).To(1)),
            ])
        {
            Remark = "With fewer than six pairs no result, however plain, brings p to 0.05 or below.",
        };
    }

    private static string Heap(Rounded[] d, bool above)
    {
        var cards = d.Where(each => above ? each.Written > 0 : each.Written < 0).Select(each => each.Size().Text).ToArray();
        return cards.Length == 0 ? "none" : string.Join(" + ", cards);
    }

    // Long lists are told by how many sets have so many cards.
    private static string Listed(int[] sizes, Rounded limit)
    {
        var sets = Enumerable.Range(0, 1 << sizes.Length).Where(set => Total(sizes, set) <= limit.Written).GroupBy(set => int.PopCount(set)).OrderBy(group => group.Key);
        return string.Join(", ", sets.Select(group => string.Create(CultureInfo.InvariantCulture, $"{group.Count()} of {group.Key} {(group.Key == 1 ? "card" : "cards")}"))) + $", to {limit.Text} or less";
    }

    private static IEnumerable<int> Sets(int[] sizes) => Enumerable.Range(0, 1 << sizes.Length).Select(set => Total(sizes, set));

    private static int Total(int[] sizes, int set) => sizes.Where((_, card) => (set >> card & 1) == 1).Sum();

    // A sum of zero would leave nothing to be far from; it is drawn again.
    private static (Rounded Control, Rounded Treated)[] Draw(InventedNumbers data, double effect)
    {
        while (true)
        {
            var pairs = Enumerable.Range(0, Cards).Select(_ => Pair(data, effect)).ToArray();
            if (pairs.Sum(pair => pair.Treated.Written - pair.Control.Written) != 0)
            {
                return pairs;
            }
        }
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data, double effect)
    {
        var control = data.Whole(14, 19);
        return (control, control + (int)Math.Round(data.Normal(effect, Deviation), MidpointRounding.AwayFromZero));
    }
}
