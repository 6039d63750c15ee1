using CsCheck;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class IntervalScoreTests
{
    [Theory]
    [InlineData("logrank_sun_permutation", nameof(IntervalScore.LogRankSun))]
    [InlineData("logrank_finkelstein_permutation", nameof(IntervalScore.LogRankFinkelstein))]
    [InlineData("wmw_permutation", nameof(IntervalScore.RankSum))]
    public void Of_Cosmesis_GivesTheReferencePermutationTest(string name, string kind)
    {
        var (left, right, group) = ReferenceIntervals.Rows(ReferenceIntervals.Cosmesis, "treat");
        var scores = IntervalScores.Of(Turnbull.Fit(left, right, []), Enum.Parse<IntervalScore>(kind));
        var test = BlockPermutationTest.Of(scores, [.. group.Select(g => g == "RadChem")], new int[group.Length]);
        var expected = ReferenceIntervals.Cosmesis.GetProperty("values").GetProperty("score_tests").GetProperty(name);

        Agree.Absolute(expected.GetProperty("U").GetDouble(), test.U, Tolerances.ReferenceEffect, $"{name} U");
        Agree.Absolute(expected.GetProperty("V").GetDouble(), test.Variance, Tolerances.ReferenceEffect, $"{name} V");
        Agree.Absolute(expected.GetProperty("Z").GetDouble(), test.Z, Tolerances.ReferenceEffect, $"{name} Z");
        Agree.Relative(expected.GetProperty("p").GetDouble(), test.NormalP, Tolerances.ReferenceEffect, $"{name} p");
        Assert.Null(test.ExactP);
    }

    [Fact]
    public void Of_ClusteredStrips_GivesTheReferenceMeansAndExactP()
    {
        var (left, right, strip) = ReferenceIntervals.Rows(ReferenceIntervals.Clustered, "strip");
        var (_, _, treatment) = ReferenceIntervals.Rows(ReferenceIntervals.Clustered, "trt");
        var scores = IntervalScores.Of(Turnbull.Fit(left, right, []), IntervalScore.LogRankFinkelstein);
        var values = ReferenceIntervals.Clustered.GetProperty("values");
        string[] strips = [.. strip.Distinct(StringComparer.Ordinal)];
        double[] means = [.. strips.Select(s => Enumerable.Range(0, strip.Length).Where(i => strip[i] == s).Average(i => scores[i]))];
        for (var s = 0; s < strips.Length; s++)
        {
            Agree.Absolute(values.GetProperty("strip_mean_finkelstein_scores").GetProperty(strips[s]).GetDouble(), means[s], Tolerances.Mass, $"strip {strips[s]}");
        }

        var test = BlockPermutationTest.Of(means, [.. strips.Select(s => treatment[Array.IndexOf(strip, s)] == "B")], [1, 1, 2, 2, 3, 3, 4, 4]);

        Assert.Equal(16.0, test.Arrangements);
        Agree.Absolute(values.GetProperty("paired_sign_perm_p").GetDouble(), test.ExactP, Tolerances.ClosedForm, "exact p");
        Assert.Equal(1.0 / 16.0, test.SmallestP);
        // Half the sum of the differences within pairs.
        Agree.Absolute(0.5 * values.GetProperty("pair_diffs").EnumerateObject().Sum(d => d.Value.GetDouble()), test.U, Tolerances.Mass, "U");
    }

    [Fact]
    public void Scores_AnyData_SumToZero() =>
        Gen.Select(Gen.Int[0, 12], Gen.Int[1, 6], Gen.Bool, (left, width, open) => (Left: (double)left, Right: open ? double.PositiveInfinity : (double)(left + width))).Array[1, 40].Sample(
            rows =>
            {
                var fit = Turnbull.Fit([.. rows.Select(r => r.Left)], [.. rows.Select(r => r.Right)], []);
                foreach (var kind in Enum.GetValues<IntervalScore>())
                {
                    Agree.Absolute(0.0, IntervalScores.Of(fit, kind).Sum() / rows.Length, Tolerances.Optimality * rows.Length, kind.ToString());
                }
            },
            iter: 1000);

    [Fact]
    public void BlockPermutation_TwoOfFour_ListsTheSixArrangements()
    {
        var test = BlockPermutationTest.Of([4, 3, 2, 1], [true, true, false, false], [1, 1, 1, 1]);

        Assert.Equal(6.0, test.Arrangements);
        Agree.Absolute(2.0, test.U, Tolerances.ClosedForm, "U");
        Agree.Absolute(2.0 / 6.0, test.ExactP, Tolerances.ClosedForm, "the two extreme arrangements of six");
        Agree.Absolute(5.0 * 1.0 / 3.0, test.Variance, Tolerances.ClosedForm, "variance");
    }

    [Fact]
    public void BlockPermutation_RandomBlocks_HasTheVarianceOfItsArrangements() =>
        Gen.Int[-12, 12].Array[6].Sample(
            quarters =>
            {
                double[] scores = [.. quarters.Select(q => 0.25 * q)];
                int[] block = [1, 1, 1, 2, 2, 2];
                var all = new List<double>();
                for (var i = 0; i < 3; i++)
                {
                    for (var j = 3; j < 6; j++)
                    {
                        var treated = new bool[6];
                        treated[i] = treated[j] = true;
                        all.Add(BlockPermutationTest.Of(scores, treated, block).U);
                    }
                }

                var test = BlockPermutationTest.Of(scores, [true, false, false, true, false, false], block);
                Agree.Absolute(all.Average(u => u * u), test.Variance, Tolerances.ClosedForm, "variance");
                Agree.Absolute(all.Count(u => Math.Abs(u) >= Math.Abs(test.U) - Tolerances.ClosedForm) / 9.0, test.ExactP, Tolerances.ClosedForm, "exact p");
            },
            iter: 500);

    [Fact]
    public void BlockPermutation_OneTreatmentPerBlock_CannotTell()
    {
        var test = BlockPermutationTest.Of([1, 2], [true, true], [1, 1]);

        Assert.Null(test.Z);
        Assert.Null(test.NormalP);
        Assert.Equal(1.0, test.ExactP);
    }

    [Fact]
    public void BlockPermutation_ImpossibleInput_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => BlockPermutationTest.Of([], [], []));
        Assert.Throws<ArgumentException>(() => BlockPermutationTest.Of([1, 2], [true], [1, 1]));
        Assert.Throws<ArgumentException>(() => BlockPermutationTest.Of([1, double.NaN], [true, false], [1, 1]));
    }
}
