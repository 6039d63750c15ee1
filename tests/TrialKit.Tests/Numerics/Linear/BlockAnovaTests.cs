using CsCheck;
using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class BlockAnovaTests
{
    [Theory]
    [InlineData("soybean_seed_rcb")]
    [InlineData("rice_seeding_rcb")]
    public void Of_CompleteBlocks_AgreesWithTheReference(string name)
    {
        var trial = BlockCase.Load(name);

        var analysis = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);

        var lines = trial.Values.GetProperty("anova").EnumerateArray().ToArray();
        foreach (var (line, expected) in new[] { analysis.Blocks, analysis.Treatments, analysis.Error }.Zip(lines))
        {
            var what = $"{trial.Name}, {line.Source}";
            Close.Relative(expected.GetProperty("SS").GetDouble(), line.SumOfSquares, Tolerances.ClosedForm, what);
            Close.Relative(expected.GetProperty("MS").GetDouble(), line.MeanSquare, Tolerances.ClosedForm, what);
            Assert.Equal(expected.GetProperty("df").GetInt32(), line.DegreesOfFreedom);
            if (line.Source != VarianceSource.Error)
            {
                Close.Relative(expected.GetProperty("F").GetDouble(), line.F, Tolerances.ClosedForm, what);
                Close.Relative(expected.GetProperty("p").GetDouble(), line.P, Tolerances.ClosedForm, what);
            }
        }

        Close.Relative(trial.Number("total_SS"), analysis.TotalSumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("grand_mean"), analysis.GrandMean, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("cv_percent"), analysis.CoefficientOfVariation, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("relative_efficiency_vs_crd"), analysis.BlockEfficiency, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("sed"), analysis.DifferenceStandardError(0, 1), Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("se_mean"), analysis.MeanStandardError(0), Tolerances.ClosedForm, trial.Name);
        foreach (var mean in trial.Values.GetProperty("means").EnumerateObject())
        {
            Close.Relative(mean.Value.GetDouble(), analysis.Means[trial.TreatmentOf(mean.Name)], Tolerances.ClosedForm, mean.Name);
        }

        var sed = analysis.DifferenceStandardError(0, 1)!.Value;
        Close.Relative(trial.Number("lsd", "a05"), LeastSignificantDifference.Of(sed, analysis.Error.DegreesOfFreedom, 0.05), Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("lsd", "a10"), LeastSignificantDifference.Of(sed, analysis.Error.DegreesOfFreedom, 0.10), Tolerances.ClosedForm, trial.Name);
    }

    [Fact]
    public void Of_Hardness_AgreesWithTheReferenceWithAndWithoutBlocks()
    {
        var trial = BlockCase.Load("montgomery_hardness_rcb", "blocks/extra.json");

        var blocked = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);
        var oneWay = OneWayAnova.Of(trial.Y, trial.Treatment);

        Close.Relative(trial.Number("F"), blocked.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("p"), blocked.Treatments.P, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("F_block"), blocked.Blocks.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("p_block"), blocked.Blocks.P, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("F_crd"), oneWay.Groups.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("p_crd"), oneWay.Groups.P, Tolerances.ClosedForm, trial.Name);
    }

    [Theory]
    [InlineData("soybean_seed_rcb")]
    [InlineData("rice_seeding_rcb")]
    public void NonAdditivity_CompleteBlocks_AgreesWithTheReference(string name)
    {
        var trial = BlockCase.Load(name);

        var test = NonAdditivity.Of(BlockAnova.Of(trial.Y, trial.Block, trial.Treatment));

        Assert.NotNull(test);
        Close.Relative(trial.Number("tukey_nonadd", "SS"), test.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("tukey_nonadd", "F"), test.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("tukey_nonadd", "p"), test.P, Tolerances.ClosedForm, trial.Name);
        Assert.Equal((int)trial.Number("tukey_nonadd", "df2"), test.DegreesOfFreedom);
    }

    [Fact]
    public void NonAdditivity_ImmersBarley_AgreesWithTheReference()
    {
        var rows = ReferenceData.Csv("blocks/immer.csv").Select(row => row.Select(ReferenceData.Number).ToArray()).ToArray();

        var test = NonAdditivity.Of(BlockAnova.Of(
            [.. rows.Select(row => row[2])], [.. rows.Select(row => (int)row[0])], [.. rows.Select(row => (int)row[1])]));

        Assert.NotNull(test);
        Close.Relative(595.070900091002, test.SumOfSquares, Tolerances.ClosedForm, "immer");
        Close.Relative(6.97303724671108, test.F, Tolerances.ClosedForm, "immer");
        Close.Relative(0.0161209047830945, test.P, Tolerances.ClosedForm, "immer");
        Assert.Equal(19, test.DegreesOfFreedom);
    }

    [Theory]
    [InlineData("soybean_seed_rcb")]
    [InlineData("rice_seeding_rcb")]
    public void Friedman_CompleteBlocks_AgreesWithTheReference(string name)
    {
        var trial = BlockCase.Load(name);

        var test = Friedman.Of(trial.Y, trial.Block, trial.Treatment);

        Close.Relative(trial.Number("friedman", "chi2"), test.ChiSquare, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("friedman", "p"), test.P, Tolerances.ClosedForm, trial.Name);
    }

    [Fact]
    public void Of_MissingStrip_AgreesWithHildebrandAndPoey()
    {
        var trial = BlockCase.Load("missing_plot_hildebrand_poey");

        var analysis = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);
        var plug = MissingCell.Of(trial.Y, trial.Block, trial.Treatment);

        Close.Relative(trial.Number("SS_block_seq"), analysis.Blocks.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("SS_trt_adj"), analysis.Treatments.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("SSE"), analysis.Error.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("F"), analysis.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("p"), analysis.Treatments.P, Tolerances.ClosedForm, trial.Name);
        Assert.Equal((int)trial.Number("df_err"), analysis.Error.DegreesOfFreedom);
        foreach (var name in trial.Treatments)
        {
            Close.Relative(trial.Number("lsmeans", name), analysis.Means[trial.TreatmentOf(name)], Tolerances.ClosedForm, name);
            Close.Relative(trial.Number("lsmeans_se", name), analysis.MeanStandardError(trial.TreatmentOf(name)), Tolerances.ClosedForm, name);
        }

        foreach (var pair in trial.Values.GetProperty("pairs").EnumerateObject())
        {
            var sides = pair.Name.Split(" - ").Select(trial.TreatmentOf).ToArray();
            Close.Relative(pair.Value.GetDouble(), analysis.Difference(sides[0], sides[1]), Tolerances.ClosedForm, pair.Name);
            Close.Relative(trial.Number("pairs_se", pair.Name), analysis.DifferenceStandardError(sides[0], sides[1]), Tolerances.ClosedForm, pair.Name);
        }

        Close.Relative(trial.Number("missing_estimate"), plug.Estimate, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("SS_trt_adj"), plug.TreatmentSumOfSquares, Tolerances.ClosedForm, trial.Name);

        // Printed by Hildebrand and Poey 1985: 228.67 before and 32.67 of bias.
        Assert.Equal(228.67, plug.PluggedTreatmentSumOfSquares, 0.005);
        Assert.Equal(32.67, plug.Bias, 0.005);
    }

    [Fact]
    public void Of_TwoMissingStrips_AgreesWithTheReference()
    {
        var trial = BlockCase.Load("rice_two_missing");

        var analysis = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);

        Close.Relative(trial.Number("trt_adj_SS"), analysis.Treatments.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("trt_F"), analysis.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("trt_p"), analysis.Treatments.P, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Number("MSE"), analysis.ErrorMeanSquare, Tolerances.ClosedForm, trial.Name);
        Assert.Equal((int)trial.Number("df"), analysis.Error.DegreesOfFreedom);
        foreach (var name in trial.Treatments)
        {
            Close.Relative(trial.Number("lsmeans", name), analysis.Means[trial.TreatmentOf(name)], Tolerances.ClosedForm, name);
            Close.Relative(trial.Number("lsmeans_se", name), analysis.MeanStandardError(trial.TreatmentOf(name)), Tolerances.ClosedForm, name);
        }

        foreach (var pair in trial.Values.GetProperty("pairs").EnumerateArray())
        {
            var name = pair.GetProperty("contrast").GetString()!;
            var sides = name.Split(" - ").Select(trial.TreatmentOf).ToArray();
            Close.Relative(pair.GetProperty("est").GetDouble(), analysis.Difference(sides[0], sides[1]), Tolerances.ClosedForm, name);
            Close.Relative(pair.GetProperty("se").GetDouble(), analysis.DifferenceStandardError(sides[0], sides[1]), Tolerances.ClosedForm, name);
        }

        Assert.Null(analysis.BlockEfficiency);
    }

    [Fact]
    public void Of_NoVariation_LeavesFUndefinedAndSaysSo()
    {
        var analysis = BlockAnova.Of([0.1, 0.1, 0.1, 0.1, 0.1, 0.1], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 0, 1]);

        Assert.Equal(FStatus.NoVariation, analysis.Treatments.Status);
        Assert.Null(analysis.Treatments.F);
        Assert.Null(analysis.Treatments.P);
        Assert.Null(NonAdditivity.Of(analysis));
        Assert.Equal(0, analysis.Error.MeanSquare);
    }

    [Fact]
    public void Of_BlocksAndTreatmentsExplainAll_LeavesFUndefinedAndSaysSo()
    {
        // 0.1 steps are not exact in binary: what is left is rounding, not error.
        var analysis = BlockAnova.Of([0.1, 0.4, 0.2, 0.5, 0.3, 0.6], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 0, 1]);

        Assert.Equal(FStatus.NoErrorVariation, analysis.Treatments.Status);
        Assert.Null(analysis.Treatments.F);
        Assert.Equal(0.3, analysis.Difference(1, 0), Tolerances.FewRoundings);
    }

    [Fact]
    public void Of_OneBlock_GivesMeansAndNoF()
    {
        var analysis = BlockAnova.Of([3, 5, 9], [0, 0, 0], [0, 1, 2]);

        Assert.Equal(FStatus.NoErrorDegrees, analysis.Treatments.Status);
        Assert.Null(analysis.DifferenceStandardError(0, 1));
        Assert.Null(analysis.CoefficientOfVariation);
        Close.Relative(3, analysis.Means[0], Tolerances.FewRoundings, "mean of one observation");
        Close.Relative(9, analysis.Means[2], Tolerances.FewRoundings, "mean of one observation");
    }

    [Fact]
    public void Of_TreatmentWithOneStripAndBlockWithOneCell_UsesWhatIsThere()
    {
        // Treatment 2 stands in block 0 only; block 3 holds treatment 0 only and says nothing about differences.
        int[] block = [0, 0, 0, 1, 1, 2, 2, 3];
        int[] treatment = [0, 1, 2, 0, 1, 0, 1, 0];

        var with = BlockAnova.Of([10, 12, 17, 20, 23, 30, 31, 99], block, treatment);
        var without = BlockAnova.Of([10, 12, 17, 20, 23, 30, 31], block.AsSpan(..^1), treatment.AsSpan(..^1));

        Close.Relative(without.Difference(1, 0), with.Difference(1, 0), Tolerances.FewRoundings, "difference of 1 and 0");
        Close.Relative(without.ErrorMeanSquare!.Value, with.ErrorMeanSquare, Tolerances.FewRoundings, "error mean square");
        Close.Relative(2, with.Difference(1, 0), Tolerances.FewRoundings, "mean of 2, 3, 1");
        Close.Relative(7, with.Difference(2, 0), Tolerances.FewRoundings, "17 less 10: in block 0 treatments 0 and 1 stand as far apart as elsewhere");
        Assert.Equal(2, with.Error.DegreesOfFreedom);
    }

    [Fact]
    public void Of_DisconnectedDesign_NamesTheGroups()
    {
        var error = Assert.Throws<ArgumentException>(() => BlockAnova.Of([1, 2, 3, 4], [0, 0, 1, 1], [0, 2, 1, 3]));

        Assert.Contains("{0, 2} and {1, 3}", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("twice in a block", new[] { 1.0, 2, 3 }, new[] { 0, 0, 1 }, new[] { 0, 0, 0 })]
    [InlineData("not a number", new[] { 1.0, double.NaN, 3 }, new[] { 0, 1, 2 }, new[] { 0, 0, 0 })]
    [InlineData("infinite", new[] { 1.0, double.PositiveInfinity, 3 }, new[] { 0, 1, 2 }, new[] { 0, 0, 0 })]
    [InlineData("nothing", new double[0], new int[0], new int[0])]
    [InlineData("negative level", new[] { 1.0, 2 }, new[] { 0, -1 }, new[] { 0, 0 })]
    [InlineData("level left out", new[] { 1.0, 2 }, new[] { 0, 0 }, new[] { 0, 2 })]
    [InlineData("too few blocks", new[] { 1.0, 2 }, new[] { 0 }, new[] { 0, 1 })]
    [InlineData("too few responses", new[] { 1.0 }, new[] { 0, 0 }, new[] { 0, 1 })]
    public void Of_ImpossibleInput_IsRefused(string why, double[] y, int[] block, int[] treatment)
    {
        var error = Assert.ThrowsAny<ArgumentException>(() => BlockAnova.Of(y, block, treatment));

        Assert.True(error.Message.Contains("expected", StringComparison.Ordinal) || error.Message.Contains("without gaps", StringComparison.Ordinal), why);
    }

    [Fact]
    public void Of_AnyIncompleteTrial_KeepsItsLawsUnderRelabellingShiftAndScale()
    {
        Gen.Select(Gen.Int[2, 5], Gen.Int[2, 6], Gen.Int[0, int.MaxValue]).Sample(
            (treatments, blocks, seed) =>
            {
                var (y, block, treatment) = Trials.Draw(treatments, blocks, seed, dropped: 0.15);
                if (y.Length - blocks - treatments + 1 < 1)
                {
                    return;
                }

                var plain = BlockAnova.Of(y, block, treatment);
                var what = $"{treatments} treatments, {blocks} blocks, seed {seed}";
                Close.Relative(
                    plain.TotalSumOfSquares,
                    plain.Blocks.SumOfSquares + plain.Treatments.SumOfSquares + plain.Error.SumOfSquares,
                    Tolerances.ClosedForm,
                    $"{what}: lines add up");

                var relabelled = BlockAnova.Of(y, block, [.. treatment.Select(t => treatments - 1 - t)]);
                Close.Relative(plain.Treatments.F!.Value, relabelled.Treatments.F, Tolerances.ClosedForm, $"{what}: relabelled");
                Close.Absolute(-plain.Difference(0, 1), relabelled.Difference(treatments - 2, treatments - 1), Tolerances.ClosedForm * 10, $"{what}: relabelled");

                var moved = BlockAnova.Of(y, [.. block.Select(b => blocks - 1 - b)], treatment);
                Close.Relative(plain.Treatments.F.Value, moved.Treatments.F, Tolerances.ClosedForm, $"{what}: blocks permuted");

                var scaled = BlockAnova.Of([.. y.Select(v => (v * 2.54) + 100)], block, treatment);
                Close.Relative(plain.Treatments.F.Value, scaled.Treatments.F, Tolerances.ClosedForm, $"{what}: other unit");
                Close.Absolute(2.54 * plain.Difference(0, 1), scaled.Difference(0, 1), Tolerances.ClosedForm * 10, $"{what}: other unit");
                Close.Relative(2.54 * plain.DifferenceStandardError(0, 1)!.Value, scaled.DifferenceStandardError(0, 1), Tolerances.ClosedForm, what);
            },
            iter: 300);
    }

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    public void Of_TinyOrHugeUnit_ChangesOnlyTheUnit(double unit)
    {
        var trial = BlockCase.Load("rice_two_missing");
        var plain = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);

        var scaled = BlockAnova.Of([.. trial.Y.Select(v => v * unit)], trial.Block, trial.Treatment);

        Close.Relative(plain.Treatments.F!.Value, scaled.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(plain.ErrorMeanSquare!.Value * unit * unit, scaled.ErrorMeanSquare, Tolerances.ClosedForm, trial.Name);
    }

    [Fact]
    public void Of_CompleteDesign_ClosedFormEqualsLeastSquaresOnTheWholeDesign()
    {
        var trial = BlockCase.Load("soybean_seed_rcb");
        var design = new double[trial.Y.Length, 9];
        for (var i = 0; i < trial.Y.Length; i++)
        {
            design[i, trial.Block[i]] = 1;
            if (trial.Treatment[i] > 0)
            {
                design[i, 4 + trial.Treatment[i]] = 1;
            }
        }

        var direct = LeastSquares.Fit(design, trial.Y);
        var analysis = BlockAnova.Of(trial.Y, trial.Block, trial.Treatment);

        Close.Relative(direct.ResidualSumOfSquares, analysis.Error.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(direct.Coefficients[5], analysis.Difference(1, 0), Tolerances.ClosedForm, trial.Name);
        Close.Relative(direct.StandardError(5)!.Value, analysis.DifferenceStandardError(1, 0), Tolerances.ClosedForm, trial.Name);
    }
}
