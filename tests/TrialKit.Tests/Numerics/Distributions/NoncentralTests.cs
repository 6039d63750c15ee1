using CsCheck;
using TrialKit.Numerics.Distributions;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Numerics.Distributions;

public class NoncentralTests
{
    [Fact]
    public void NoncentralT_SmallTails_MatchSixtyDigitQuadrature()
    {
        foreach (var row in Csv("power/noncentral-t-small-tails.csv"))
        {
            var actual = NoncentralT.LowerTail(Number(row[0]), Number(row[1]), Number(row[2]));
            Close.Relative(Number(row[3]), actual, Tolerances.NoncentralTail, string.Join(' ', row));
        }
    }

    [Fact]
    public void NoncentralT_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/noncentral-t-grid.csv"))
        {
            var (t, df, ncp) = (Number(row[0]), Number(row[1]), Number(row[2]));
            Close.Absolute(Number(row[3]), NoncentralT.LowerTail(t, df, ncp), Tolerances.NoncentralReference, string.Join(' ', row));
            Close.Absolute(Number(row[4]), NoncentralT.UpperTail(t, df, ncp), Tolerances.NoncentralReference, string.Join(' ', row));
            rows++;
        }

        Assert.Equal(1320, rows);
    }

    [Fact]
    public void NoncentralT_Tails_MakeOneAndSwapWithTheSign() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Double[0.6, 150], Gen.Double[-8, 8]).Sample(
            (t, df, ncp) =>
            {
                var lower = NoncentralT.LowerTail(t, df, ncp);
                Close.Absolute(1, lower + NoncentralT.UpperTail(t, df, ncp), Tolerances.NoncentralTail, "sum");
                Assert.Equal(lower, NoncentralT.UpperTail(-t, df, -ncp));
            },
            iter: 300);

    [Fact]
    public void NoncentralT_Limits_AreNormalAndCentral()
    {
        Assert.Equal(Normal.LowerTail(-1.5), NoncentralT.LowerTail(0.5, double.PositiveInfinity, 2));
        Close.Relative(StudentT.UpperTail(2, 7), NoncentralT.UpperTail(2, 7, 1e-14), Tolerances.NoncentralTail, "ncp near 0");
        Close.Relative(Normal.LowerTail(-2), NoncentralT.LowerTail(0, 3, 2), Tolerances.NoncentralTail, "t 0");
    }

    [Fact]
    public void NoncentralF_OneNumeratorDegree_IsTwoTailsOfNoncentralT() =>
        Gen.Select(Gen.Double[0.1, 6], Gen.Double[2, 80], Gen.Double[0.1, 6]).Sample(
            (t, df, ncp) =>
            {
                var two = NoncentralT.UpperTail(t, df, ncp) + NoncentralT.LowerTail(-t, df, ncp);
                Close.Relative(two, NoncentralF.UpperTail(t * t, 1, df, ncp * ncp), Tolerances.NoncentralTail, $"t {t}, df {df}, ncp {ncp}");
            },
            iter: 300);

    [Fact]
    public void Noncentral_ImpossibleInput_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralT.LowerTail(1, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralT.LowerTail(double.NaN, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralT.UpperTail(1, 2, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralF.UpperTail(1, 2, 3, -1));
    }
}
