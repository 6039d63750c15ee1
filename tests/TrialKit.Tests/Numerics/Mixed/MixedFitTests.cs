using CsCheck;
using TrialKit.Numerics.Linear;
using TrialKit.Numerics.Mixed;

namespace TrialKit.Tests.Numerics.Mixed;

public class MixedFitTests
{
    [Fact]
    public void Of_Dyestuff_AgreesWithTheReferenceAndTheAnovaEstimators()
    {
        var trial = MixedCase.Load("dyestuff");
        var y = trial.Numbers("Yield");

        var fit = MixedFit.Of(y, MixedCase.Intercept(y.Length), [trial.Levels("Batch")]);

        Assert.Equal(MixedStatus.Converged, fit.Status);
        Assert.False(fit.IsSingular);
        Close.Relative(trial.Values.GetProperty("reml").GetDouble(), fit.Criterion, Tolerances.Reml, trial.Name);
        trial.HasFixed(fit, trial.Values.GetProperty("fixef"));

        // Balanced: (MSB - MSW)/5 and MSW, exactly.
        var (between, within) = (trial.Values.GetProperty("anova_MSB").GetDouble(), trial.Values.GetProperty("MSW").GetDouble());
        Close.Relative((between - within) / 5, fit.VarianceComponents[0], Tolerances.ClosedForm, trial.Name);
        Close.Relative(within, fit.ResidualVariance, Tolerances.ClosedForm, trial.Name);
        Close.Relative(5, fit.Contrast([1]).DegreesOfFreedom, Tolerances.ClosedForm, trial.Name);
    }

    // Every case of the reference is tested but one: sleepstudy states no data, and needs a random slope, which no trial of strips asks for.
    [Fact]
    public void Reference_SleepStudy_HoldsNoDataToFit() =>
        Assert.Equal(System.Text.Json.JsonValueKind.Null, ReferenceData.Json("mixed/mixed.json").GetProperty("sleepstudy").GetProperty("data").ValueKind);

    [Fact]
    public void Of_Dyestuff2_HasNoBatchVarianceAndSaysSo()
    {
        var trial = MixedCase.Load("dyestuff2_zero_variance");
        var y = trial.Numbers("Yield");

        var fit = MixedFit.Of(y, MixedCase.Intercept(y.Length), [trial.Levels("Batch")]);

        Assert.True(fit.IsSingular);
        Assert.Equal(0, fit.VarianceComponents[0]);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Residual").GetDouble(), fit.ResidualVariance, Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("reml").GetDouble(), fit.Criterion, Tolerances.Reml, trial.Name);
        trial.HasFixed(fit, trial.Values.GetProperty("fixef"));
    }

    [Fact]
    public void Of_TurnipLeaves_AgreesWithTheAnovaEstimators()
    {
        var trial = MixedCase.Load("turnip_nested");
        var y = trial.Numbers("y");
        var plant = trial.Levels("plant");

        var fit = MixedFit.Of(y, MixedCase.Intercept(y.Length), [FactorDesign.Cross(plant, trial.Levels("leaf")), plant]);

        var expected = trial.Values.GetProperty("varcomp_anova");
        Close.Relative(expected.GetProperty("leaf").GetDouble(), fit.VarianceComponents[0], Tolerances.ClosedForm, trial.Name);
        Close.Relative(expected.GetProperty("plant").GetDouble(), fit.VarianceComponents[1], Tolerances.ClosedForm, trial.Name);
        Close.Relative(expected.GetProperty("det").GetDouble(), fit.ResidualVariance, Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Values.GetProperty("mean").GetDouble(), fit.Coefficients[0], Tolerances.ClosedForm, trial.Name);
        Close.Relative(trial.Values.GetProperty("se_mean").GetDouble(), fit.Contrast([1]).StandardError, Tolerances.Reml, trial.Name);
    }

    [Fact]
    public void Of_StripsWithSpots_AgreesWithTheReference()
    {
        var trial = MixedCase.Load("rcb_subsamples_sim");
        var y = trial.Numbers("y");
        var (treatment, block) = (trial.Levels("trt"), trial.Levels("block"));
        var strip = FactorDesign.Cross(block, treatment);

        var withFixedBlocks = MixedFit.Of(y, FactorDesign.Of(treatment, block), [strip]);
        var withRandomBlocks = MixedFit.Of(y, FactorDesign.Of(treatment), [strip, block]);

        var expected = trial.Values.GetProperty("reml_fixedblock");
        Close.Relative(expected.GetProperty("plot").GetDouble(), withFixedBlocks.VarianceComponents[0], Tolerances.Reml, trial.Name);
        Close.Relative(expected.GetProperty("Residual").GetDouble(), withFixedBlocks.ResidualVariance, Tolerances.Reml, trial.Name);
        trial.HasTest(withFixedBlocks, trial.Values.GetProperty("anova_fixedblock"), "trt", 1, 2);
        trial.HasTest(withFixedBlocks, trial.Values.GetProperty("anova_fixedblock"), "block", 3, 3);
        expected = trial.Values.GetProperty("reml_randblock");
        Close.Relative(expected.GetProperty("plot").GetDouble(), withRandomBlocks.VarianceComponents[0], Tolerances.Reml, trial.Name);
        Close.Relative(expected.GetProperty("block").GetDouble(), withRandomBlocks.VarianceComponents[1], Tolerances.Reml, trial.Name);
        trial.HasTest(withRandomBlocks, trial.Values.GetProperty("anova_randblock"), "trt", 1, 2);
        HasMeansAndPairs(trial, withFixedBlocks, blocks: 4);
    }

    [Fact]
    public void Of_StripsWithUnequalSpots_AgreesWithTheReference()
    {
        var trial = MixedCase.Load("rcb_subsamples_unbalanced_sim");
        var y = trial.Numbers("y");
        var (treatment, block) = (trial.Levels("trt"), trial.Levels("block"));

        var fit = MixedFit.Of(y, FactorDesign.Of(treatment, block), [FactorDesign.Cross(block, treatment)]);

        Close.Relative(trial.Values.GetProperty("reml").GetDouble(), fit.Criterion, Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("plot").GetDouble(), fit.VarianceComponents[0], Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Residual").GetDouble(), fit.ResidualVariance, Tolerances.Reml, trial.Name);
        trial.HasFixed(fit, trial.Values.GetProperty("fixef"));
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "trt", 1, 2);
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "block", 3, 3);
        HasMeansAndPairs(trial, fit, blocks: 4);
    }

    [Fact]
    public void Of_OatsSplitPlot_AgreesWithTheReference()
    {
        var trial = MixedCase.Load("oats_splitplot");
        var y = trial.Numbers("yield");
        var (n, block) = (trial.Levels("N"), trial.Levels("Block"));
        var variety = trial.Levels("Variety");
        var plot = FactorDesign.Cross(block, variety);
        var design = SumCoded(n, variety);

        var fit = MixedFit.Of(y, design, [plot, block]);

        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Block:Variety").GetDouble(), fit.VarianceComponents[0], Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Block").GetDouble(), fit.VarianceComponents[1], Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Residual").GetDouble(), fit.ResidualVariance, Tolerances.Reml, trial.Name);
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "N", 1, 3);
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "Variety", 4, 2);
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "N:Variety", 6, 6);
    }

    [Fact]
    public void Of_OatsWithPlotsRemoved_AgreesWithTheReference()
    {
        var trial = MixedCase.Load("oats_unbalanced");
        var y = trial.Numbers("yield");
        var (n, block, variety) = (trial.Levels("N"), trial.Levels("Block"), trial.Levels("Variety"));

        var fit = MixedFit.Of(y, FactorDesign.Of(n, variety), [FactorDesign.Cross(block, variety), block]);

        Close.Relative(trial.Values.GetProperty("reml").GetDouble(), fit.Criterion, Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Block:Variety").GetDouble(), fit.VarianceComponents[0], Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Block").GetDouble(), fit.VarianceComponents[1], Tolerances.Reml, trial.Name);
        Close.Relative(trial.Values.GetProperty("varcomp").GetProperty("Residual").GetDouble(), fit.ResidualVariance, Tolerances.Reml, trial.Name);
        trial.HasFixed(fit, trial.Values.GetProperty("fixef"));
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "N", 1, 3);
        trial.HasTest(fit, trial.Values.GetProperty("anova"), "Variety", 4, 2);
    }

    [Theory]
    [InlineData("one_missing", new[] { 11 })]
    [InlineData("two_missing", new[] { 11, 2 })]
    public void Of_PairThatLostAStrip_AgreesWithTheReference(string name, int[] lost)
    {
        var root = ReferenceData.Json("blocks/extra.json").GetProperty("missing_one_strip_of_pair");
        var y = root.GetProperty("data").GetProperty("y").EnumerateArray().ToArray();
        var kept = Enumerable.Range(0, 12).Except(lost).ToArray();
        var expected = root.GetProperty("values").GetProperty(name);

        var fit = MixedFit.Of(
            [.. kept.Select(i => y[i].GetDouble())], FactorDesign.Of([.. kept.Select(i => i / 6)]), [[.. kept.Select(i => i % 6)]]);

        var difference = fit.Contrast([0, 1]);
        Close.Relative(expected.GetProperty("lmer_est").GetDouble(), difference.Estimate, Tolerances.Reml, name);
        Close.Relative(expected.GetProperty("lmer_se").GetDouble(), difference.StandardError, Tolerances.Reml, name);
        Close.Relative(expected.GetProperty("lmer_df").GetDouble(), difference.DegreesOfFreedom, Tolerances.Reml, name);
        Close.Relative(expected.GetProperty("lmer_p").GetDouble(), difference.P, Tolerances.RemlProbability, name);
        Close.Relative(expected.GetProperty("var_pair").GetDouble(), fit.VarianceComponents[0], Tolerances.Reml, name);
        Close.Relative(expected.GetProperty("var_res").GetDouble(), fit.ResidualVariance, Tolerances.Reml, name);
    }

    [Fact]
    public void Of_CompletePairs_IsThePairedTTest()
    {
        // Random pairs and two treatments: difference, standard error and 5 degrees of freedom of the paired t test.
        double[] first = [50, 54, 47, 59, 52, 49];
        double[] second = [53, 58, 50, 60, 57, 50];
        double[] differences = [.. second.Zip(first, (b, a) => b - a)];
        var mean = differences.Average();
        var error = Math.Sqrt(differences.Sum(d => (d - mean) * (d - mean)) / 5 / 6);

        var fit = MixedFit.Of(
            [.. first, .. second], FactorDesign.Of([0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1]), [[0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5]]);

        var contrast = fit.Contrast([0, 1]);
        Close.Relative(mean, contrast.Estimate, Tolerances.ClosedForm, "mean difference");
        Close.Relative(error, contrast.StandardError, Tolerances.ClosedForm, "standard error");
        Close.Relative(5, contrast.DegreesOfFreedom, Tolerances.ClosedForm, "degrees of freedom");
    }

    [Fact]
    public void Of_TrialAtSites_KeepsItsLawsUnderRelabellingShiftAndScale()
    {
        Gen.Select(Gen.Int[2, 4], Gen.Int[2, 3], Gen.Int[2, 4], Gen.Int[0, int.MaxValue]).Sample(
            (sites, treatments, blocks, seed) =>
            {
                var (y, treatment, factors) = AtSites(sites, treatments, blocks, seed);
                var what = $"{sites} sites, {treatments} treatments, {blocks} blocks, seed {seed}";
                var design = FactorDesign.Of(treatment);
                double[] last = [.. new double[treatments - 1], 1];
                var plain = MixedFit.Of(y, design, factors);
                Assert.Equal(MixedStatus.Converged, plain.Status);

                var scaled = MixedFit.Of([.. y.Select(v => (v * 2.54) + 100)], design, factors);
                var reordered = MixedFit.Of([.. y.Reverse()], FactorDesign.Of([.. treatment.Reverse()]), [.. factors.Reverse().Select(f => f.Reverse().ToArray())]);

                var (contrast, other, turned) = (plain.Contrast(last), scaled.Contrast(last), reordered.Contrast(last));
                Close.Absolute(2.54 * contrast.Estimate, other.Estimate, Tolerances.Reml * 10, $"{what}: scaled");
                Close.Relative(2.54 * contrast.StandardError!.Value, other.StandardError, Tolerances.Reml, $"{what}: scaled");
                Close.Relative(contrast.DegreesOfFreedom!.Value, other.DegreesOfFreedom, Tolerances.Reml, $"{what}: scaled");
                Close.Relative(contrast.StandardError.Value, turned.StandardError, Tolerances.Reml, $"{what}: reordered");
                Close.Relative(contrast.DegreesOfFreedom.Value, turned.DegreesOfFreedom, Tolerances.Reml, $"{what}: reordered");
            },
            iter: 100);
    }

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    public void Of_TinyOrHugeUnit_ChangesOnlyTheUnit(double unit)
    {
        var trial = MixedCase.Load("oats_unbalanced");
        var y = trial.Numbers("yield");
        var (n, block, variety) = (trial.Levels("N"), trial.Levels("Block"), trial.Levels("Variety"));
        var design = FactorDesign.Of(n, variety);
        int[][] factors = [FactorDesign.Cross(block, variety), block];
        double[] weights = [0, 1, 0, 0, 0, 0];

        var plain = MixedFit.Of(y, design, factors).Contrast(weights);
        var scaled = MixedFit.Of([.. y.Select(v => v * unit)], design, factors).Contrast(weights);

        Close.Relative(plain.Estimate * unit, scaled.Estimate, Tolerances.ClosedForm, trial.Name);
        Close.Relative(plain.StandardError!.Value * unit, scaled.StandardError, Tolerances.ClosedForm, trial.Name);
        Close.Relative(plain.DegreesOfFreedom!.Value, scaled.DegreesOfFreedom, Tolerances.Reml, trial.Name);
    }

    [Fact]
    public void Of_NoVariation_SaysSo()
    {
        var fit = MixedFit.Of([0.1, 0.1, 0.1, 0.1], MixedCase.Intercept(4), [[0, 0, 1, 1]]);

        Assert.Equal(MixedStatus.NoVariation, fit.Status);
        Assert.Null(fit.Contrast([1]).StandardError);
        Assert.Null(fit.Test(new double[,] { { 1 } }));
        Close.Relative(0.1, fit.Contrast([1]).Estimate, Tolerances.FewRoundings, "mean");
    }

    [Fact]
    public void Of_NoErrorWithinTheFactor_SaysSo()
    {
        var fit = MixedFit.Of([1, 1, 4, 4, 9, 9], MixedCase.Intercept(6), [[0, 0, 1, 1, 2, 2]]);

        Assert.Equal(MixedStatus.NoErrorVariation, fit.Status);
        Assert.Null(fit.Contrast([1]).DegreesOfFreedom);
    }

    [Fact]
    public void Of_NoRandomFactor_IsLeastSquares()
    {
        double[] y = [1, 3, 2, 5, 4, 4];
        var design = FactorDesign.Of([0, 0, 0, 1, 1, 1]);

        var fit = MixedFit.Of(y, design, []);
        var plain = LeastSquares.Fit(design, y);

        Close.Relative(plain.StandardError(1)!.Value, fit.Contrast([0, 1]).StandardError, Tolerances.ClosedForm, "standard error");
        Close.Relative(4, fit.Contrast([0, 1]).DegreesOfFreedom, Tolerances.ClosedForm, "degrees of freedom");
    }

    [Theory]
    [InlineData("cannot be told from error", new[] { 0, 1, 2, 3 })]
    [InlineData("explained by the fixed columns", new[] { 0, 0, 1, 1 })]
    [InlineData("explained by the fixed columns", new[] { 0, 0, 0, 0 })]
    public void Of_FactorThatCannotBeSeparated_IsRefused(string message, int[] factor)
    {
        var error = Assert.Throws<ArgumentException>(() => MixedFit.Of([1, 2, 4, 3], FactorDesign.Of([0, 0, 1, 1]), [factor]));

        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TwoFactorsThatGroupAlike_AreRefused()
    {
        var error = Assert.Throws<ArgumentException>(
            () => MixedFit.Of([1, 2, 4, 3], MixedCase.Intercept(4), [[0, 0, 1, 1], [1, 1, 0, 0]]));

        Assert.Contains("group the observations alike", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DependentColumnsWrongSizesOrNaN_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => MixedFit.Of([1, 2, 4, 3], new double[,] { { 1, 2 }, { 1, 2 }, { 1, 2 }, { 1, 2 } }, [[0, 0, 1, 1]]));
        Assert.Throws<ArgumentException>(() => MixedFit.Of([1, 2, 4], MixedCase.Intercept(4), [[0, 0, 1, 1]]));
        Assert.Throws<ArgumentException>(() => MixedFit.Of([1, 2, double.NaN, 3], MixedCase.Intercept(4), [[0, 0, 1, 1]]));
        Assert.Throws<ArgumentException>(() => MixedFit.Of([1, 2, 4, 3], MixedCase.Intercept(4), [[0, 0, 1, 1]]).Contrast([1, 0]));
    }

    private static void HasMeansAndPairs(MixedCase trial, MixedFit fit, int blocks)
    {
        // Columns: intercept, treatments B and C, blocks 2 to 4. A mean is taken over blocks alike.
        string[] names = ["A", "B", "C"];
        double[] Mean(int treatment) =>
        [
            1, treatment == 1 ? 1 : 0, treatment == 2 ? 1 : 0, .. Enumerable.Repeat(1.0 / blocks, blocks - 1),
        ];
        var emm = trial.Values.GetProperty("emm");
        foreach (var expected in emm.GetProperty("means").EnumerateArray())
        {
            var name = expected.GetProperty("level").GetString()!;
            MixedCase.Agrees(fit.Contrast(Mean(Array.IndexOf(names, name))), expected, $"{trial.Name}, mean of {name}");
        }

        foreach (var expected in emm.GetProperty("pairs").EnumerateArray())
        {
            var sides = expected.GetProperty("contrast").GetString()!.Split(" - ").Select(name => Array.IndexOf(names, name)).ToArray();
            double[] weights = [.. Mean(sides[0]).Zip(Mean(sides[1]), (a, b) => a - b)];
            MixedCase.Agrees(fit.Contrast(weights), expected, $"{trial.Name}, {expected.GetProperty("contrast").GetString()}");
        }
    }

    // Sum-to-zero coding, in which a block of columns is a main effect averaged over the other factor.
    private static double[,] SumCoded(int[] n, int[] variety)
    {
        var design = new double[n.Length, 12];
        for (var i = 0; i < n.Length; i++)
        {
            design[i, 0] = 1;
            for (var a = 0; a < 3; a++)
            {
                design[i, 1 + a] = n[i] == 3 ? -1 : n[i] == a ? 1 : 0;
                for (var b = 0; b < 2; b++)
                {
                    design[i, 4 + b] = variety[i] == 2 ? -1 : variety[i] == b ? 1 : 0;
                    design[i, 6 + (2 * a) + b] = design[i, 1 + a] * design[i, 4 + b];
                }
            }
        }

        return design;
    }

    private static (double[] Y, int[] Treatment, int[][] Factors) AtSites(int sites, int treatments, int blocks, int seed)
    {
        var random = new Random(seed);
        var rows = new List<(double Y, int Site, int Block, int Treatment)>();
        for (var s = 0; s < sites; s++)
        {
            var level = 10 * random.NextDouble();
            for (var b = 0; b < blocks; b++)
            {
                var place = level + (3 * random.NextDouble());
                for (var t = 0; t < treatments; t++)
                {
                    rows.Add((place + t + random.NextDouble(), s, b, t));
                }
            }
        }

        int[] site = [.. rows.Select(row => row.Site)];
        int[] treatment = [.. rows.Select(row => row.Treatment)];
        return (
            [.. rows.Select(row => row.Y)],
            treatment,
            [site, FactorDesign.Cross(site, treatment), FactorDesign.Cross(site, [.. rows.Select(row => row.Block)])]);
    }
}
