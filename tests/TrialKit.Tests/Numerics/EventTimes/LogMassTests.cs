using CsCheck;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class LogMassTests
{
    private static readonly Gen<(EventTimeShape Shape, double U, double V, double Left, double Ratio)> Point = Gen.Select(
        Gen.Enum<EventTimeShape>(), Gen.Double[-1.5, 3.0], Gen.Double[0.5, 3.5], Gen.Double[0.5, 40.0], Gen.Double[-7.0, 2.0],
        (shape, u, v, left, ratio) => (shape, u, v, left, Math.Exp(ratio)));

    [Fact]
    public void Of_AnyInterval_HasTheDerivativesOfItsDifferences() =>
        Point.Sample(p => CheckDerivatives(p.Shape, p.U, p.V, Math.Log(p.Left), p.Ratio), iter: 3000);

    [Fact]
    public void Of_OpenEnds_HasTheDerivativesOfItsDifferences() =>
        Point.Sample(
            p =>
            {
                CheckDerivatives(p.Shape, p.U, p.V, double.NegativeInfinity, p.Ratio);
                CheckDerivatives(p.Shape, p.U, p.V, Math.Log(p.Left), double.PositiveInfinity);
            },
            iter: 1000);

    [Theory]
    [InlineData(nameof(EventTimeShape.LogLogistic))]
    [InlineData(nameof(EventTimeShape.LogNormal))]
    [InlineData(nameof(EventTimeShape.Weibull))]
    public void Of_IntervalShrinking_TendsToTheDensity(string name)
    {
        var shape = Enum.Parse<EventTimeShape>(name);
        foreach (var z in new[] { -8.0, -1.0, 0.0, 0.4, 1.1 })
        {
            const double Width = 1e-9;
            var mass = LogMass.Of(shape, 1.0, z - (0.5 * Width), z + (0.5 * Width), Width);
            Agree.Relative(Math.Log(ShapeFunctions.Density(shape, z)) + Math.Log(Width), mass.Value, Tolerances.ClosedForm, $"{name} at {z}");
        }
    }

    [Fact]
    public void Of_NormalFarTail_KeepsItsDigits()
    {
        // log(Phi(-40) - Phi(-41)) by 50-digit arithmetic (mpmath 1.x).
        Agree.Relative(-804.6084420137538, LogMass.Of(EventTimeShape.LogNormal, 1.0, 40.0, 41.0, 1.0).Value, Tolerances.ClosedForm, "right tail");
        Agree.Relative(-804.6084420137538, LogMass.Of(EventTimeShape.LogNormal, 1.0, -41.0, -40.0, 1.0).Value, Tolerances.ClosedForm, "left tail");
    }

    private static void CheckDerivatives(EventTimeShape shape, double u, double v, double logLeft, double ratio)
    {
        LogMass At(double uu, double vv)
        {
            var s = Math.Exp(uu);
            var logRight = double.IsNegativeInfinity(logLeft) ? Math.Log(ratio * 20.0) : logLeft + ratio;
            return LogMass.Of(shape, s, s * (logLeft - vv), s * (logRight - vv), double.IsInfinity(logLeft) ? double.PositiveInfinity : s * ratio);
        }

        const double H = 1e-5;
        var here = At(u, v);
        var (up, down, right, left) = (At(u + H, v), At(u - H, v), At(u, v + H), At(u, v - H));
        if (!(here.Value > -1e4))
        {
            return;
        }

        void Same(double analytic, double high, double low, string what)
        {
            var size = 1.0 + Math.Abs(here.Value) + Math.Abs(here.U) + Math.Abs(here.V) + Math.Abs(here.UU) + Math.Abs(here.VV);
            Agree.Absolute((high - low) / (2.0 * H), analytic, Tolerances.DerivativeOfLogMass * size, $"{shape} u={u:R} v={v:R} ln L={logLeft:R} ratio={ratio:R} {what}");
        }

        Same(here.U, up.Value, down.Value, "U");
        Same(here.V, right.Value, left.Value, "V");
        Same(here.UU, up.U, down.U, "UU");
        Same(here.UV, up.V, down.V, "UV");
        Same(here.UV, right.U, left.U, "VU");
        Same(here.VV, right.V, left.V, "VV");
    }
}
