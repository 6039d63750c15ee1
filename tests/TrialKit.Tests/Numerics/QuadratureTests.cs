using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Tests.Numerics;

public class QuadratureTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(-20)]
    public void OverLine_NormalDensity_IsOneWhereverItBegins(double start)
    {
        var result = Quadrature.OverLine(Normal.Density, start, 1, -40, 40, 1e-13);
        Close.Absolute(1, result.Value, Math.Max(result.Error, Tolerances.RoundingNearOne), "the stated error bounds the true one");
        Assert.InRange(result.Error, 0, 1e-13);
    }

    [Fact]
    public void OverLine_SharpEdgeInTheBulk_StatesAnErrorThatHolds()
    {
        // The mean of Phi(c Z) is one half for every c; a large c is a step that needs many points.
        foreach (var c in new[] { 1.0, 5, 25, 100 })
        {
            var result = Quadrature.OverLine(z => Normal.Density(z) * Normal.LowerTail(c * z), 0.3, 0.5, -40, 40, 1e-12);
            Close.Absolute(0.5, result.Value, Math.Max(result.Error, Tolerances.RoundingNearOne), $"c {c}");
        }
    }

    [Fact]
    public void OverLine_NothingThere_IsZero() => Assert.Equal(0, Quadrature.OverLine(_ => 0, 0, 1, -5, 5, 1e-9).Value);

    [Fact]
    public void OverLine_Discontinuous_SaysThatItDidNotSettle() =>
        Assert.Throws<ArithmeticException>(() => Quadrature.OverLine(z => z is > 0.1234 and < 0.77 ? Math.Exp(z) : 0, 0.5, 0.31, -2, 2, 1e-15));

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(300)]
    [InlineData(1e6)]
    public void ChiScaleMean_PowersOfTheScale_AreKnown(double df)
    {
        Close.Relative(1, ChiScale.Mean(_ => 1, df, 1e-13).Value, Tolerances.NoncentralTail, "the density integrates to one");
        Close.Relative(1, ChiScale.Mean(s => s * s, df, 1e-13).Value, Tolerances.NoncentralTail, "the mean square is one");
    }
}
