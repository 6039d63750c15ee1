using CsCheck;
using TrialKit.Comparison;
using TrialKit.Tests.Numerics;
using TrialKit.Tests.Numerics.Linear;

namespace TrialKit.Tests.Comparison;

/// <summary>Comparisons in blocks against <c>reference-data/blocks</c> (R 4.2.2), and their laws.</summary>
public class BlockedStripsTests
{
    [Theory]
    [InlineData("soybean_seed_rcb")]
    [InlineData("rice_seeding_rcb")]
    public void Compare_CompleteBlocks_AgreesWithEveryProcedure(string name)
    {
        var (data, comparison) = Reference(name, alpha: 0.05, withControl: true);
        var blocks = comparison.Blocks!;
        var lines = data.Values.GetProperty("anova");
        for (var line = 0; line < 3; line++)
        {
            Close.Relative(lines[line].GetProperty("SS").GetDouble(), blocks.Anova.Rows[line].SumOfSquares, Tolerances.ClosedForm, data.Name);
            Assert.Equal(lines[line].GetProperty("df").GetInt32(), blocks.Anova.Rows[line].DegreesOfFreedom);
        }

        Close.Relative(lines[1].GetProperty("p").GetDouble(), blocks.Anova.Treatments.P!.Value.Value, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number("cv_percent"), blocks.Anova.CoefficientOfVariation, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number("relative_efficiency_vs_crd"), blocks.Efficiency, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number("friedman", "p"), blocks.Friedman!.P.Value, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number("tukey_nonadd", "p"), blocks.NonAdditivity!.P.Value, Tolerances.ClosedForm, data.Name);
        foreach (var pair in data.Values.GetProperty("pairwise").EnumerateArray())
        {
            var what = pair.GetProperty("contrast").GetString()!;
            var sides = what.Split(" - ").Select(side => data.Treatments[data.TreatmentOf(side)]).ToArray();
            var found = blocks.Pairwise.Single(other => sides.Contains(other.Treatment.Name, StringComparer.Ordinal) && sides.Contains(other.Baseline.Name, StringComparer.Ordinal));
            var sign = found.Treatment.Name == sides[0] ? 1 : -1;
            Close.Relative(pair.GetProperty("diff").GetDouble(), sign * found.Difference, Tolerances.ClosedForm, what);
            Close.Relative(pair.GetProperty("se").GetDouble(), found.StandardError, Tolerances.ClosedForm, what);
            Close.Relative(data.Number("lsd", "a05"), found.Lsd, Tolerances.ClosedForm, what);
            Close.Relative(pair.GetProperty("p_lsd").GetDouble(), found.Unadjusted.Value, Tolerances.ClosedForm, what);
            Close.Relative(pair.GetProperty("p_holm").GetDouble(), found.Holm.Value, Tolerances.ClosedForm, what);
            Close.Absolute(pair.GetProperty("p_tukey").GetDouble(), found.Tukey.Value, Tolerances.RangeProbability, what);
        }

        var dunnett = data.Values.GetProperty("dunnett");
        Assert.Equal(dunnett.GetProperty("control").GetString(), comparison.Contrasts[0].Baseline.Name);
        for (var i = 0; i < comparison.Contrasts.Length; i++)
        {
            var contrast = comparison.Contrasts[i];
            Assert.StartsWith(contrast.Treatment.Name, dunnett.GetProperty("contrast")[i].GetString(), StringComparison.Ordinal);
            Close.Relative(dunnett.GetProperty("t")[i].GetDouble(), contrast.Estimate!.T, Tolerances.ClosedForm, contrast.Treatment.Name);
            Close.Absolute(dunnett.GetProperty("p_two_integral")[i].GetDouble(), contrast.P!.Value.Value, Tolerances.DunnettProbability, contrast.Treatment.Name);
            Assert.Equal(contrast.P, blocks.Pairwise.Single(pair => pair.Dunnett is not null && (pair.Treatment == contrast.Treatment || pair.Baseline == contrast.Treatment)).Dunnett);
        }
    }

    [Theory]
    [InlineData("soybean_seed_rcb", 0.05, "lsd05", "tukey05")]
    [InlineData("soybean_seed_rcb", 0.10, "lsd10", "tukey10")]
    [InlineData("rice_seeding_rcb", 0.05, "lsd05", "tukey05")]
    [InlineData("rice_seeding_rcb", 0.10, "lsd10", "tukey10")]
    public void Letters_CompleteBlocks_AgreeWithTheReference(string name, double alpha, string lsd, string tukey)
    {
        var (data, comparison) = Reference(name, alpha, withControl: false);
        foreach (var letters in comparison.Blocks!.Letters)
        {
            Assert.Equal(data.Values.GetProperty("cld").GetProperty(lsd).GetProperty(letters.Treatment.Name).GetString(), letters.Lsd);
            Assert.Equal(data.Values.GetProperty("cld").GetProperty(tukey).GetProperty(letters.Treatment.Name).GetString(), letters.Tukey);
        }

        var isShown = comparison.Blocks.Anova.Treatments.P!.Value.Value < alpha;
        Assert.All(comparison.Blocks.Letters, letters => Assert.Equal(isShown ? letters.Lsd : "a", letters.Protected));
    }

    [Fact]
    public void Compare_WithoutControl_IsJudgedByTukeyOnAllPairs()
    {
        var (_, comparison) = Reference("soybean_seed_rcb", 0.05, withControl: false);

        Assert.Equal(10, comparison.Contrasts.Length);
        foreach (var contrast in comparison.Contrasts)
        {
            Assert.StartsWith("Tukey", contrast.JudgedBy.Name, StringComparison.Ordinal);
            Assert.Equal(comparison.Blocks!.Pairwise.Single(pair => pair.Treatment == contrast.Treatment && pair.Baseline == contrast.Baseline).Tukey, contrast.P);
        }
    }

    [Fact]
    public void Compare_Hardness_AgreesWithThePrintedAnalysis()
    {
        var (data, comparison) = Reference("montgomery_hardness_rcb", 0.05, withControl: false, "blocks/extra.json");

        Close.Relative(data.Number("F"), comparison.Blocks!.Anova.Treatments.F, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number("p"), comparison.Blocks.Anova.Treatments.P!.Value.Value, Tolerances.ClosedForm, data.Name);
    }

    [Fact]
    public void Randomization_ThreeTreatments_CountsWhatTheReferenceCounts()
    {
        var (data, comparison) = Reference("perm_within_blocks_exact", 0.05, withControl: false);
        var test = comparison.Blocks!.Randomization!;

        Close.Relative(420.0 / 7776, test.P.Value, Tolerances.ExactCount, data.Name);
        Close.Relative(6.0 / 7776, test.SmallestPossible.Value, Tolerances.ExactCount, data.Name);
        Assert.Null(test.Seed);
    }

    [Theory]
    [InlineData("missing_plot_hildebrand_poey", "SS_trt_adj", "F")]
    [InlineData("rice_two_missing", "trt_adj_SS", "trt_F")]
    public void Compare_StripsMissing_AgreesWithLeastSquaresAndSaysSo(string name, string sum, string f)
    {
        var (data, comparison) = Reference(name, 0.05, withControl: true);

        Close.Relative(data.Number(sum), comparison.Blocks!.Anova.Treatments.SumOfSquares, Tolerances.ClosedForm, data.Name);
        Close.Relative(data.Number(f), comparison.Blocks.Anova.Treatments.F, Tolerances.ClosedForm, data.Name);
        Assert.All(comparison.Means, mean => Close.Relative(data.Number("lsmeans", mean.Treatment.Name), mean.Mean, Tolerances.ClosedForm, mean.Treatment.Name));
        Assert.Contains(comparison.Findings, finding => finding.Id == "strips-missing");
        Assert.Null(comparison.Blocks.Efficiency);
        Assert.Null(comparison.Blocks.Friedman);
    }

    [Fact]
    public void Compare_OneWildStrip_IsNamedAndKept()
    {
        var trial = Made((block, treatment) => block + treatment + (0.1 * ((block * treatment) % 3)) + (block == 2 && treatment == 1 ? 8 : 0), treatments: 3, blocks: 6);
        var comparison = ComparisonTrial.Compare(trial);

        Assert.Contains("S08", Assert.Single(comparison.Findings, finding => finding.Id == "odd-one-out").Message, StringComparison.Ordinal);
        Assert.Equal(18, comparison.Blocks!.Residuals.Length);
    }

    [Fact]
    public void Compare_TreatmentsThatMultiplyTheBlock_AreSaidNotToAdd()
    {
        var trial = Made((block, treatment) => ((block + 1) * (treatment + 1)) + (0.02 * ((block * 7 * (treatment + 2)) % 5)), treatments: 4, blocks: 5);

        Assert.Contains(ComparisonTrial.Compare(trial).Findings, finding => finding.Id == "blocks-not-additive");
    }

    [Fact]
    public void Compare_OneTreatmentOfGreatSpread_IsSaid()
    {
        var trial = Made((block, treatment) => treatment == 2 ? 20 * Math.Sin(block * 2.4) : Math.Cos((block * 3.1) + treatment), treatments: 4, blocks: 8);

        Assert.Contains(ComparisonTrial.Compare(trial).Findings, finding => finding.Id == "spread-by-treatment");
    }

    [Fact]
    public void Equivalence_OneTreatmentAgainstTheControl_IsTheTwoOneSidedTests()
    {
        double[] y = [10, 10.4, 12, 12.1, 9, 9.5, 11, 10.9, 10.5, 10.6];
        var trial = ComparisonTrial.Blocks(y, [0, 0, 1, 1, 2, 2, 3, 3, 4, 4], [0, 1, 0, 1, 0, 1, 0, 1, 0, 1], ["none", "new"], control: 0, margin: 0.8);
        var pairs = ComparisonTrial.Pairs([10.4, 12.1, 9.5, 10.9, 10.6], [10, 12, 9, 11, 10.5], margin: 0.8);

        var (blocked, paired) = (ComparisonTrial.Compare(trial).Contrasts[0], ComparisonTrial.Compare(pairs).Contrasts[0]);

        Close.Relative(paired.Equivalence!.P.Value, blocked.Equivalence!.P.Value, Tolerances.RangeAgainstT, "equivalence in two blocks' ways");
        Close.Relative(paired.P!.Value.Value, blocked.P!.Value.Value, Tolerances.RangeAgainstT, "p");
    }

    [Fact]
    public void Compare_TreatmentOnOneStrip_HasItsMeanAndNoTestAndLeavesTheOthersAlone()
    {
        double[] y = [10, 11, 12, 12.7, 9, 10.6, 11, 12.1, 14];
        int[] block = [0, 0, 1, 1, 2, 2, 3, 3, 0], treatment = [0, 1, 0, 1, 0, 1, 0, 1, 2];
        var all = ComparisonTrial.Compare(ComparisonTrial.Blocks(y, block, treatment, ["none", "new", "once"], control: 0));
        var without = ComparisonTrial.Compare(ComparisonTrial.Blocks(y[..8], block[..8], treatment[..8], ["none", "new"], control: 0));

        Assert.Equal(["new", "once"], all.Contrasts.Select(contrast => contrast.Treatment.Name));
        Assert.Equal(without.Contrasts[0], all.Contrasts[0] with { Treatment = without.Contrasts[0].Treatment, Baseline = without.Contrasts[0].Baseline });
        Assert.Equal(Verdict.NotJudged, all.Contrasts[1].Verdict);
        Assert.Null(all.Contrasts[1].Detectable);
        Assert.Equal(3, all.Means.Length);
        Assert.Equal(1, all.Means[2].Strips);

        // Adjusted for its block: there it stands 3.5 above the mean of the two others, whose means over all blocks are 10.5 and 11.6.
        Close.Relative(3.5, all.Means[2].Mean - ((all.Means[0].Mean + all.Means[1].Mean) / 2), Tolerances.ClosedForm, "mean of the one strip");
        Assert.DoesNotContain(all.Blocks!.Pairwise, pair => pair.Treatment.Name == "once");
        Assert.Contains(all.Findings, finding => finding.Id == "treatment-one-strip");
    }

    [Fact]
    public void Compare_ControlOnOneStrip_TestsTheOthersWithEachOther()
    {
        double[] y = [11, 12.4, 12.7, 14, 10.6, 10.9, 12.1, 13.5, 10];
        int[] block = [0, 0, 1, 1, 2, 2, 3, 3, 0], treatment = [1, 2, 1, 2, 1, 2, 1, 2, 0];
        var contrasts = ComparisonTrial.Compare(ComparisonTrial.Blocks(y, block, treatment, ["none", "new", "old"], control: 0)).Contrasts;

        Assert.Equal([Verdict.NotJudged, Verdict.NotJudged], contrasts.Where(contrast => contrast.Baseline.Name == "none").Select(contrast => contrast.Verdict));
        var tested = Assert.Single(contrasts, contrast => contrast.P is not null);
        Assert.Equal(("old", "new"), (tested.Treatment.Name, tested.Baseline.Name));
        Assert.StartsWith("Tukey", tested.JudgedBy.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_EveryTreatmentOnOneStrip_TestsNothingAndSaysSo()
    {
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Blocks([1, 2, 2.5, 4], [0, 0, 1, 1], [0, 1, 0, 2], ["none", "new", "old"]));

        Assert.All(comparison.Contrasts, contrast => Assert.Null(contrast.P));
        Assert.Contains(comparison.Findings, finding => finding.Id == "no-replicates");
    }

    [Theory]
    [InlineData(2.0)]
    [InlineData(4.0)]
    [InlineData(8.0)]
    public void Equivalence_SeveralTreatments_IsShownJustWhereItsIntervalLiesWithinTheMargin(double margin)
    {
        var data = BlockCase.Load("soybean_seed_rcb");
        foreach (int? control in new int?[] { null, 0 })
        {
            var comparison = ComparisonTrial.Compare(ComparisonTrial.Blocks(data.Y, data.Block, data.Treatment, data.Treatments, control, margin: margin));
            Assert.All(comparison.Contrasts, contrast =>
            {
                var interval = contrast.Equivalence!.Interval!.Value;
                Assert.Equal(contrast.IsWithinMargin, interval.Low > -margin && interval.High < margin);
            });
        }
    }

    [Fact]
    public void Compare_BlocksPermutedAndTreatmentsSwapped_ChangesSignsOnly() => Gen.Select(Gen.Int[3, 4], Gen.Int[3, 5], Gen.Int[0, 10000]).Sample(
        (treatments, blocks, seed) =>
        {
            var (y, block, treatment) = Numerics.Linear.Trials.Draw(treatments, blocks, seed, dropped: 0.1);
            if (y.Length - blocks - treatments < 1)
            {
                return;
            }

            string[] names = [.. Enumerable.Range(0, treatments).Select(t => $"T{t}")];
            var plain = ComparisonTrial.Compare(ComparisonTrial.Blocks(y, block, treatment, names));
            var moved = ComparisonTrial.Compare(ComparisonTrial.Blocks([.. y.Select(value => (3 * value) - 5)], [.. block.Select(b => blocks - 1 - b)], [.. treatment.Select(t => treatments - 1 - t)], [.. names.Reverse()]));
            Close.Relative(plain.Blocks!.Anova.Treatments.F!.Value, moved.Blocks!.Anova.Treatments.F, Tolerances.ClosedForm, "F");
            foreach (var contrast in plain.Contrasts)
            {
                var other = moved.Contrasts.Single(candidate => candidate.Treatment.Name == contrast.Baseline.Name && candidate.Baseline.Name == contrast.Treatment.Name);
                Close.Absolute(-3 * contrast.Difference, other.Difference, Tolerances.ClosedForm * 100, "difference");
                Close.Absolute(contrast.P!.Value.Value, other.P!.Value.Value, Tolerances.ClosedForm, "p");
            }
        },
        iter: 25);

    private static (BlockCase Data, MeasureComparison Comparison) Reference(string name, double alpha, bool withControl, string file = "blocks/rcb.json")
    {
        var data = BlockCase.Load(name, file);
        int? control = withControl ? (data.Values.TryGetProperty("dunnett", out var dunnett) ? data.TreatmentOf(dunnett.GetProperty("control").GetString()!) : 0) : null;
        return (data, ComparisonTrial.Compare(ComparisonTrial.Blocks(data.Y, data.Block, data.Treatment, data.Treatments, control, alpha)));
    }

    private static TrialKit.Trials.StripTrial Made(Func<int, int, double> value, int treatments, int blocks)
    {
        int[] block = [.. Enumerable.Range(0, treatments * blocks).Select(index => index / treatments)];
        int[] treatment = [.. Enumerable.Range(0, treatments * blocks).Select(index => index % treatments)];
        return ComparisonTrial.Blocks([.. block.Select((b, index) => value(b, treatment[index]))], block, treatment, [.. Enumerable.Range(0, treatments).Select(t => $"T{t}")]);
    }
}
