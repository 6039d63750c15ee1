using System.Globalization;
using TrialKit.Numerics.Distributions;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Numerics.Distributions;

public class DunnettTests
{
    [Fact]
    public void CriticalValue_EqualReplication_MatchesQuadrature()
    {
        var rows = 0;
        foreach (var row in Csv("distributions/dunnett-equal-n-quantiles.csv"))
        {
            int[] treatments = [.. Enumerable.Repeat(4, int.Parse(row[0], CultureInfo.InvariantCulture))];
            var df = Number(row[1]);
            var what = $"k {row[0]}, df {row[1]}";
            Close.Relative(Number(row[2]), Dunnett.CriticalValueTwoSided(0.05, 4, treatments, df), Tolerances.DunnettQuantile, what);
            Close.Relative(Number(row[3]), Dunnett.CriticalValueTwoSided(0.10, 4, treatments, df), Tolerances.DunnettQuantile, what);
            Close.Relative(Number(row[4]), Dunnett.CriticalValueTwoSided(0.01, 4, treatments, df), Tolerances.DunnettQuantile, what);
            Close.Relative(Number(row[5]), Dunnett.CriticalValueOneSided(0.05, 4, treatments, df), Tolerances.DunnettQuantile, what);
            rows++;
        }

        Assert.Equal(105, rows);
    }

    [Fact]
    public void UpperTail_DataSetsWithEqualAndUnequalReplication_MatchReference()
    {
        var cases = 0;
        foreach (var item in Json("distributions/dunnett-cases.json").EnumerateObject())
        {
            var value = item.Value;
            var control = value.GetProperty("control").GetInt32();
            int[] treatments = [.. value.GetProperty("treatments").EnumerateArray().Select(n => n.GetInt32())];
            var df = value.GetProperty("df").GetDouble();
            var expected = value.GetProperty("p_two_integral").EnumerateArray().Select(p => p.GetDouble());
            var t = value.GetProperty("t").EnumerateArray().Select(p => p.GetDouble());
            foreach (var (statistic, p) in t.Zip(expected))
            {
                var actual = Dunnett.UpperTailTwoSided(Math.Abs(statistic), control, treatments, df);
                Close.Absolute(p, actual, Tolerances.DunnettProbability, $"{item.Name}, t {statistic}");
            }

            Close.Relative(value.GetProperty("d05_two").GetDouble(), Dunnett.CriticalValueTwoSided(0.05, control, treatments, df), Tolerances.DunnettQuantile, item.Name);
            Close.Relative(value.GetProperty("d05_one").GetDouble(), Dunnett.CriticalValueOneSided(0.05, control, treatments, df), Tolerances.DunnettQuantile, item.Name);
            cases++;
        }

        Assert.Equal(5, cases);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3.5)]
    [InlineData(40)]
    [InlineData(double.PositiveInfinity)]
    public void UpperTail_OneTreatment_IsStudentsT(double df)
    {
        foreach (var t in new[] { 0.01, 1.0, 2.5, 6, 12 })
        {
            Close.Relative(2 * StudentT.UpperTail(t, df), Dunnett.UpperTailTwoSided(t, 3, [5], df), Tolerances.RangeAgainstT, $"t {t}, df {df}");
            Close.Relative(StudentT.UpperTail(t, df), Dunnett.UpperTailOneSided(t, 3, [5], df), Tolerances.RangeAgainstT, $"t {t}, df {df}");
            Close.Relative(StudentT.LowerTail(t, df), Dunnett.UpperTailOneSided(-t, 3, [5], df), Tolerances.RangeAgainstT, $"t -{t}, df {df}");
        }
    }

    [Fact]
    public void UpperTail_AlmostNoControl_IsTheSharedDeviation()
    {
        // With a huge replication of every treatment all statistics are the control's deviation, one t.
        var p = Dunnett.UpperTailTwoSided(2.2, 1, [1_000_000, 1_000_000, 1_000_000], 12);
        Close.Relative(2 * StudentT.UpperTail(2.2, 12), p, Tolerances.SlowLimit, "lambda near 1");
    }

    [Fact]
    public void UpperTail_OrderOfTreatments_DoesNotMatter() =>
        Assert.Equal(Dunnett.UpperTailTwoSided(2.1, 4, [3, 6, 3, 5], 14), Dunnett.UpperTailTwoSided(2.1, 4, [5, 3, 6, 3], 14));

    [Theory]
    [InlineData(3, 8, 2.879662)]
    [InlineData(3, 10, 2.758997)]
    [InlineData(4, 16, 2.707920)]
    public void CriticalValueTwoSided_FivePercent_MatchesSixPlaces(int k, double df, double expected) =>
        Close.Absolute(expected, Dunnett.CriticalValueTwoSided(0.05, 4, [.. Enumerable.Repeat(4, k)], df), Tolerances.Printed(6), "computed by quadrature");

    [Fact]
    public void Procedures_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.UpperTailTwoSided(double.NaN, 4, [4], 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.UpperTailTwoSided(2, 0, [4], 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.UpperTailTwoSided(2, 4, [], 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.UpperTailTwoSided(2, 4, [4, 0], 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.CriticalValueOneSided(0.6, 4, [4], 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dunnett.CriticalValueTwoSided(1, 4, [4], 5));
    }
}
