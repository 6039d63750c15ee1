using System.Text.Json;
using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
using TrialKit.Quantities;
using TrialKit.Tests.Numerics;

namespace TrialKit.Tests.Comparison.Sites;

/// <summary>Pooling against <c>reference-data/meta/meta.json</c> (R, metafor), and the mixed model against its closed form in balance.</summary>
public class SitePoolingTests
{
    private static readonly ComparedPair Pair = new(SmallTrial.Other, SmallTrial.Control);

    [Fact]
    public void Of_Bcg_AgreesWithTheReference()
    {
        var reference = ReferenceData.Json("meta/meta.json").GetProperty("bcg_logRR");
        var pooled = Pool(Numbers(reference, "yi"), Numbers(reference, "vi"), ConfidenceLevel.FromAlpha(0.05));
        var values = reference.GetProperty("values");

        Check(values.GetProperty("FE_z"), pooled.Common, pooled, hasPrediction: false);
        Check(values.GetProperty("DL_knha"), pooled.Moments, pooled, hasPrediction: true);
        Check(values.GetProperty("REML_knha"), pooled.Reml, pooled, hasPrediction: true);
        Close.Relative(values.GetProperty("REML_z").GetProperty("Q").GetDouble(), pooled.Heterogeneity.Statistic, Tolerances.ClosedForm, "Q");
        Close.Relative(values.GetProperty("REML_z").GetProperty("I2").GetDouble() / 100, pooled.Inconsistency, Tolerances.Reml, "I2");
        Close.Relative(1, pooled.Sites.Sum(site => site.Weight), Tolerances.FewRoundings, "weights");
        Assert.Equal(Verdict.Shown, pooled.Verdict);
    }

    [Fact]
    public void Of_SitesThatAgreeByChance_RaisesTheErrorAndSaysSo()
    {
        var pooled = Pool([2.0, 2.01, 1.99], [1.0, 1, 1], default);

        Close.Relative(Math.Sqrt(1.0 / 3), pooled.Reml.Estimate.StandardError, Tolerances.ClosedForm, "error from the sites' own");
        Assert.True(pooled.Reml.ErrorWasRaised);
        Assert.Contains(pooled.Findings, finding => finding.Id == "sites-agree-by-chance");
    }

    [Fact]
    public void Of_SitesThatDifferYetScatterLittle_SaysNothingOfAgreement()
    {
        // Q 12.8 on 3 degrees, a variance between sites of 0.55, and a scale of 0.82: raised, and no sign of agreement.
        var pooled = Pool([0.7, -0.9, 0.3, 0.8], [1.04, 0.03, 0.2, 0.47], default);

        Assert.True(pooled.Reml.ErrorWasRaised && pooled.Reml.BetweenVariance > 0.5 && pooled.Heterogeneity.P.Value < 0.01);
        Assert.DoesNotContain(pooled.Findings, finding => finding.Id == "sites-agree-by-chance");
        Assert.Contains(pooled.Findings, finding => finding.Id == "pooled-error-raised");
    }

    [Fact]
    public void Mixed_NoVarianceOfOneFactor_NamesIt()
    {
        // Every site gives the same differences on blocks that vary: nothing is left for sites by treatment.
        double[] d = [1, 1.2, 0.8, 1.1], level = [0, 3, 1, 5];
        var sites = Enumerable.Range(0, 3).Select(site => ($"site {site}", Comparison: ComparisonTrial.Compare(ComparisonTrial.Pairs([.. d.Select((value, pair) => 10 + (8 * site) + level[pair] + value)], [.. level.Select(value => 10 + (8 * site) + value)])))).ToArray();

        var finding = Assert.Single(SitePooling.Of(ComparisonTrial.Score, sites[0].Comparison.Contrasts[0].Pair, [.. sites.Select(site => (site.Item1, SiteMeasure.Of(site.Comparison)))], default)!.Findings, finding => finding.Id == "mixed-model-singular");

        Assert.Contains("no variance for site by treatment;", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TwoSites_SaysThatOneDegreeIsLeft()
    {
        var pooled = Pool([2.0, 3], [1.0, 2], default);

        Assert.Equal(1, pooled.Reml.Estimate.DegreesOfFreedom);
        Assert.Contains(pooled.Findings, finding => finding.Id == "two-sites");
    }

    [Fact]
    public void Of_OneSiteTurnedAround_IsTheSame()
    {
        var sites = Sites([2.0, 3, 2.5], [1.0, 2, 1.5]);
        var (name, measure) = sites[1];
        var contrast = measure.Contrasts[0];
        sites[1] = (name, measure with { Contrasts = [new(new(contrast.Pair.Baseline, contrast.Pair.Treatment), contrast.Estimate! with { Value = -contrast.Estimate.Value })] });

        Assert.Equal(Pool([2.0, 3, 2.5], [1.0, 2, 1.5], default).Reml.Estimate, SitePooling.Of(ComparisonTrial.Score, Pair, sites, default)!.Reml.Estimate);
    }

    [Fact]
    public void Of_OneSiteOnly_GivesNothing() => Assert.Null(SitePooling.Of(ComparisonTrial.Score, Pair, Sites([2.0], [1.0]), default));

    [Fact]
    public void Mixed_BalancedSites_HasTheErrorOfSiteByTreatment()
    {
        // In balance REML is the analysis of variance: t is judged against site x treatment on sites - 1 degrees of freedom.
        double[][] differences = [[1, 1.2, 0.8, 1.1], [3, 3.3, 2.9, 3.1], [2, 1.7, 2.2, 2.4], [0.5, 0.2, 0.9, 0.6]];
        var sites = differences.Select((d, site) => ($"site {site}", Measure: SiteMeasure.Of(ComparisonTrial.Compare(ComparisonTrial.Pairs([.. d.Select((value, pair) => 10 + (5 * site) + pair + value)], [.. d.Select((_, pair) => 10.0 + (5 * site) + pair)]))))).ToArray();
        var pair = sites[0].Measure.Contrasts[0].Pair;
        double[] means = [.. differences.Select(d => d.Average())];
        var mean = means.Average();
        var error = Math.Sqrt(means.Sum(value => (value - mean) * (value - mean)) / 3 / 4);

        var mixed = SitePooling.Of(ComparisonTrial.Score, pair, sites, default)!.Mixed!;

        Close.Relative(mean, mixed.Estimate!.Value, Tolerances.Reml, "difference");
        Close.Relative(error, mixed.Estimate.StandardError, Tolerances.Reml, "error");
        Close.Relative(3, mixed.Estimate.DegreesOfFreedom, Tolerances.Reml, "degrees of freedom");
        Assert.False(mixed.IsSingular);
        Assert.Equal(32, mixed.Strips);
    }

    private static void Check(JsonElement expected, PooledEstimate found, PooledComparison pooled, bool hasPrediction)
    {
        var what = found.Estimate.Method.Name;
        Close.Relative(expected.GetProperty("est").GetDouble(), found.Estimate.Value, Tolerances.Reml, what);
        Close.Relative(expected.GetProperty("se").GetDouble(), found.Estimate.StandardError, Tolerances.Reml, what);
        Close.Relative(expected.GetProperty("p").GetDouble(), found.Estimate.PTwoSided.Value, Tolerances.RemlProbability, what);
        Close.Absolute(expected.GetProperty("tau2").GetDouble(), found.BetweenVariance, Tolerances.Reml, what);
        var interval = found.Estimate.IntervalAt(pooled.Level);
        Close.Relative(expected.GetProperty("ci")[0].GetDouble(), interval.Low, Tolerances.Reml, what);
        Close.Relative(expected.GetProperty("ci")[1].GetDouble(), interval.High, Tolerances.Reml, what);
        Assert.Equal(hasPrediction, found.Prediction is not null);
        if (found.Prediction is { } prediction)
        {
            Close.Relative(expected.GetProperty("pi")[0].GetDouble(), prediction.Low, Tolerances.Reml, what);
            Close.Relative(expected.GetProperty("pi")[1].GetDouble(), prediction.High, Tolerances.Reml, what);
        }
    }

    private static PooledComparison Pool(double[] estimates, double[] variances, ConfidenceLevel level) =>
        SitePooling.Of(ComparisonTrial.Score, Pair, Sites(estimates, variances), level)!;

    private static (string Site, SiteMeasure Measure)[] Sites(double[] estimates, double[] variances) =>
        [.. estimates.Select((estimate, index) =>
        {
            var whole = ComparisonTrial.Compare(ComparisonTrial.Pairs([1, 2, 4], [0, 1.5, 2]));
            var contrast = whole.Contrasts[0];
            return ($"site {index}", SiteMeasure.Of(whole) with
            {
                Contrasts = [new(Pair, contrast.Estimate! with { Value = estimate, StandardError = Math.Sqrt(variances[index]) })],
            });
        })];

    private static double[] Numbers(JsonElement reference, string name) => [.. reference.GetProperty("data").GetProperty(name).EnumerateArray().Select(value => value.GetDouble())];
}
