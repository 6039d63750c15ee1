using System.Text.Json;
using CsCheck;
using TrialKit.Numerics.Glm;
using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Glm;

public class GlmFitTests
{
    private static readonly JsonElement Reference = ReferenceData.Json("glm/glm_misc.json");

    [Fact]
    public void Of_SoybeanFailures_AgreesWithTheReference()
    {
        var root = Reference.GetProperty("soybean_binomial");
        var values = root.GetProperty("values");
        var source = root.GetProperty("source").GetString()!;
        var (counts, treatment, block) = Soybean(root);
        double[] sizes = [.. Enumerable.Repeat(100.0, counts.Length)];

        var full = GlmFit.Of(GlmFamily.BinomialLogit, FactorDesign.Of(block, treatment), counts, sizes);
        var blocks = GlmFit.Of(GlmFamily.BinomialLogit, FactorDesign.Of(block), counts, sizes);
        var test = QuasiFTest.Of(blocks, full);

        Agrees(full, values.GetProperty("binomial"), 1, source);
        Agrees(full, values.GetProperty("quasi"), full.Dispersion!.Value, source);
        Close.Relative(values.GetProperty("LR_chisq_trt").GetDouble(), blocks.Deviance - full.Deviance, Tolerances.Irls, $"{source}, likelihood ratio");
        Close.Relative(values.GetProperty("quasi_F_trt_anova").GetDouble(), test.F, Tolerances.Irls, $"{source}, F");
        Close.Relative(values.GetProperty("quasi_F_p").GetDouble(), test.P, Tolerances.Irls, $"{source}, p");
        Assert.Equal(4, test.NumeratorDegrees);
        Assert.Equal(16, test.DenominatorDegrees);
    }

    [Fact]
    public void Of_InsectSprays_AgreesWithTheReference()
    {
        var root = Reference.GetProperty("insectsprays_counts");
        var values = root.GetProperty("values");
        var source = root.GetProperty("source").GetString()!;
        var counts = Numbers(root.GetProperty("data").GetProperty("count"));
        var spray = Levels(root.GetProperty("data").GetProperty("spray"));
        double[] sizes = [.. Enumerable.Repeat(1.0, counts.Length)];

        var full = GlmFit.Of(GlmFamily.PoissonLog, FactorDesign.Of(spray), counts, sizes);
        var mean = GlmFit.Of(GlmFamily.PoissonLog, FactorDesign.Of(new int[counts.Length]), counts, sizes);
        var test = QuasiFTest.Of(mean, full);

        Agrees(full, values.GetProperty("poisson"), 1, source);
        Agrees(full, values.GetProperty("quasi"), full.Dispersion!.Value, source);
        Close.Relative(values.GetProperty("quasi_F").GetDouble(), test.F, Tolerances.Irls, $"{source}, F");
        Close.Relative(values.GetProperty("quasi_p").GetDouble(), test.P, Tolerances.Irls, $"{source}, p");
    }

    [Fact]
    public void Of_WarpBreaks_AgreesWithTheReference()
    {
        var values = Reference.GetProperty("warpbreaks_counts").GetProperty("values");
        var rows = ReferenceData.Csv("glm/warpbreaks.csv").ToArray();
        var design = new double[rows.Length, 6];
        for (var i = 0; i < rows.Length; i++)
        {
            design[i, 0] = 1;
            design[i, 1] = rows[i][1] == "B" ? 1 : 0;
            design[i, 2] = rows[i][2] == "M" ? 1 : 0;
            design[i, 3] = rows[i][2] == "H" ? 1 : 0;
            design[i, 4] = design[i, 1] * design[i, 2];
            design[i, 5] = design[i, 1] * design[i, 3];
        }

        double[] sizes = [.. Enumerable.Repeat(1.0, rows.Length)];
        var fit = GlmFit.Of(GlmFamily.PoissonLog, design, [.. rows.Select(row => ReferenceData.Number(row[0]))], sizes);

        Agrees(fit, values.GetProperty("poisson"), 1, "warpbreaks");
        Agrees(fit, values.GetProperty("quasi"), fit.Dispersion!.Value, "warpbreaks");
    }

    [Fact]
    public void Of_SeedPlates_AgreesWithTheComputedFit()
    {
        // Data of Crowder 1978, Appl. Stat. 27:34-37; deviance, Pearson and logits computed from the formulas, no published value.
        var rows = ReferenceData.Csv("glm/seed-plates.csv").Select(row => row.Select(ReferenceData.Number).ToArray()).ToArray();
        double[] germinated = [.. rows.Select(row => row[1])], seeds = [.. rows.Select(row => row[2])];

        var fit = GlmFit.Of(GlmFamily.BinomialLogit, FactorDesign.Of([.. rows.Select(row => (int)row[0] - 1)]), germinated, seeds);

        Close.Absolute(33.277786, fit.Deviance, Tolerances.PrintedToSixDecimals, "deviance");
        Close.Absolute(31.651145, fit.PearsonChiSquare!.Value, Tolerances.PrintedToSixDecimals, "Pearson");
        Close.Absolute(1.861832, fit.Dispersion!.Value, Tolerances.PrintedToSixDecimals, "dispersion");
        Assert.Equal(17, fit.DegreesOfFreedom);
        double[] logits = [-0.558172, 0.760010, -0.412245, 0.127833];
        for (var group = 0; group < logits.Length; group++)
        {
            double[] weights = [1, .. Enumerable.Range(1, 3).Select(other => other == group ? 1.0 : 0)];
            Close.Absolute(logits[group], fit.Contrast(weights, 1)!.Value.Estimate, Tolerances.PrintedToSixDecimals, $"logit of group {group + 1}");
        }
    }

    [Fact]
    public void Of_ExposureDoubled_LowersTheInterceptByLogTwo()
    {
        double[] counts = [10, 12, 20, 26];
        var design = FactorDesign.Of([0, 0, 1, 1]);

        var plain = GlmFit.Of(GlmFamily.PoissonLog, design, counts, [1, 1, 1, 1]);
        var doubled = GlmFit.Of(GlmFamily.PoissonLog, design, counts, [2, 2, 2, 2]);

        Close.Relative(Math.Log(11), plain.Coefficients[0], Tolerances.ClosedForm, "log of the mean of 10 and 12");
        Close.Relative(Math.Log(23.0 / 11), plain.Coefficients[1], Tolerances.ClosedForm, "log ratio of means");
        Close.Relative(plain.Coefficients[0] - Math.Log(2), doubled.Coefficients[0], Tolerances.ClosedForm, "intercept");
        Close.Relative(plain.Deviance, doubled.Deviance, Tolerances.ClosedForm, "deviance");
    }

    [Fact]
    public void Of_TreatmentWithNoneOrAll_IsFlaggedAndTestsNothing()
    {
        // Treatment 1 has no plant in any block: its coefficient runs to minus infinity.
        int[] treatment = [0, 1, 2, 0, 1, 2, 0, 1, 2];
        int[] block = [0, 0, 0, 1, 1, 1, 2, 2, 2];
        double[] sizes = [.. Enumerable.Repeat(50.0, 9)];
        double[] none = [40, 0, 35, 42, 0, 30, 45, 0, 41];

        foreach (var (family, counts) in new[]
        {
            (GlmFamily.BinomialLogit, none),
            (GlmFamily.BinomialLogit, [.. none.Select(count => 50 - count)]),
            (GlmFamily.PoissonLog, none),
        })
        {
            var full = GlmFit.Of(family, FactorDesign.Of(block, treatment), counts, sizes);
            var test = QuasiFTest.Of(GlmFit.Of(family, FactorDesign.Of(block), counts, sizes), full);

            Assert.Equal(GlmStatus.Separated, full.Status);
            Assert.True(double.IsFinite(full.Deviance));
            Assert.Empty(full.Coefficients);
            Assert.Null(full.Contrast([1, 0, 0, 0, 0], 1));
            Assert.Null(test.F);
            Assert.Equal(GlmStatus.Separated, test.Status);
        }
    }

    [Theory]
    [InlineData(GlmFamily.BinomialLogit, 0, nameof(GlmStatus.AllZero))]
    [InlineData(GlmFamily.BinomialLogit, 50, nameof(GlmStatus.AllFull))]
    [InlineData(GlmFamily.PoissonLog, 0, nameof(GlmStatus.AllZero))]
    public void Of_EveryCountOnABound_IsFlagged(object family, double count, string expected)
    {
        var fit = GlmFit.Of((GlmFamily)family, FactorDesign.Of([0, 0, 1, 1]), [count, count, count, count], [50, 50, 50, 50]);

        Assert.Equal(expected, fit.Status.ToString());
        Assert.Null(fit.Dispersion);
    }

    [Fact]
    public void Of_EqualCounts_HaveNoDispersionAndNoF()
    {
        var design = FactorDesign.Of([0, 0, 1, 1]);

        var full = GlmFit.Of(GlmFamily.PoissonLog, design, [8, 8, 8, 8], [1, 1, 1, 1]);
        var test = QuasiFTest.Of(GlmFit.Of(GlmFamily.PoissonLog, FactorDesign.Of([0, 0, 0, 0]), [8, 8, 8, 8], [1, 1, 1, 1]), full);

        Assert.Equal(GlmStatus.Converged, full.Status);
        Assert.Null(test.F);
    }

    [Fact]
    public void Of_AnyCounts_FailuresMirrorSuccesses()
    {
        Gen.Select(Gen.Int[2, 4], Gen.Int[2, 5], Gen.Int[0, int.MaxValue]).Sample(
            (treatments, blocks, seed) =>
            {
                var (y, block, treatment) = Linear.Trials.Draw(treatments, blocks, seed, dropped: 0.1);
                double[] counts = [.. y.Select(v => Math.Floor(v) + 1)];
                double[] sizes = [.. y.Select(_ => 60.0)];
                var design = FactorDesign.Of(block, treatment);
                var what = $"{treatments} treatments, {blocks} blocks, seed {seed}";

                var plants = GlmFit.Of(GlmFamily.BinomialLogit, design, counts, sizes);
                var gaps = GlmFit.Of(GlmFamily.BinomialLogit, design, [.. counts.Select(count => 60 - count)], sizes);

                Assert.Equal(GlmStatus.Converged, plants.Status);
                Close.Absolute(plants.Deviance, gaps.Deviance, Tolerances.ClosedForm, what);
                Close.Absolute(plants.Coefficients[^1], -gaps.Coefficients[^1], Tolerances.ClosedForm, what);
            },
            iter: 200);
    }

    [Fact]
    public void Of_ImpossibleInput_IsRefused()
    {
        var design = FactorDesign.Of([0, 0, 1]);
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.BinomialLogit, design, [1, 2, 51], [50, 50, 50]));
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.PoissonLog, design, [1, -2, 5], [1, 1, 1]));
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.PoissonLog, design, [1, 2, 5], [1, 0, 1]));
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.PoissonLog, design, [1, double.NaN, 5], [1, 1, 1]));
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.PoissonLog, design, [1, 2], [1, 1]));
        Assert.Throws<ArgumentException>(() => GlmFit.Of(GlmFamily.PoissonLog, new double[,] { { 1, 1 }, { 1, 1 }, { 1, 1 } }, [1, 2, 3], [1, 1, 1]));
        var fit = GlmFit.Of(GlmFamily.PoissonLog, design, [1, 2, 5], [1, 1, 1]);
        Assert.Throws<ArgumentException>(() => QuasiFTest.Of(fit, fit));
        Assert.Throws<ArgumentException>(() => fit.Contrast([1], 1));
    }

    private static void Agrees(GlmFit fit, JsonElement expected, double dispersion, string source)
    {
        Assert.Equal(GlmStatus.Converged, fit.Status);
        foreach (var (term, index) in expected.GetProperty("coef").EnumerateObject().Select((term, index) => (term, index)))
        {
            var weights = new double[fit.Coefficients.Length];
            weights[index] = 1;
            var (estimate, error) = fit.Contrast(weights, dispersion)!.Value;
            Close.Relative(term.Value.GetDouble(), estimate, Tolerances.Irls, $"{source}, {term.Name}");
            Close.Relative(expected.GetProperty("se").GetProperty(term.Name).GetDouble(), error, Tolerances.Irls, $"{source}, standard error of {term.Name}");
        }

        Close.Relative(expected.GetProperty("deviance").GetDouble(), fit.Deviance, Tolerances.Irls, $"{source}, deviance");
        Close.Relative(expected.GetProperty("pearson_chi2").GetDouble(), fit.PearsonChiSquare, Tolerances.Irls, $"{source}, Pearson");
        Close.Relative(expected.GetProperty("dispersion").GetDouble(), fit.Dispersion, Tolerances.Irls, $"{source}, dispersion");
        Assert.Equal(expected.GetProperty("df").GetInt32(), fit.DegreesOfFreedom);
    }

    private static (double[] Counts, int[] Treatment, int[] Block) Soybean(JsonElement root)
    {
        var data = root.GetProperty("data");
        return (Numbers(data.GetProperty("y")), Levels(data.GetProperty("trt")), Levels(data.GetProperty("block")));
    }

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(v => v.GetDouble())];

    private static int[] Levels(JsonElement list)
    {
        var texts = list.EnumerateArray().Select(v => v.ToString()).ToArray();
        var names = texts.Distinct(StringComparer.Ordinal).ToArray();
        return [.. texts.Select(text => Array.IndexOf(names, text))];
    }
}
