using CsCheck;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class TurnbullTests
{
    private static readonly Gen<(double Left, double Right)[]> Observations = Gen.Select(
        Gen.Int[0, 12], Gen.Int[0, 6], Gen.Frequency((3, Gen.Const(false)), (1, Gen.Const(true))),
        (left, width, open) => (Left: (double)left, Right: open ? double.PositiveInfinity : (double)(left + width))).Array[1, 60];

    [Fact]
    public void Fit_Toy_GivesTheMassesFoundByHand()
    {
        var fit = Turnbull.Fit([0, 1, 2, 1, 3], [2, 3, 4, 2, double.PositiveInfinity], [4, 3, 3, 2, 2]);

        Assert.Equal([1.0, 2.0, 3.0], fit.Left.ToArray());
        Assert.Equal([2.0, 3.0, 4.0], fit.Right.ToArray());
        Agree.Absolute(9.0 / 14.0, fit.Mass[0], Tolerances.Mass, "(1, 2]");
        Agree.Absolute(0.0, fit.Mass[1], Tolerances.Mass, "(2, 3]");
        Agree.Absolute(5.0 / 14.0, fit.Mass[2], Tolerances.Mass, "(3, 4]");
        Agree.Absolute(-9.124592, fit.LogLikelihood, Tolerances.LogLikelihood, "log L");
        Assert.True(fit.Converged);
    }

    [Theory]
    [InlineData("Rad")]
    [InlineData("RadChem")]
    [InlineData("pooled")]
    public void Fit_Cosmesis_GivesTheReferenceMasses(string arm)
    {
        var (left, right, group) = ReferenceIntervals.Rows(ReferenceIntervals.Cosmesis, "treat");
        var fit = Turnbull.Fit(ReferenceIntervals.Where(left, right, i => arm == "pooled" || group[i] == arm));
        var values = ReferenceIntervals.Cosmesis.GetProperty("values");

        Agree.Absolute(values.GetProperty("npmle_loglik").GetProperty(arm).GetDouble(), fit.LogLikelihood, Tolerances.LogLikelihood, arm);
        var expected = values.GetProperty("npmle").GetProperty(arm).EnumerateArray().ToDictionary(row => row.GetProperty("left").GetDouble(), row => row.GetProperty("p").GetDouble());
        for (var j = 0; j < fit.Mass.Length; j++)
        {
            Agree.Absolute(expected.GetValueOrDefault(fit.Left[j]), fit.Mass[j], Tolerances.Mass, $"{arm} ({fit.Left[j]}, {fit.Right[j]}]");
        }

        Assert.True(fit.Converged, $"{arm}: {fit.LargestExcess}, {fit.LargestImbalance}");
        Assert.Equal(expected.Count, fit.Mass.ToArray().Count(p => p > Tolerances.Mass));
    }

    [Fact]
    public void Fit_CommonVisits_IsTheShareSeen()
    {
        var fit = Turnbull.Fit(EventCounts.SetA);

        Assert.Equal(22.0 / 40.0, fit.CdfAt(9).Lower, Tolerances.Mass);
        var inside = fit.CdfAt(8.5);
        Agree.Absolute(10.0 / 40.0, inside.Lower, Tolerances.Mass, "lower end of the band");
        Agree.Absolute(22.0 / 40.0, inside.Upper, Tolerances.Mass, "upper end of the band");
        Agree.Absolute(-73.985253, fit.LogLikelihood, Tolerances.LogLikelihood, "log L");
    }

    [Fact]
    public void Fit_ExactTimes_IsTheEmpiricalDistribution()
    {
        var fit = Turnbull.Fit([3, 1, 3, 7], [3, 1, 3, 7], []);

        Assert.Equal([1.0, 3.0, 7.0], fit.Right.ToArray());
        Agree.Absolute(0.5, fit.Mass[1], Tolerances.Mass, "two of four at 3");
        Agree.Absolute(0.75, fit.CdfAt(3).Lower, Tolerances.Mass, "F(3)");
        Agree.Absolute(0.25, fit.CdfAt(2.9).Upper, Tolerances.Mass, "F(2.9)");
    }

    [Theory]
    [InlineData("a moment at a right end is inside", new double[] { 0, 2 }, new double[] { 2, 2 }, 1)]
    [InlineData("a moment at a left end is outside", new double[] { 2, 2 }, new double[] { 4, 2 }, 2)]
    [InlineData("a right end at a left end: apart", new double[] { 0, 2 }, new double[] { 2, 4 }, 2)]
    [InlineData("nobody seen", new double[] { 3, 5 }, new double[] { double.PositiveInfinity, double.PositiveInfinity }, 1)]
    public void Fit_Ties_FollowTheRuleOfOpenLeftEnds(string name, double[] left, double[] right, int intervals)
    {
        var fit = Turnbull.Fit(left, right, []);

        Assert.True(fit.Mass.Length == intervals, $"{name}: {fit.Mass.Length} innermost intervals");
    }

    [Fact]
    public void Fit_RandomData_MeetsTheConditionsOfOptimality() =>
        Observations.Sample(
            rows =>
            {
                var fit = Turnbull.Fit([.. rows.Select(r => r.Left)], [.. rows.Select(r => r.Right)], []);
                // The conditions again from their definition, by an inside test on the times themselves.
                double Inside((double Left, double Right) row) => Enumerable.Range(0, fit.Mass.Length).Where(j => Holds(row, fit.Left[j], fit.Right[j])).Sum(j => fit.Mass[j]);
                var inside = rows.Select(Inside).ToArray();
                for (var j = 0; j < fit.Mass.Length; j++)
                {
                    var pull = Enumerable.Range(0, rows.Length).Where(i => Holds(rows[i], fit.Left[j], fit.Right[j])).Sum(i => 1.0 / inside[i]) / rows.Length;
                    Assert.True(pull <= 1.0 + Tolerances.Optimality, $"interval {j} would gain: {pull:R}");
                    Assert.True(fit.Mass[j] * Math.Abs(pull - 1.0) <= Tolerances.Optimality, $"interval {j} has mass {fit.Mass[j]:R} at {pull:R}");
                    Assert.True(fit.Mass[j] >= 0.0);
                }

                Agree.Absolute(1.0, fit.Mass.ToArray().Sum(), Tolerances.ClosedForm, "sum of masses");
                Assert.True(fit.Converged);
            },
            iter: 3000);

    [Fact]
    public void Fit_ManyRandomIntervals_IsCertified()
    {
        const int N = 20_000;
        var random = new Random(11);
        var (left, right) = (new double[N], new double[N]);
        for (var i = 0; i < N; i++)
        {
            var time = 8.0 * Math.Sqrt(-Math.Log(1.0 - random.NextDouble()));
            var first = 10.0 * random.NextDouble();
            var second = first + (6.0 * random.NextDouble());
            (left[i], right[i]) = time <= first ? (0.0, first) : time <= second ? (first, second) : (second, double.PositiveInfinity);
        }

        var fit = Turnbull.Fit(left, right, []);

        Assert.True(fit.LargestExcess <= Tolerances.Optimality, $"excess {fit.LargestExcess}");
        Assert.True(fit.LargestImbalance <= Tolerances.Optimality, $"imbalance {fit.LargestImbalance}");
    }

    [Fact]
    public void Fit_ImpossibleInput_IsRefused()
    {
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([], [], []));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([3], [2], []));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([double.NaN], [2], []));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([1], [double.NaN], []));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([1, 2], [2], []));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([1], [2], [0]));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([1], [2], [1, 1]));
        Assert.ThrowsAny<ArgumentException>(() => Turnbull.Fit([1], [2], [1]).CdfAt(double.NaN));
    }

    private static bool Holds((double Left, double Right) row, double left, double right) =>
        row.Left == row.Right ? left == row.Left && right == row.Left : left >= row.Left && right <= row.Right && !(left == right && left == row.Left);
}
