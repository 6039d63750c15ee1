using TrialKit.Comparison;
using TrialKit.Tests.Numerics;
using TrialKit.Tests.Numerics.Linear;

namespace TrialKit.Tests.Comparison;

/// <summary>Spots and counts through their typed entries, against <c>reference-data/mixed</c> and <c>reference-data/glm</c> (R 4.2.2).</summary>
public class SpotsAndCountsTests
{
    [Fact]
    public void SpotVariation_BlocksWithSpots_AgreesWithTheReferenceAndShowsTheWrongTestBeside()
    {
        var data = ReferenceData.Json("mixed/mixed.json").GetProperty("rcb_subsamples_sim");
        string[] treatment = [.. data.GetProperty("data").GetProperty("trt").EnumerateArray().Select(item => item.GetString()!)];
        string[] block = [.. data.GetProperty("data").GetProperty("block").EnumerateArray().Select(item => item.GetString()!)];
        double[] y = [.. data.GetProperty("data").GetProperty("y").EnumerateArray().Select(item => item.GetDouble())];
        var values = data.GetProperty("values");
        string[] names = [.. treatment.Distinct(StringComparer.Ordinal)];
        (string Treatment, string Block)[] strips = [.. treatment.Zip(block).Distinct()];
        var trial = ComparisonTrial.Blocks(
            [.. strips.Select(strip => y.Where((_, index) => (treatment[index], block[index]) == strip).Average())], [.. strips.Select(strip => int.Parse(strip.Block, System.Globalization.CultureInfo.InvariantCulture) - 1)], [.. strips.Select(strip => Array.IndexOf(names, strip.Treatment))], names);
        var found = SpotVariation.Of(new SpotMeasure(ComparisonTrial.Score, [.. y.Select((value, index) => new SpotValue(trial.Strips[Array.IndexOf(strips, (treatment[index], block[index]))], Spot: null, value))]), ComparisonTrial.Compare(trial), trial)!;

        Close.Relative(values.GetProperty("var_sample").GetDouble(), found.SpotVariance, Tolerances.ClosedForm, "spots");
        Close.Relative(values.GetProperty("var_strip").GetDouble(), found.StripVariance, Tolerances.ClosedForm, "strips");
        Close.Relative(values.GetProperty("F_trt_correct").GetDouble(), found.OverStrips!.Statistic, Tolerances.ClosedForm, "F over strips");
        Close.Relative(values.GetProperty("p_trt_correct").GetDouble(), found.OverStrips.P.Value, Tolerances.ClosedForm, "p over strips");
        Close.Relative(values.GetProperty("F_pseudorep").GetDouble(), found.OverSpots!.Statistic, Tolerances.ClosedForm, "F over spots");
        Close.Relative(values.GetProperty("p_pseudorep").GetDouble(), found.OverSpots.P.Value, Tolerances.ClosedForm, "p over spots");
        Close.Relative(values.GetProperty("sed").GetDouble(), found.Plans[0].StandardError, Tolerances.ClosedForm, "error of a difference, this trial");
        Assert.Equal((4, 5), (found.Plans[0].StripsPerTreatment, found.Plans[0].SpotsPerStrip));
        Assert.All(found.Plans.Skip(1), plan => Assert.True(plan.StandardError < found.Plans[0].StandardError || plan.SpotsPerStrip < 5));
        Close.Relative(Math.Sqrt(20 * found.SpotVariance / found.StripVariance), found.BestSpots(20), Tolerances.ClosedForm, "Cochran's optimum");
    }

    [Theory]
    [InlineData("strips vary", 3.0)]
    [InlineData("strips vary no more than spots", 0.0)]
    public void SpotVariation_FirstPlan_IsWhatTheVerdictsSay(string name, double between)
    {
        const int Blocks = 4, Treatments = 3, Spots = 4;
        double Spot(int strip, int spot) => 50 + (between * ((strip * 5) % 7)) + (2 * (((spot + strip) * 3) % Spots)) - (0.01 * ((strip * strip) % 5) * spot);
        int[] strips = [.. Enumerable.Range(0, Blocks * Treatments)];
        var trial = ComparisonTrial.Blocks([.. strips.Select(strip => Enumerable.Range(0, Spots).Average(spot => Spot(strip, spot)))], [.. strips.Select(strip => strip / Treatments)], [.. strips.Select(strip => strip % Treatments)], ["none", "new", "old"], control: 0);
        var comparison = ComparisonTrial.Compare(trial);
        var found = SpotVariation.Of(new SpotMeasure(ComparisonTrial.Score, [.. strips.SelectMany(strip => Enumerable.Range(0, Spots).Select(spot => new SpotValue(trial.Strips[strip], Spot: null, Spot(strip, spot))))]), comparison, trial)!;

        Assert.True((between == 0) == found.WasNegative, name);
        Assert.Equal(comparison.Contrasts[0].Detectable!.Value, found.Plans[0].Detectable, Tolerances.ClosedForm);
        Assert.Equal(comparison.Contrasts[0].Estimate!.StandardError, found.Plans[0].StandardError, Tolerances.ClosedForm);
    }

    [Fact]
    public void CountComparison_TreatmentOnOneStrip_IsNotTested()
    {
        double[] counts = [20, 30, 25, 35, 15, 28, 22, 31, 60];
        var trial = ComparisonTrial.Blocks(counts, [0, 0, 1, 1, 2, 2, 3, 3, 0], [0, 1, 0, 1, 0, 1, 0, 1, 2], ["none", "new", "once"], control: 0);
        var found = CountComparison.Of(new StripCounts(ComparisonTrial.Score, IsShare: false, [.. trial.Strips.Select((strip, index) => new StripCount(strip, counts[index], 5))]), trial)!;

        Assert.Equal("new", Assert.Single(found.Contrasts).Treatment.Name);
        Assert.Equal(8, found.Strips);
    }

    [Fact]
    public void CountComparison_SoybeanShares_AgreesWithTheQuasiBinomialReference()
    {
        var data = BlockCase.Load("soybean_seed_rcb");
        var values = ReferenceData.Json("glm/glm_misc.json").GetProperty("soybean_binomial").GetProperty("values");
        var trial = ComparisonTrial.Blocks(data.Y, data.Block, data.Treatment, data.Treatments, control: 0);
        var found = CountComparison.Of(new StripCounts(ComparisonTrial.Score, IsShare: true, [.. trial.Strips.Select((strip, index) => new StripCount(strip, data.Y[index], 100))]), trial)!;

        Close.Relative(values.GetProperty("quasi_F_trt_anova").GetDouble(), found.Overall!.Statistic, Tolerances.Irls, "F");
        Close.Relative(values.GetProperty("quasi_F_p").GetDouble(), found.Overall.P.Value, Tolerances.Irls, "p");
        foreach (var contrast in found.Contrasts)
        {
            var coefficient = values.GetProperty("quasi").GetProperty("coef").GetProperty($"trt{contrast.Treatment.Name}").GetDouble();
            var error = values.GetProperty("quasi").GetProperty("se").GetProperty($"trt{contrast.Treatment.Name}").GetDouble();
            Close.Relative(Math.Exp(coefficient), contrast.Ratio, Tolerances.Irls, contrast.Treatment.Name);
            Close.Relative(coefficient / error, contrast.T, Tolerances.ReferenceEffect, contrast.Treatment.Name);
            Assert.True(contrast.Holm.Value >= contrast.P.Value, contrast.Treatment.Name);
        }
    }

    [Fact]
    public void CountComparison_RateOfTwoTreatments_IsTheRatioOfTotalsInBalance()
    {
        double[] counts = [20, 30, 25, 35, 15, 28, 22, 31];
        var trial = ComparisonTrial.Blocks(counts, [0, 0, 1, 1, 2, 2, 3, 3], [0, 1, 0, 1, 0, 1, 0, 1], ["none", "new"], control: 0);
        var found = CountComparison.Of(new StripCounts(ComparisonTrial.Score, IsShare: false, [.. trial.Strips.Select((strip, index) => new StripCount(strip, counts[index], 5))]), trial)!;

        Close.Relative((30.0 + 35 + 28 + 31) / (20 + 25 + 15 + 22), found.Contrasts[0].Ratio, Tolerances.Irls, "totals of a balanced layout are sufficient");
        Assert.Equal(3, found.DegreesOfFreedom);
    }

    [Theory]
    [InlineData("more plants than seeds", new[] { 101.0, 90, 80, 85 }, "count-over-seeds")]
    [InlineData("nothing up", new[] { 0.0, 0, 0, 0 }, "counts-not-fitted")]
    [InlineData("all up", new[] { 100.0, 100, 100, 100 }, "counts-not-fitted")]
    [InlineData("a treatment with nothing", new[] { 0.0, 50, 0, 40 }, "counts-not-fitted")]
    public void CountComparison_NothingToFit_SaysWhy(string name, double[] counts, string finding)
    {
        var trial = ComparisonTrial.Blocks(counts, [0, 0, 1, 1], [0, 1, 0, 1], ["none", "new"], control: 0);
        var found = CountComparison.Of(new StripCounts(ComparisonTrial.Score, IsShare: true, [.. trial.Strips.Select((strip, index) => new StripCount(strip, counts[index], 100))]), trial)!;

        Assert.True(finding == Assert.Single(found.Findings).Id, name);
        Assert.Null(found.Dispersion);
        Assert.Empty(found.Contrasts);
    }
}
