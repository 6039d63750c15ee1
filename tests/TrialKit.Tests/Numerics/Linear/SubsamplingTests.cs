using TrialKit.Numerics.Linear;
using TrialKit.Tests.Numerics.Mixed;

namespace TrialKit.Tests.Numerics.Linear;

public class SubsamplingTests
{
    [Fact]
    public void Of_StripsWithSpots_AgreesWithTheReference()
    {
        var trial = MixedCase.Load("rcb_subsamples_sim");
        var (treatment, block) = (trial.Levels("trt"), trial.Levels("block"));
        var strip = FactorDesign.Cross(block, treatment);

        var analysis = Subsampling.Of(trial.Numbers("y"), strip, FirstOf(strip, block), FirstOf(strip, treatment));

        double Number(params string[] path) => path.Aggregate(trial.Values, (element, part) => element.GetProperty(part)).GetDouble();
        Close.Relative(Number("MS", "trt"), analysis.TreatmentMeanSquare, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("MS", "exp_error"), analysis.StripMeanSquare, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("MS", "sampling"), analysis.SpotVariance, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("F_trt_correct"), analysis.Strips.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("p_trt_correct"), analysis.Strips.Treatments.P, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("strip_mean_MSE"), analysis.Strips.ErrorMeanSquare, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("F_pseudorep"), analysis.FOverSpots, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("var_strip"), analysis.StripVariance, Tolerances.ClosedForm, trial.Name);
        Close.Relative(Number("sed"), analysis.Strips.DifferenceStandardError(0, 1), Tolerances.ClosedForm, trial.Name);
        Assert.Equal((int)Number("df_pseudorep"), analysis.DegreesOverSpots);
        Assert.Equal(5, analysis.SpotsPerStrip, Tolerances.FewRoundings);
        Assert.False(analysis.StripVarianceWasNegative);
        Assert.True(analysis.HasEqualSpots);
    }

    [Fact]
    public void Of_UnequalSpots_TestsStripMeans()
    {
        var trial = MixedCase.Load("rcb_subsamples_unbalanced_sim");
        var (y, treatment, block) = (trial.Numbers("y"), trial.Levels("trt"), trial.Levels("block"));
        var strip = FactorDesign.Cross(block, treatment);
        var means = Enumerable.Range(0, strip.Max() + 1).Select(s => y.Where((_, i) => strip[i] == s).Average()).ToArray();

        var analysis = Subsampling.Of(y, strip, FirstOf(strip, block), FirstOf(strip, treatment));
        var direct = BlockAnova.Of(means, FirstOf(strip, block), FirstOf(strip, treatment));

        Close.Relative(direct.Treatments.F!.Value, analysis.Strips.Treatments.F, Tolerances.ClosedForm, trial.Name);
        Assert.Equal(y.Length - means.Length, analysis.SpotDegreesOfFreedom);
        Assert.False(analysis.HasEqualSpots);
        Assert.Null(analysis.FOverSpots);
    }

    [Fact]
    public void Of_SpotsThatVaryMoreThanStrips_FlagsTheNegativeVariance()
    {
        // Strip means are 5, 6, 6, 7 and differ by blocks and treatments only; spots differ by 8.
        var analysis = Subsampling.Of([1, 9, 2, 10, 2.5, 10, 3, 11], [0, 0, 1, 1, 2, 2, 3, 3], [0, 0, 1, 1], [0, 1, 0, 1]);

        Assert.True(analysis.StripVarianceWasNegative);
        Assert.Equal(0, analysis.StripVariance);
        Assert.True(analysis.RawStripVariance < 0);
    }

    [Fact]
    public void Of_OneSpotInEachStrip_HasNoSpotVariance()
    {
        var analysis = Subsampling.Of([1, 2, 4, 6], [0, 1, 2, 3], [0, 0, 1, 1], [0, 1, 0, 1]);

        Assert.Null(analysis.SpotVariance);
        Assert.Null(analysis.StripVariance);
        Assert.False(analysis.StripVarianceWasNegative);
    }

    [Fact]
    public void Optimum_KnownVariances_AgreesWithTheReference()
    {
        var values = ReferenceData.Json("glm/glm_misc.json").GetProperty("optimum_subsamples").GetProperty("values");
        var example = values.GetProperty("example");

        var spots = SpotAllocation.Optimum(
            example.GetProperty("var_strip").GetDouble(),
            example.GetProperty("var_sample").GetDouble(),
            example.GetProperty("c_strip").GetDouble(),
            example.GetProperty("c_sample").GetDouble());

        Close.Relative(example.GetProperty("k_opt").GetDouble(), spots, Tolerances.ClosedForm, "spots per strip");
        foreach (var row in values.GetProperty("var_of_treatment_mean").EnumerateArray())
        {
            var k = row.GetProperty("k").GetInt32();
            Close.Relative(row.GetProperty("r4").GetDouble(), SpotAllocation.VarianceOfMean(4, 25, 4, k), Tolerances.ClosedForm, $"4 strips, {k} spots");
            Close.Relative(row.GetProperty("r8").GetDouble(), SpotAllocation.VarianceOfMean(4, 25, 8, k), Tolerances.ClosedForm, $"8 strips, {k} spots");
        }
    }

    [Fact]
    public void Optimum_StripsThatDoNotVary_HasNone()
    {
        Assert.Null(SpotAllocation.Optimum(0, 25, 20, 1));
        Assert.Equal(1, SpotAllocation.Optimum(25, 0.1, 1, 1));
    }

    [Fact]
    public void Optimum_ArgumentsOutOfRange_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SpotAllocation.Optimum(-1, 25, 20, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpotAllocation.Optimum(double.NaN, 25, 20, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpotAllocation.Optimum(4, 25, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpotAllocation.VarianceOfMean(4, 25, 0, 1));
    }

    private static int[] FirstOf(int[] strip, int[] level) => [.. Enumerable.Range(0, strip.Max() + 1).Select(s => level[Array.IndexOf(strip, s)])];
}
