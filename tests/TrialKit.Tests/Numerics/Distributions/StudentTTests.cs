using CsCheck;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics.Distributions;

public class StudentTTests
{
    [Theory]
    [InlineData(1e-3)]
    [InlineData(3.0)]
    [InlineData(1e5)]
    [InlineData(1e150)]
    [InlineData(1e200)]
    public void UpperTail_OneDegree_IsTheArcTangent(double t) =>
        Close.Relative(Math.Atan2(1, t) / Math.PI, StudentT.UpperTail(t, 1), Tolerances.DistributionTail, "Cauchy, closed form");

    [Theory]
    [InlineData(1e-3)]
    [InlineData(3.0)]
    [InlineData(1e5)]
    [InlineData(1e140)]
    public void UpperTail_TwoDegrees_IsAlgebraic(double t)
    {
        var root = Math.Sqrt(2 + (t * t));
        Close.Relative(1 / (root * (root + t)), StudentT.UpperTail(t, 2), Tolerances.DistributionTail, "t with 2 df, closed form");
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(2.5)]
    [InlineData(9)]
    [InlineData(400)]
    [InlineData(1e6)]
    [InlineData(double.PositiveInfinity)]
    public void UpperQuantile_AnyTail_IsUndoneByTheTail(double df)
    {
        foreach (var p in new[] { 1e-300, 1e-250, 1e-100, 1e-20, 1e-5, 0.01, 0.2, 0.26, 0.4, 0.499999 })
        {
            var t = StudentT.UpperQuantile(p, df);
            if (double.IsPositiveInfinity(t))
            {
                Assert.True(StudentT.UpperTail(double.MaxValue, df) > p, $"df {df}, p {p}: the quantile is not beyond the largest number");
                continue;
            }

            // A tail t^-df turns a rounding of the log of t into df times as much.
            Close.Relative(p, StudentT.UpperTail(t, df), Tolerances.QuantileRoundTrip, $"df {df}, p {p}");
        }
    }

    [Theory]
    [InlineData(0.49999)]
    [InlineData(0.3)]
    [InlineData(0.2)]
    [InlineData(1e-9)]
    [InlineData(1e-300)]
    public void UpperQuantile_OneAndTwoDegrees_MatchTheClosedForms(double p)
    {
        var centre = 0.5 - p;
        Close.Relative(p < 0.25 ? 1 / Math.Tan(Math.PI * p) : Math.Tan(Math.PI * centre), StudentT.UpperQuantile(p, 1), Tolerances.DistributionTail, "df 1");
        Close.Relative(2 * centre * Math.Sqrt(0.5 / p / (1 - p)), StudentT.UpperQuantile(p, 2), Tolerances.DistributionTail, "df 2");
    }

    [Theory]
    [InlineData("qt975", 0.975)]
    [InlineData("qt95", 0.95)]
    public void Quantile_Table_MatchesReference(string table, double p)
    {
        var rows = ReferenceData.Json("screening/misc.json").GetProperty("quantiles").GetProperty("values").GetProperty(table);
        foreach (var row in rows.EnumerateObject())
        {
            Close.Relative(row.Value.GetDouble(), StudentT.Quantile(p, ReferenceData.Number(row.Name)), Tolerances.DistributionQuantile, $"{table}, df {row.Name}");
        }
    }

    [Fact]
    public void Tails_SwappedSign_ChangeOver() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[0.3, 300]).Sample((t, df) =>
            StudentT.LowerTail(t, df) == StudentT.UpperTail(-t, df)
            && Math.Abs(StudentT.LowerTail(t, df) + StudentT.UpperTail(t, df) - 1) < Tolerances.DistributionTail);

    [Fact]
    public void UpperTail_AcrossTheSwitchToManyDegrees_IsContinuous()
    {
        foreach (var t in new[] { 0.1, 1.0, 3.0, 8.0 })
        {
            var below = StudentT.UpperTail(t, 1e5);
            Close.Relative(below, StudentT.UpperTail(t, 1e5 * (1 + 1e-12)), Tolerances.DistributionTail, $"t {t}");
        }
    }

    [Fact]
    public void Tails_AtTheEnds_AreExact()
    {
        Assert.Equal(0.5, StudentT.UpperTail(0, 3));
        Assert.Equal(0, StudentT.UpperTail(double.PositiveInfinity, 3));
        Assert.Equal(1, StudentT.LowerTail(double.PositiveInfinity, double.PositiveInfinity));
        Assert.Equal(double.NegativeInfinity, StudentT.Quantile(0, 3));
        Assert.Equal(double.PositiveInfinity, StudentT.Quantile(1, 3));
        Assert.Equal(0, StudentT.Quantile(0.5, 3));
    }

    [Theory]
    [InlineData(double.NaN, 3, 0.5)]
    [InlineData(1, 0, 0.5)]
    [InlineData(1, -2, 0.5)]
    [InlineData(1, double.NaN, 0.5)]
    public void UpperTail_ImpossibleInput_Throws(double t, double df, double p)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.UpperTail(t, df));
        if (!double.IsNaN(t))
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(p, df));
        }
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Quantile_NoProbability_SaysWhatWasFound(double p)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(p, 3));
        Assert.Contains("was found; a probability from 0 to 1 was expected", error.Message, StringComparison.Ordinal);
    }
}
