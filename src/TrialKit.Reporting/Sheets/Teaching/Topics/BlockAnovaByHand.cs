using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>The analysis of variance of treatments in blocks by totals: correction term, sums of squares, mean squares, F.</summary>
/// <remarks>Fisher 1925, Statistical Methods for Research Workers; the working by totals as in Cochran and Cox 1957, Experimental Designs, section 4.24.</remarks>
internal static class BlockAnovaByHand
{
    private const int Blocks = 4;
    private const int Seeds = 34;
    private const double UsualShare = 0.82;
    private const double Alpha = 0.10;
    private const int Places = 2;

    // Thousand plants per acre above the control.
    private static readonly (string Name, string Label, double Effect)[] Wheels = [("rubber", "Rubber", 0), ("spiked", "Spiked", 2.5), ("cast", "Cast", 1), ("mixed", "Mixed", 3)];

    public static ExerciseTopic Topic { get; } = new(
        "block-anova",
        "Analysis of variance in blocks, by hand",
        45,
        "three closing wheels in four blocks, up to F and the verdict",
        "four closing wheels in four blocks, and a difference between two of them",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var wheels = Wheels.Take(level == ExerciseLevel.First ? 3 : 4).ToArray();
        var counts = Draw(data, wheels);
        var strips = InventedTrial.Laid(data, Blocks, [.. wheels.Select(wheel => wheel.Name)]);
        var byTreatment = counts.Select(Rounded.Sum).ToArray();
        var byBlock = Enumerable.Range(0, Blocks).Select(block => Rounded.Sum(counts.Select(treatment => treatment[block]))).ToArray();
        var (t, n) = (wheels.Length, wheels.Length * Blocks);
        var total = Rounded.Sum(byTreatment);
        var squares = Rounded.Sum(counts.SelectMany(treatment => treatment).Select(count => count.Square().To(0)));
        var correction = (total.Square() / n).To(Places);
        var all = squares - correction;
        var blocks = (Rounded.Sum(byBlock.Select(sum => sum.Square().To(0))) / t).To(Places) - correction;
        var treatments = (Rounded.Sum(byTreatment.Select(sum => sum.Square().To(0))) / Blocks).To(Places) - correction;
        var error = all - blocks - treatments;
        var errorDegrees = (t - 1) * (Blocks - 1);
        var treatmentMean = (treatments / (t - 1)).To(Places);
        var errorMean = (error / errorDegrees).To(Places);
        var f = (treatmentMean / errorMean).To(Places);
        var critical = CriticalTable.F(t - 1, errorDegrees, Alpha);
        var bracket = CriticalTable.Bracket(f, t - 1, errorDegrees);
        return new()
        {
            Given =
            [
                new Paragraph($"{NumberText.CountWord(t)} kinds of closing wheels were run side by side in each of {NumberText.CountWord(Blocks).ToLowerInvariant()} blocks across a field, the order within a block drawn by lot. The plants in a thousandth of an acre were counted in each strip. Does the kind of wheel change the stand?"),
                new Table(
                    "Plants in a thousandth of an acre, by block",
                    [new("Block", Alignment: ColumnAlignment.Right), .. wheels.Select(wheel => new TableColumn(wheel.Label, Alignment: ColumnAlignment.Right))],
                    [.. Enumerable.Range(0, Blocks).Select(block => TableRow.Of([NumberText.Count(block + 1), .. counts.Select(treatment => treatment[block].Text)]))]),
                CriticalTable.OfF((t - 1, errorDegrees), (Blocks - 1, errorDegrees), (t - 1, n - t)),
                .. level == ExerciseLevel.First ? [] : (Block[])[CriticalTable.OfT(Blocks - 1, errorDegrees, n - 1)],
            ],
            Questions =
            [
                new(
                    "Add up the counts of each block, of each kind of wheel, and of all.",
                    [new FormGrid([new("Block", 0.8), .. wheels.Select(wheel => new FormColumn(wheel.Label, 1)), new("Total", 1)], [.. Enumerable.Range(1, Blocks).Select(block => (string[])[NumberText.Count(block), .. Enumerable.Repeat("", t + 1)]), ["Total", .. Enumerable.Repeat("", t + 1)]])],
                    [
                        .. byBlock.Select((sum, i) => KeyStep.Of($"block{i + 1}", $"Block {i + 1}", string.Join(" + ", counts.Select(treatment => treatment[i].Text)), sum)),
                        .. byTreatment.Select((sum, i) => KeyStep.Of($"treatment{i + 1}", wheels[i].Label, string.Join(" + ", counts[i].Select(count => count.Text)), sum)),
                        KeyStep.Of("total", "All", string.Join(" + ", byTreatment.Select(sum => sum.Text)), total),
                    ]),
                new(
                    "Square each count and add the squares. From that take the correction term, the square of the total of all divided by the number of strips, to two decimals. What is left is the sum of squares of everything.",
                    [new AnswerRoom(3, "sum of the squares", "correction term", "total sum of squares")],
                    [
                        KeyStep.Of("squares", "Sum of the squares", string.Join(" + ", counts.SelectMany(treatment => treatment).Select(count => $"{count.Text}²")), squares),
                        KeyStep.Of("correction", "Correction term", $"{total.Text}² ÷ {n}", correction),
                        KeyStep.Of("ss-total", "Total sum of squares", $"{squares.Text} − {correction.Text}", all),
                    ]),
                new(
                    $"Blocks: square the block totals, add up, divide by {t} (strips in a block), to two decimals, and take the correction term off. Kinds of wheel: the same with their totals, divided by {Blocks}. Error: the total sum of squares less these two.",
                    [new AnswerRoom(3, "sum of squares, blocks", "sum of squares, wheels", "sum of squares, error")],
                    [
                        KeyStep.Of("ss-blocks", "Blocks", $"({string.Join(" + ", byBlock.Select(sum => $"{sum.Text}²"))}) ÷ {t} − {correction.Text}", blocks),
                        KeyStep.Of("ss-treatments", "Kinds of wheel", $"({string.Join(" + ", byTreatment.Select(sum => $"{sum.Text}²"))}) ÷ {Blocks} − {correction.Text}", treatments),
                        KeyStep.Of("ss-error", "Error", $"{all.Text} − {blocks.Text} − {treatments.Text}", error),
                    ]),
                new(
                    "Degrees of freedom: kinds of wheel less one; blocks less one; their product for the error. A mean square is a sum of squares divided by its degrees of freedom; F is the mean square of wheels divided by that of the error. Two decimals.",
                    [new FormGrid([new("", 1.2), new("Sum of squares", 1.3), new("Degrees of freedom", 1.3), new("Mean square", 1.3), new("F", 1)], [["Blocks", "", "", "", "–"], ["Wheels", "", "", "", ""], ["Error", "", "", "", "–"]])],
                    [
                        KeyStep.Of("df-blocks", "Degrees of freedom, blocks", $"{Blocks} − 1", (Rounded)Blocks - 1),
                        KeyStep.Of("df-treatments", "Degrees of freedom, wheels", $"{t} − 1", (Rounded)t - 1),
                        KeyStep.Of("df-error", "Degrees of freedom, error", $"{Blocks - 1} × {t - 1}", errorDegrees),
                        KeyStep.Of("ms-blocks", "Mean square, blocks", $"{blocks.Text} ÷ {Blocks - 1}", (blocks / (Blocks - 1)).To(Places)),
                        KeyStep.Of("ms-treatments", "Mean square, wheels", $"{treatments.Text} ÷ {t - 1}", treatmentMean),
                        KeyStep.Of("ms-error", "Mean square, error", $"{error.Text} ÷ {errorDegrees}", errorMean),
                        KeyStep.Of("f", "F", $"{treatmentMean.Text} ÷ {errorMean.Text}", f),
                    ]),
                new(
                    "Find the value of F in the table at 0.10. Is it shown that the kind of wheel matters? Between which probabilities at the head of the table does p lie?",
                    [new AnswerRoom(1, "value of the table", "shown or not shown", "p lies")],
                    [
                        KeyStep.Of("critical", "Value of the table", $"{t - 1} and {errorDegrees} degrees of freedom, 0.10", critical),
                        KeyStep.Comparison("verdict", "Shown?", $"{f.Text} against {critical.Text}", f, critical, "shown", "not shown"),
                        KeyStep.Words("bracket", "p lies", $"F of {f.Text} in the row of {t - 1} and {errorDegrees}", bracket.Written, bracket.Exact),
                    ])
                {
                    Remark = "F says whether the kinds differ at all, not which ones. For that compare each with the kind in use, with a test made for several comparisons at once (Dunnett's).",
                },
                .. level == ExerciseLevel.First ? [] : Further(byTreatment, errorMean, errorDegrees),
            ],
            Wrong = OneWay(error + blocks, treatmentMean, n - t),
            Truths = [.. wheels.Skip(1).Select((wheel, i) => new ExerciseTruth($"{wheel.Label} less rubber, thousand plants per acre", wheel.Effect, (byTreatment[i + 1].Exact - byTreatment[0].Exact) / Blocks))],
            Drawn = $"Each seed of {Seeds} in a thousandth of an acre came up with a chance that changes from block to block; the kinds of wheel raise it by what the table says.",
            Sources =
            [
                "Fisher 1925, Statistical Methods for Research Workers, on the analysis of variance.",
                "Cochran & Cox 1957, Experimental Designs, 2nd ed., chapter 4, on blocks.",
            ],
            Files = new InventedTrial("Closing wheels, a teaching sheet", "Does the kind of closing wheel change the stand?", [.. wheels.Select(wheel => (wheel.Name, wheel.Label))], strips)
                .Files(InventedTrial.StandCounts(strips.Select(strip => (strip.Name, 1, (int)counts[Array.FindIndex(wheels, wheel => wheel.Name == strip.Treatment)][strip.Block - 1].Written)))),
        };
    }

    private static IEnumerable<Question> Further(Rounded[] byTreatment, Rounded errorMean, int errorDegrees)
    {
        var (spiked, rubber) = ((byTreatment[1] / Blocks).To(Places), (byTreatment[0] / Blocks).To(Places));
        var error = (2 * errorMean / Blocks).Root().To(Places);
        var t = ((spiked - rubber) / error).To(Places);
        var critical = CriticalTable.T(errorDegrees, Alpha);
        yield return new(
            "Before the trial the grower had asked about one difference only: spiked less rubber. Work out both means, and the standard error of their difference, √(2 × mean square of the error ÷ blocks), and t, two decimals each. Compare with the table of t at 0.10 in the row of the error.",
            [new AnswerRoom(2, "mean, spiked", "mean, rubber", "standard error", "t", "shown or not shown")],
            [
                KeyStep.Of("mean-spiked", "Mean, spiked", $"{byTreatment[1].Text} ÷ {Blocks}", spiked),
                KeyStep.Of("mean-rubber", "Mean, rubber", $"{byTreatment[0].Text} ÷ {Blocks}", rubber),
                KeyStep.Of("error", "Standard error", $"√(2 × {errorMean.Text} ÷ {Blocks})", error),
                KeyStep.Of("t", "t", $"({spiked.Text} − {rubber.Text}) ÷ {error.Text}", t),
                KeyStep.Of("t-critical", "Value of the table", $"{errorDegrees} degrees of freedom, 0.10", critical),
                KeyStep.Comparison("t-verdict", "Shown?", $"{t.Size().Text} against {critical.Text}", t.Size(), critical, "shown", "not shown"),
            ])
        {
            Remark = "This holds for one difference named beforehand. For each kind against rubber the value to pass is higher: Dunnett's. The analysis of the trial folder uses that.",
        };
    }

    private static WrongAnswer OneWay(Rounded squares, Rounded treatmentMean, int degrees)
    {
        var mean = (squares / degrees).To(Places);
        return new(
            "The blocks are left out",
            "What the ground does to whole blocks is then left in the error, and usually makes it too large: the layout bought an exact comparison and the working throws it away. Had blocks differed less than strips within them, the error would come out smaller, with more degrees of freedom; still the layout decides the working, not the outcome.",
            KeyStep.Of("wrong-ss", "Sum of squares of the wrong error", "error and blocks together", squares),
            KeyStep.Of("wrong-ms", "Its mean square", $"{squares.Text} ÷ {degrees}", mean),
            KeyStep.Of("wrong-f", "F of the wrong way", $"{treatmentMean.Text} ÷ {mean.Text}", (treatmentMean / mean).To(Places)));
    }

    // By wheel, then by block. Drawn again without an error to divide by, which favours no wheel.
    private static Rounded[][] Draw(InventedNumbers data, (string Name, string Label, double Effect)[] wheels)
    {
        while (true)
        {
            var shares = Enumerable.Range(0, Blocks).Select(_ => UsualShare + data.Between(-0.08, 0.05)).ToArray();
            var counts = wheels.Select(wheel => shares.Select(share => (Rounded)data.Binomial(Seeds, share + (wheel.Effect / Seeds))).ToArray()).ToArray();
            if (ErrorOf(counts) > 1)
            {
                return counts;
            }
        }
    }

    private static decimal ErrorOf(Rounded[][] counts)
    {
        var all = counts.SelectMany(treatment => treatment).Select(count => count.Written).ToArray();
        var correction = all.Sum() * all.Sum() / all.Length;
        return all.Sum(count => count * count) - correction
            - (counts.Sum(treatment => Squared(treatment.Sum(count => count.Written))) / Blocks) + correction
            - (Enumerable.Range(0, Blocks).Sum(block => Squared(counts.Sum(treatment => treatment[block].Written))) / counts.Length) + correction;

        static decimal Squared(decimal value) => value * value;
    }
}
