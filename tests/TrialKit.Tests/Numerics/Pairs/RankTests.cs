using CsCheck;
using TrialKit.Numerics.Pairs;

namespace TrialKit.Tests.Numerics.Pairs;

public class RankTests
{
    [Fact]
    public void NullDistribution_TenRanks_MatchesTheTable()
    {
        // psignrank(0:27, 10) of R 4.2.2, misc.json.
        var table = ReferenceData.Json("screening/misc.json").GetProperty("quantiles").GetProperty("values").GetProperty("psignrank_W_n10");
        var chances = SignedRank.NullDistribution([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
        var sum = 0.0;
        var v = 0;
        foreach (var entry in table.EnumerateArray())
        {
            sum += chances[v++];
            Close.Relative(entry.GetDouble(), sum, Tolerances.ExactCount, $"V {v - 1}");
        }

        Assert.Equal(28, v);
    }

    [Fact]
    public void Exact_AnySample_AgreesWithPlainEnumeration() =>
        Gen.Int[-6, 6].Array[1, 10].Sample(whole =>
        {
            double[] d = [.. whole.Select(value => value / 10.0)];
            double[] used = [.. d.Where(value => value != 0)];
            double[] ranks = [.. used.Select(value => used.Count(u => Math.Abs(u) < Math.Abs(value)) + ((used.Count(u => Math.Abs(u) == Math.Abs(value)) + 1) / 2.0))];
            var v = used.Zip(ranks).Where(pair => pair.First > 0).Sum(pair => pair.Second);
            var greater = 0;
            for (var flip = 0; flip < 1 << used.Length; flip++)
            {
                greater += ranks.Where((_, i) => (flip >> i & 1) == 1).Sum() >= v ? 1 : 0;
            }

            var result = SignedRank.Exact(d, ZeroTreatment.Drop);
            Assert.Equal(v, result.V);
            Close.Relative(greater / Math.Pow(2, used.Length), result.PGreater, Tolerances.ExactCount, string.Join(' ', whole));
        });

    [Fact]
    public void Exact_SwappedSigns_ChangeTheTailsOver() =>
        Gen.Select(Gen.Int[-9, 9].Array[1, 15], Gen.Bool).Sample((whole, pratt) =>
        {
            var zeros = pratt ? ZeroTreatment.Pratt : ZeroTreatment.Drop;
            var result = SignedRank.Exact([.. whole.Select(value => 0.1 * value)], zeros);
            var swapped = SignedRank.Exact([.. whole.Select(value => -0.1 * value)], zeros);
            Close.Relative(result.PGreater, swapped.PLess, Tolerances.ExactCount, "tails");
            Close.Relative(result.P, swapped.P, Tolerances.ExactCount, "two-sided");
        });

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1.0)]
    [InlineData(1e12)]
    public void Exact_DecimalDifferencesInAnyUnit_AreTied(double unit)
    {
        // 0.3 - 0.1 and 0.5 - 0.3 are not the same double; as measurements they tie.
        var result = SignedRank.Exact([unit * (0.3 - 0.1), unit * (0.5 - 0.3), unit * (0.1 - 0.3), unit * 0.7], ZeroTreatment.Drop);
        Assert.Equal(8, result.V);
    }

    [Fact]
    public void Tests_AllZero_GiveOne()
    {
        Assert.Equal(new SignedRankResult(0, 0, 3, 1, 1, 1), SignedRank.Exact([0, 0, 0], ZeroTreatment.Drop));
        Assert.Equal(new SignedRankResult(0, 0, 3, 1, 1, 1), SignedRank.Exact([0, 0, 0], ZeroTreatment.Pratt));
        Assert.Equal(new SignTestResult(0, 0, 3, 1, 1, 1), SignTest.Exact([0, 0, 0]));
    }

    [Fact]
    public void Estimate_TooFewPairsForTheLevel_GivesTheWidestIntervalAndItsLevel()
    {
        var result = HodgesLehmann.Estimate([1, 2, 4, 8], 0.95);
        Assert.Equal((1.0, 8.0, 0.875), (result.Lower, result.Upper, result.AchievedLevel));
        Assert.Equal(0, HodgesLehmann.Estimate([3], 0.9).AchievedLevel);
    }

    [Fact]
    public void Estimate_ShiftedAndScaled_Follows() =>
        Gen.Select(Gen.Double[-50, 50].Array[2, 15], Gen.Double[-100, 100], Gen.Double[0.1, 9]).Sample((d, shift, scale) =>
        {
            var result = HodgesLehmann.Estimate(d, 0.9);
            var moved = HodgesLehmann.Estimate([.. d.Select(value => (scale * value) + shift)], 0.9);
            Close.Absolute((scale * result.Estimate) + shift, moved.Estimate, Tolerances.ShiftAndScale, "estimate");
            Close.Absolute((scale * result.Lower) + shift, moved.Lower, Tolerances.ShiftAndScale, "lower");
            Close.Absolute((scale * result.Upper) + shift, moved.Upper, Tolerances.ShiftAndScale, "upper");
            Assert.Equal(result.AchievedLevel, moved.AchievedLevel);
        });

    [Fact]
    public void Procedures_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentException>(() => SignedRank.Exact([], ZeroTreatment.Drop));
        Assert.Throws<ArgumentException>(() => SignTest.Exact([double.NaN]));
        Assert.Throws<ArgumentException>(() => HodgesLehmann.Estimate([double.PositiveInfinity], 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => HodgesLehmann.Estimate([1, 2], 1));
    }
}
