using TrialKit.Numerics.Pairs;

namespace TrialKit.Tests.Numerics.Pairs;

/// <summary>Distribution-free tests of pairs against <c>reference-data/pairs/paired.json</c> (R 4.2.2, exactRankTests).</summary>
public class PairReferenceTests
{
    [Fact]
    public void Cases_Loaded_AreThree() => Assert.Equal(3, PairCases.All().Count());

    [Fact]
    public void SignFlips_Exact_MatchesTheFullEnumeration()
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var result = SignFlips.Exact(d);
            Assert.True(result.IsExact);
            Assert.Equal(values.Number("permutation_exact", "n_assignments"), result.Total);
            Assert.Equal(values.Number("permutation_exact", "count_two_sided"), result.HitCount);
            Close.Relative(values.Number("permutation_exact", "p_two"), result.P, Tolerances.ExactCount, name);
        }
    }

    [Theory]
    [InlineData(ZeroTreatment.Drop, "wilcoxon_drop0")]
    [InlineData(ZeroTreatment.Pratt, "wilcoxon_pratt")]
    internal void SignedRank_Exact_MatchesReference(ZeroTreatment zeros, string group)
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var result = SignedRank.Exact(d, zeros);
            Assert.Equal(values.Number(group, "Wplus"), result.V);
            Assert.Equal(values.Number(group, "n_used"), result.Used);
            Assert.Equal(d.Length - result.Used, result.Zeros);
            Close.Relative(values.Number(group, "p_greater"), result.PGreater, Tolerances.ExactCount, name);
            Close.Relative(values.Number(group, "p_less"), result.PLess, Tolerances.ExactCount, name);
            Close.Relative(values.Number(group, "p_two_doubled"), result.P, Tolerances.ExactCount, name);
        }
    }

    [Theory]
    [InlineData(0.95, "hl_ci95_order_stats")]
    [InlineData(0.90, "hl_ci90_order_stats")]
    public void HodgesLehmann_EstimateAndInterval_MatchReference(double level, string group)
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var result = HodgesLehmann.Estimate(d, level);
            Close.Relative(values.Number("hl_all_walsh", "estimate"), result.Estimate, Tolerances.ClosedForm, name);
            Assert.Equal(values.Number("hl_all_walsh", "n_walsh"), result.WalshAverages);
            Assert.Equal(values.Number(group, "k"), result.OrderStatistic);
            Close.Relative(values.Number(group, "lo"), result.Lower, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(group, "hi"), result.Upper, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(group, "conf_achieved"), result.AchievedLevel, Tolerances.ExactCount, name);
        }
    }

    [Fact]
    public void SignTest_Exact_MatchesReference()
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var result = SignTest.Exact(d);
            Assert.Equal(values.Number("sign_test", "plus"), result.Plus);
            Assert.Equal(values.Number("sign_test", "minus"), result.Minus);
            Assert.Equal(values.Number("sign_test", "zero"), result.Zeros);
            Close.Relative(values.Number("sign_test", "p_two"), result.P, Tolerances.ExactCount, name);
            Close.Relative(values.Number("sign_test", "p_greater"), result.PGreater, Tolerances.ExactCount, name);
        }
    }
}
