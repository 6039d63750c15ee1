using CsCheck;
using TrialKit.Numerics;
using TrialKit.Numerics.Pairs;

namespace TrialKit.Tests.Numerics.Pairs;

public class SignFlipsTests
{
    private static readonly double[] Darwin = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];

    [Fact]
    public void Exact_DarwinsMaize_IsFishersCount()
    {
        // Fisher 1935, The Design of Experiments, section 21: 863 of 32768 on each side. Data and count from memory.
        var result = SignFlips.Exact(Darwin);
        Assert.Equal(1726, result.HitCount);
        Assert.Equal(32768, result.Total);
    }

    [Fact]
    public void Exact_AnySample_AgreesWithPlainEnumeration() =>
        Gen.Int[-20, 20].Array[1, 12].Sample(tenths =>
        {
            double[] d = [.. tenths.Select(value => value / 10.0)];
            var observed = Math.Abs(tenths.Sum());
            var hits = 0;
            for (var flip = 0; flip < 1 << d.Length; flip++)
            {
                var sum = 0;
                for (var i = 0; i < d.Length; i++)
                {
                    sum += (flip >> i & 1) == 0 ? tenths[i] : -tenths[i];
                }

                hits += Math.Abs(sum) >= observed ? 1 : 0;
            }

            Assert.Equal(hits, SignFlips.Exact(d).HitCount);
        });

    [Fact]
    public void Exact_SwappedReorderedOrScaled_KeepsItsCount() =>
        Gen.Select(Gen.Int[-30, 30].Array[2, 18], Gen.Double[0.001, 1000], Gen.ULong).Sample((whole, scale, seed) =>
        {
            double[] d = [.. whole.Select(value => (double)value)];
            var hits = SignFlips.Exact(d).HitCount;
            double[] moved = [.. d.Select(value => -scale * value)];
            new RandomStream(seed).Shuffle(moved.AsSpan());
            Assert.Equal(hits, SignFlips.Exact(moved).HitCount);
        });

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    public void Exact_TinyOrHugeUnits_ChangeNothing(double unit) =>
        Assert.Equal(1726, SignFlips.Exact([.. Darwin.Select(d => unit * d)]).HitCount);

    [Theory]
    [InlineData(2, 0.5)]
    [InlineData(3, 0.25)]
    [InlineData(4, 0.125)]
    [InlineData(5, 0.0625)]
    [InlineData(6, 0.03125)]
    public void SmallestP_Pairs_IsReachedWhenAllPointOneWay(int pairs, double smallest)
    {
        Assert.Equal(smallest, SignFlips.SmallestP(pairs));
        Assert.Equal(smallest, SignFlips.Exact([.. Enumerable.Range(1, pairs).Select(i => 0.1 * i)]).P);
    }

    [Fact]
    public void Exact_AllZero_IsOne()
    {
        var result = SignFlips.Exact([0, 0, 0]);
        Assert.Equal(1, result.P);
        Assert.Equal(8, result.HitCount);
    }

    [Fact]
    public void Exact_AllEqual_IsTheSmallestP() => Assert.Equal(SignFlips.SmallestP(9), SignFlips.Exact([.. Enumerable.Repeat(2.3, 9)]).P);

    [Fact]
    public void Exact_MostPairs_CountsAllOfThem()
    {
        var result = SignFlips.Exact([.. Enumerable.Repeat(1.0, SignFlips.MaxExactPairs)]);
        Assert.Equal(2, result.HitCount);
        Assert.Equal(Math.Pow(2, SignFlips.MaxExactPairs), result.Total);
    }

    [Fact]
    public void Test_MorePairsThanExact_DrawsWithTheSeedAndSaysSo()
    {
        double[] d = [.. Enumerable.Range(0, 60).Select(i => Math.Sin(i) + 0.2)];
        var result = SignFlips.Test(d, 20_000, 42);
        Assert.False(result.IsExact);
        Assert.Equal(20_000, result.Draws);
        Assert.Equal(42UL, result.Seed);
        Assert.Equal((1.0 + result.HitCount) / 20_001, result.P);
        Assert.Equal(result, SignFlips.Test(d, 20_000, 42));
        Assert.NotEqual(result, SignFlips.Test(d, 20_000, 43));
    }

    [Fact]
    public void Sampled_DarwinsMaize_LiesNearTheExactP()
    {
        var sampled = SignFlips.Sampled(Darwin, SignFlips.DefaultDraws, SignFlips.DefaultSeed);

        // Four standard errors of a proportion of .0527 in 99999 draws.
        Close.Absolute(SignFlips.Exact(Darwin).P, sampled.P, 4 * Math.Sqrt(0.0527 * 0.9473 / 99_999), "Darwin");
    }

    [Fact]
    public void Test_ImpossibleInput_Throws()
    {
        Assert.Throws<ArgumentException>(() => SignFlips.Exact([]));
        Assert.Throws<ArgumentException>(() => SignFlips.Exact([1, double.NaN]));
        Assert.Throws<ArgumentException>(() => SignFlips.Exact(new double[SignFlips.MaxExactPairs + 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => SignFlips.Sampled([1, 2], 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SignFlips.SmallestP(0));
    }
}
