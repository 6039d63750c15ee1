using System.Text.Json;
using CsCheck;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Meta;

namespace TrialKit.Tests.Numerics.Meta;

public class MetaAnalysisTests
{
    public static TheoryData<string, string> Cases()
    {
        var cases = new TheoryData<string, string>();
        foreach (var name in new[] { "bcg_logRR", "six_sites_invented", "homogeneous_tau0", "two_sites" })
        {
            foreach (var method in new[] { "FE", "DL", "REML", "PM" })
            {
                cases.Add(name, method);
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_Sites_AgreesWithTheReference(string name, string method)
    {
        var (estimates, variances, values, source) = Load(name);
        var expected = values.GetProperty($"{method}_z");
        var what = $"{source}, {method}";
        var tolerance = method switch
        {
            "REML" => Tolerances.Reml,
            "PM" => Tolerances.MetaPauleMandel,
            _ => Tolerances.ClosedForm,
        };

        var analysis = MetaAnalysis.Of(estimates, variances, Method(method));

        Close.Absolute(expected.GetProperty("tau2").GetDouble(), analysis.BetweenVariance, tolerance * Math.Max(1, analysis.BetweenVariance), $"{what}, tau2");
        Close.Relative(expected.GetProperty("est").GetDouble(), analysis.Estimate, tolerance, $"{what}, estimate");
        Close.Relative(expected.GetProperty("se").GetDouble(), analysis.NormalStandardError, tolerance, $"{what}, normal standard error");
        Close.Relative(expected.GetProperty("Q").GetDouble(), analysis.Q, Tolerances.ClosedForm, $"{what}, Q");
        Close.Relative(expected.GetProperty("Qp").GetDouble(), analysis.QProbability, Tolerances.ClosedForm, $"{what}, p of Q");
        Close.Absolute(expected.GetProperty("I2").GetDouble() / 100, analysis.Inconsistency, tolerance, $"{what}, I2");
        if (method == "FE")
        {
            return;
        }

        var adjusted = values.GetProperty($"{method}_knha");
        Close.Relative(adjusted.GetProperty("se").GetDouble(), analysis.UnboundedStandardError, tolerance, $"{what}, Hartung-Knapp standard error");
        Assert.Equal(adjusted.GetProperty("df").GetInt32(), analysis.DegreesOfFreedom);
        if (!analysis.ScaleWasRaised)
        {
            var (lower, upper) = analysis.IntervalAt(0.95);
            Close.Relative(adjusted.GetProperty("ci")[0].GetDouble(), lower, 10 * tolerance, $"{what}, lower bound");
            Close.Relative(adjusted.GetProperty("ci")[1].GetDouble(), upper, 10 * tolerance, $"{what}, upper bound");
            Close.Relative(adjusted.GetProperty("p").GetDouble(), analysis.P, 10 * tolerance, $"{what}, p");
            (lower, upper) = analysis.PredictionIntervalAt(0.95);
            Close.Relative(adjusted.GetProperty("pi")[0].GetDouble(), lower, 10 * tolerance, $"{what}, lower bound of prediction");
            Close.Relative(adjusted.GetProperty("pi")[1].GetDouble(), upper, 10 * tolerance, $"{what}, upper bound of prediction");
        }
    }

    [Fact]
    public void Of_SitesThatAgreeByChance_KeepTheScaleFromBelowOne()
    {
        var (estimates, variances, values, source) = Load("homogeneous_tau0");

        var analysis = MetaAnalysis.Of(estimates, variances, Heterogeneity.Reml);

        Assert.True(analysis.ScaleWasRaised);
        Close.Relative(values.GetProperty("REML_z").GetProperty("se").GetDouble(), analysis.StandardError, Tolerances.ClosedForm, source);
        Assert.Equal(0, analysis.Inconsistency);
    }

    [Fact]
    public void Of_TwoSites_HasOneDegreeOfFreedom()
    {
        var (estimates, variances, _, source) = Load("two_sites");

        var analysis = MetaAnalysis.Of(estimates, variances, Heterogeneity.DerSimonianLaird);

        // tau2 = (3^2 - 0.8 - 1.1) / 2 for two sites, by any of the methods.
        Close.Relative(3.55, analysis.BetweenVariance, Tolerances.ClosedForm, source);
        Close.Relative(3.55, MetaAnalysis.Of(estimates, variances, Heterogeneity.Reml).BetweenVariance, Tolerances.ClosedForm, source);
        Close.Relative(3.55, MetaAnalysis.Of(estimates, variances, Heterogeneity.PauleMandel).BetweenVariance, Tolerances.ClosedForm, source);
        var (lower, upper) = analysis.IntervalAt(0.95);
        Close.Relative(2 * StudentT.UpperQuantile(0.025, 1) * analysis.StandardError, upper - lower, Tolerances.ClosedForm, source);
    }

    [Theory]
    [InlineData("bcg_logRR")]
    [InlineData("six_sites_invented")]
    public void Of_PauleMandel_MakesQEqualItsDegreesOfFreedom(string name)
    {
        var (estimates, variances, _, source) = Load(name);

        var analysis = MetaAnalysis.Of(estimates, variances, Heterogeneity.PauleMandel);

        Close.Relative(1, analysis.HartungKnappScale, Tolerances.ClosedForm, source);
    }

    [Fact]
    public void Of_EqualEstimates_HaveNoHeterogeneity()
    {
        var analysis = MetaAnalysis.Of([2, 2, 2], [1, 1, 4], Heterogeneity.Common);

        Assert.Equal(0, analysis.Q);
        Assert.Equal(0, analysis.Inconsistency);
        Assert.Equal(1, analysis.QProbability);
    }

    [Fact]
    public void Of_AnySites_KeepsItsLawsUnderShiftSignAndScale()
    {
        Gen.Select(Gen.Int[2, 9], Gen.Int[0, int.MaxValue], Gen.Int[0, 3]).Sample(
            (sites, seed, number) =>
            {
                var method = (Heterogeneity)number;
                var random = new Random(seed);
                var y = Enumerable.Range(0, sites).Select(_ => 5 * random.NextDouble()).ToArray();
                var v = Enumerable.Range(0, sites).Select(_ => 0.1 + (2 * random.NextDouble())).ToArray();
                var what = $"{sites} sites, seed {seed}, {method}";
                var plain = MetaAnalysis.Of(y, v, method);

                var changed = MetaAnalysis.Of([.. y.Select(value => 50 - (1e6 * value))], [.. v.Select(value => 1e12 * value)], method);
                var reordered = MetaAnalysis.Of([.. y.Reverse()], [.. v.Reverse()], method);

                Close.Absolute(plain.BetweenVariance * 1e12, changed.BetweenVariance, Tolerances.ClosedForm * 1e12 * (1 + plain.BetweenVariance), what);
                Close.Relative(50 - (1e6 * plain.Estimate), changed.Estimate, Tolerances.ClosedForm, what);
                Close.Relative(1e6 * plain.StandardError, changed.StandardError, Tolerances.ClosedForm, what);
                Close.Relative(plain.StandardError, reordered.StandardError, Tolerances.ClosedForm, what);
                Assert.InRange(plain.Inconsistency, 0, 1);
                Assert.True(plain.StandardError >= plain.NormalStandardError, what);
            },
            iter: 300);
    }

    [Theory]
    [InlineData("one site", new[] { 1.0 }, new[] { 1.0 })]
    [InlineData("lengths differ", new[] { 1.0, 2 }, new[] { 1.0 })]
    [InlineData("zero variance", new[] { 1.0, 2 }, new[] { 1.0, 0 })]
    [InlineData("negative variance", new[] { 1.0, 2 }, new[] { 1.0, -1 })]
    [InlineData("not a number", new[] { 1.0, double.NaN }, new[] { 1.0, 1 })]
    [InlineData("variance not a number", new[] { 1.0, 2 }, new[] { 1.0, double.NaN })]
    public void Of_ImpossibleInput_IsRefused(string why, double[] estimates, double[] variances)
    {
        var error = Assert.ThrowsAny<ArgumentException>(() => MetaAnalysis.Of(estimates, variances, Heterogeneity.Reml));

        Assert.True(error.Message.Contains("expected", StringComparison.Ordinal), why);
    }

    private static Heterogeneity Method(string name) => name switch
    {
        "FE" => Heterogeneity.Common,
        "DL" => Heterogeneity.DerSimonianLaird,
        "REML" => Heterogeneity.Reml,
        _ => Heterogeneity.PauleMandel,
    };

    private static (double[] Estimates, double[] Variances, JsonElement Values, string Source) Load(string name)
    {
        var root = ReferenceData.Json("meta/meta.json").GetProperty(name);
        return (
            Numbers(root.GetProperty("data").GetProperty("yi")),
            Numbers(root.GetProperty("data").GetProperty("vi")),
            root.GetProperty("values"),
            $"{name} ({root.GetProperty("source").GetString()})");
    }

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(v => v.GetDouble())];
}
