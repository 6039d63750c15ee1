using TrialKit.Numerics.Distributions;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Numerics.Distributions;

public class StudentizedRangeTests
{
    [Fact]
    public void UpperTail_Grid_MatchesQuadrature()
    {
        var rows = 0;
        foreach (var row in Csv("distributions/ptukey-highprec-grid.csv"))
        {
            var upper = StudentizedRange.UpperTail(Number(row[0]), int.Parse(row[1], System.Globalization.CultureInfo.InvariantCulture), Number(row[2]));
            Close.Absolute(Number(row[3]), 1 - upper, Tolerances.RangeProbability, $"q {row[0]}, k {row[1]}, df {row[2]}");
            rows++;
        }

        Assert.Equal(600, rows);
    }

    [Fact]
    public void UpperQuantile_Grid_MatchesQuadrature()
    {
        var rows = 0;
        foreach (var row in Csv("distributions/qtukey-highprec.csv"))
        {
            var q = StudentizedRange.UpperQuantile(1 - Number(row[0]), int.Parse(row[1], System.Globalization.CultureInfo.InvariantCulture), Number(row[2]));
            Close.Relative(Number(row[3]), q, Tolerances.RangeQuantile, $"p {row[0]}, k {row[1]}, df {row[2]}");
            rows++;
        }

        Assert.Equal(357, rows);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7.3)]
    [InlineData(30)]
    [InlineData(5000)]
    [InlineData(double.PositiveInfinity)]
    public void UpperTail_TwoMeans_IsStudentsT(double df)
    {
        foreach (var q in new[] { 1e-4, 0.5, 2, 4, 8, 15, 40 })
        {
            var t = StudentT.UpperTail(q / Math.Sqrt(2), df);
            Close.Relative(2 * t, StudentizedRange.UpperTail(q, 2, df), Tolerances.RangeAgainstT, $"q {q}, df {df}");
        }

        Close.Relative(Math.Sqrt(2) * StudentT.UpperQuantile(0.025, df), StudentizedRange.UpperQuantile(0.05, 2, df), Tolerances.RangeAgainstT, $"df {df}");
    }

    [Fact]
    public void UpperTail_FarOut_NearsTheSumOverPairs()
    {
        // Far out no two pairs exceed together, so the tail nears k (k - 1) / 2 times that of one pair, from below.
        var pairs = 10 * Normal.UpperTail(25 / Math.Sqrt(2)) * 2;
        Close.Relative(pairs, StudentizedRange.UpperTail(25, 5, double.PositiveInfinity), Tolerances.Limit, "q 25, k 5");
        Assert.Equal(0, StudentizedRange.UpperTail(80, 5, double.PositiveInfinity));
    }

    [Theory]
    [InlineData(3, 10, 3.876777)]
    [InlineData(4, 6, 4.895599)]
    [InlineData(3, 3, 5.909598)]
    public void UpperQuantile_FivePercent_MatchesSixPlaces(int k, double df, double expected) =>
        Close.Absolute(expected, StudentizedRange.UpperQuantile(0.05, k, df), Tolerances.Printed(6), "computed by quadrature");

    [Fact]
    public void UpperTail_ImpossibleInput_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentizedRange.UpperTail(double.NaN, 3, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentizedRange.UpperTail(1, 1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentizedRange.UpperTail(1, 3, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentizedRange.UpperQuantile(0, 3, 5));
    }
}
