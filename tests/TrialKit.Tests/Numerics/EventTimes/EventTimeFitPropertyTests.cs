using CsCheck;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class EventTimeFitPropertyTests
{
    private static readonly Gen<IntervalCounts> Strip = Gen.Select(
        Gen.Double[0.02, 6.0].Array[1, 12],
        Gen.Frequency((3, Gen.Int[0, 3]), (2, Gen.Int[0, 40]), (3, Gen.Const(0))).Array[12],
        Gen.Frequency((1, Gen.Const(0)), (2, Gen.Int[0, 60])),
        (gaps, counts, notUp) =>
        {
            var visits = new double[gaps.Length];
            var time = 0.0;
            for (var i = 0; i < gaps.Length; i++)
            {
                visits[i] = time += gaps[i];
            }

            return IntervalCounts.FromVisits(visits, [.. counts.Take(gaps.Length).Select(n => (double)n)], notUp);
        });

    private static readonly Gen<IntervalCounts> Scattered = Gen.Select(
        Gen.Select(Gen.Int[0, 8], Gen.Int[1, 6], Gen.Bool, (left, width, open) => (Left: (double)left, Right: open ? double.PositiveInfinity : left + width)).Array[0, 12],
        rows => IntervalCounts.FromIntervals([.. rows.Select(r => r.Left)], [.. rows.Select(r => r.Right)], []));

    [Fact]
    public void Fit_AnyVisits_NeverThrowsOrGivesNaN() =>
        Strip.Sample(CheckEveryShape, iter: 3000);

    [Fact]
    public void Fit_AnyIntervals_NeverThrowsOrGivesNaN() =>
        Scattered.Sample(CheckEveryShape, iter: 2000);

    [Fact]
    public void Fit_AnyVisits_ConvergesUnlessItSaysSoAndNeverBeatsTheSaturatedModel() =>
        Strip.Sample(
            counts =>
            {
                foreach (var shape in Enum.GetValues<EventTimeShape>())
                {
                    var fit = EventTimeFit.Fit(counts, shape);
                    Assert.True(fit.Converged, $"{shape} {Describe(counts)}: gradient {fit.GradientNorm} after {fit.Iterations}");
                    Assert.True(fit.LogLikelihood <= fit.SaturatedLogLikelihood + (Tolerances.Maximised * (1.0 + Math.Abs(fit.LogLikelihood))), $"{shape} {Describe(counts)}: {fit.LogLikelihood} above {fit.SaturatedLogLikelihood}");
                }
            },
            iter: 3000);

    [Fact]
    public void Fit_CountsMultiplied_KeepsTheCurveAndShrinksTheErrors() =>
        Strip.Sample(
            counts =>
            {
                var fit = EventTimeFit.Fit(counts, EventTimeShape.LogLogistic);
                var four = EventTimeFit.Fit(IntervalCounts.FromIntervals(counts.Left, counts.Right, [.. counts.Count.ToArray().Select(n => 4.0 * n)]), EventTimeShape.LogLogistic);
                if (fit.StandardErrorOfE is { } error && fit.StandardErrorOfB < 0.5 * fit.B && four.StandardErrorOfE is { } smaller)
                {
                    Agree.Relative(error, 2.0 * smaller, Tolerances.RefittedError, Describe(counts));
                }
            },
            iter: 1000);

    private static void CheckEveryShape(IntervalCounts counts)
    {
        foreach (var shape in Enum.GetValues<EventTimeShape>())
        {
            Check(EventTimeFit.Fit(counts, shape), counts);
            Check(EventTimeFit.FitOfEmerged(counts, shape), counts);
        }
    }

    private static void Check(EventTimeFit fit, IntervalCounts counts)
    {
        double?[] numbers =
        [
            fit.LogLikelihood, fit.SaturatedLogLikelihood, fit.D, fit.B, fit.E, fit.StandardErrorOfD, fit.StandardErrorOfB, fit.StandardErrorOfE,
            fit.QuantileOfEmerged(0.5)?.Time, fit.QuantileOfEmerged(0.5)?.StandardError, fit.QuantileOfSown(0.3)?.Time, fit.QuantileOfSown(0.3)?.StandardError,
            fit.Spread(0.1, 0.9)?.StandardError, fit.GradientNorm,
        ];
        for (var i = 0; i < numbers.Length; i++)
        {
            Assert.True(numbers[i] is null || double.IsFinite(numbers[i]!.Value), $"{fit.Shape} {Describe(counts)}: number {i} is {numbers[i]}");
        }

        Assert.Equal(fit.Flags.HasFlag(EventTimeFlags.NotConverged), !fit.Converged);
    }

    private static string Describe(IntervalCounts counts) =>
        string.Join(' ', Enumerable.Range(0, counts.Length).Select(i => $"{counts.Count[i]}x({counts.Left[i]:R},{counts.Right[i]:R}]"));
}
