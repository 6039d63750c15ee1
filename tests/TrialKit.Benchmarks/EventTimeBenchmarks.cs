using BenchmarkDotNet.Attributes;
using TrialKit.Numerics;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Benchmarks;

/// <summary>Event-time fits of 300 strips with nine daily visits, and the non-parametric estimate of 100,000 random intervals.</summary>
[MemoryDiagnoser]
public class EventTimeBenchmarks
{
    private const int Strips = 300;
    private const int Seeds = 136;
    private const int Intervals = 100_000;
    private static readonly double[] Visits = [8, 9, 10, 11, 12, 13, 14, 16, 18];

    private readonly IntervalCounts[] strips = new IntervalCounts[Strips];
    private readonly double[] left = new double[Intervals];
    private readonly double[] right = new double[Intervals];
    private readonly double[] weight = new double[Intervals];

    [GlobalSetup]
    public void Draw()
    {
        var stream = new RandomStream(1);
        for (var strip = 0; strip < Strips; strip++)
        {
            var newlyUp = new double[Visits.Length];
            double notUp = 0;
            for (var seed = 0; seed < Seeds; seed++)
            {
                var u = stream.NextDouble();
                var time = stream.NextDouble() < 0.93 ? 11.4 * Math.Pow(u / (1 - u), 1.0 / 14) : double.PositiveInfinity;
                var visit = Array.FindIndex(Visits, day => time <= day);
                if (visit < 0)
                {
                    notUp++;
                }
                else
                {
                    newlyUp[visit]++;
                }
            }

            strips[strip] = IntervalCounts.FromVisits(Visits, newlyUp, notUp);
        }

        for (var i = 0; i < Intervals; i++)
        {
            var time = -Math.Log(1 - stream.NextDouble());
            left[i] = Math.Max(0, time - stream.NextDouble());
            right[i] = time + stream.NextDouble();
            weight[i] = 1;
        }
    }

    [Benchmark]
    public double FitsOf300Strips()
    {
        var sum = 0.0;
        foreach (var strip in strips)
        {
            sum += EventTimeFit.Fit(strip, EventTimeShape.LogLogistic).LogLikelihood;
        }

        return sum;
    }

    [Benchmark]
    public int TurnbullOf100000Intervals() => Turnbull.Fit(left, right, weight).Mass.Length;
}
