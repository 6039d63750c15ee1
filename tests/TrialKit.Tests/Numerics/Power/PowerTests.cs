using System.Globalization;
using TrialKit.Numerics.Power;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Numerics.Power;

public class PowerTests
{
    [Fact]
    public void TTestPower_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/power-t-grid.csv"))
        {
            var n = Number(row[1]);
            var twoSample = row[0] == "two.sample";
            var ncp = Number(row[2]) * Math.Sqrt(twoSample ? n / 2 : n);
            var df = twoSample ? 2 * (n - 1) : n - 1;

            // A one-sided test at a level is the true direction of a two-sided one at twice that level.
            var oneSided = row[4] == "one.sided";
            var alpha = Number(row[3]) * (oneSided ? 2 : 1);
            var what = string.Join(' ', row);
            Close.Relative(Number(row[5]), TTestPower.Power(ncp, df, alpha, Rejection.TrueDirection), Tolerances.Power, what);
            if (!oneSided)
            {
                Close.Relative(Number(row[6]), TTestPower.Power(ncp, df, alpha, Rejection.EitherDirection), Tolerances.Power, what);
            }

            rows++;
        }

        Assert.Equal(320, rows);
    }

    [Fact]
    public void BlockPower_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/power-f-rcb-grid.csv"))
        {
            var power = BlockPower.Power(Whole(row[0]), Whole(row[1]), Number(row[2]), 1, Number(row[3]));
            Close.Absolute(Number(row[5]), power, Tolerances.NoncentralFReference, string.Join(' ', row));
            rows++;
        }

        Assert.Equal(192, rows);
    }

    [Fact]
    public void DetectableDifference_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/detectable-difference-pairs.csv"))
        {
            var deviation = Math.Sqrt(2) * Number(row[0]);
            var what = string.Join(' ', row);
            Close.Relative(Number(row[4]), PairedPower.DetectableDifference(deviation, Whole(row[1]), Number(row[2]), 0.8), Tolerances.Power, what);
            Close.Relative(Number(row[5]), PairedPower.DetectableDifference(deviation, Whole(row[1]), Number(row[2]), 0.9), Tolerances.Power, what);
            rows++;
        }

        Assert.Equal(110, rows);
    }

    [Fact]
    public void PairsRequired_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/pairs-required-from-cv.csv"))
        {
            var deviation = Math.Sqrt(2) * Number(row[0]);
            var what = string.Join(' ', row);
            Assert.True(Whole(row[4]) == PairedPower.PairsRequired(Number(row[1]), deviation, Number(row[2]), Number(row[3]), 2000), what);
            Close.Relative(Number(row[5]), PairedPower.Power(Number(row[1]), deviation, Whole(row[4]), Number(row[2])), Tolerances.Power, what);
            rows++;
        }

        Assert.Equal(120, rows);
    }

    [Theory]
    [InlineData(0.05, 10.14)]
    [InlineData(0.10, 8.38)]
    public void DetectableDifference_FivePercentSpreadSixPairs_IsTheKnownFigure(double alpha, double expected) =>
        Close.Absolute(expected, PairedPower.DetectableDifference(5 * Math.Sqrt(2), 6, alpha, 0.8), Tolerances.Printed(2), "two printed decimals");

    [Fact]
    public void TTestPower_TwoSamples_MatchesThePublishedExample()
    {
        var values = Json("screening/misc.json").GetProperty("power_docs").GetProperty("values");
        double Power(double n) => TTestPower.Power(Math.Sqrt(n / 2), 2 * (n - 1), 0.05, Rejection.TrueDirection);
        Close.Relative(values.GetProperty("p1").GetDouble(), Power(20), Tolerances.Power, "n 20, difference of one sigma");
        Close.Relative(0.9, Power(values.GetProperty("n90").GetDouble()), Tolerances.Power, "n 22.0211 for 90 %");
    }

    [Fact]
    public void NoncentralityFor_AnyPower_IsUndoneByThePower()
    {
        foreach (var power in new[] { 0.03, 0.3, 0.5, 0.8, 0.99, 0.999999 })
        {
            foreach (var df in new[] { 1.0, 2, 5, 40 })
            {
                var ncp = TTestPower.NoncentralityFor(power, df, 0.05);
                Close.Relative(power, TTestPower.Power(ncp, df, 0.05, Rejection.TrueDirection), Tolerances.Power, $"power {power}, df {df}");
            }
        }
    }

    [Fact]
    public void Power_NoDifference_IsTheLevelEitherWayAndHalfOfItOneWay()
    {
        Close.Relative(0.1, PairedPower.Power(0, 2, 6, 0.1, Rejection.EitherDirection), Tolerances.Power, "either");
        Close.Relative(0.05, PairedPower.Power(0, 2, 6, 0.1), Tolerances.Power, "true direction");
    }

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e12)]
    public void Power_TinyOrHugeUnits_ChangeNothing(double unit) =>
        Close.Relative(PairedPower.Power(3, 4, 7, 0.05), PairedPower.Power(-3 * unit, 4 * unit, 7, 0.05), Tolerances.Power, "unit");

    [Fact]
    public void PairsRequired_OutOfReach_IsNothing()
    {
        Assert.Null(PairedPower.PairsRequired(0.01, 1, 0.05, 0.8, 50));
        Assert.Equal(2, PairedPower.PairsRequired(1000, 1, 0.05, 0.8, 50));
    }

    [Fact]
    public void Procedures_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PairedPower.Power(1, 0, 6, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairedPower.Power(1, 1, 1, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairedPower.Power(double.NaN, 1, 6, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairedPower.DetectableDifference(1, 6, 0.05, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairedPower.PairsRequired(0, 1, 0.05, 0.8, 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockPower.Power(1, 3, 1, 1, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => TTestPower.Power(-1, 5, 0.05, Rejection.TrueDirection));
    }

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
