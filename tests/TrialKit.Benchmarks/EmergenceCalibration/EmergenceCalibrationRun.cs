using System.Diagnostics;
using System.Globalization;
using TrialKit.Emergence;
using TrialKit.Numerics;
using TrialKit.Results;

namespace TrialKit.Benchmarks.EmergenceCalibration;

/// <summary>Recovery and coverage of the event-time estimates over many simulated trials, as lines of a table.</summary>
internal static class EmergenceCalibrationRun
{
    private const ulong Seed = 20260501;

    /// <summary>Runs and prints the tables in Markdown.</summary>
    /// <param name="trials">Trials per setting.</param>
    /// <param name="output">Where they are printed.</param>
    public static int Print(int trials, TextWriter output)
    {
        output.WriteLine("| visits | pairs | bias of T50, d | bias of T90 - T10, d | difference by pairs of strips | ratio, pooled curve with factor and t | ratio, plain sandwich and z | T50 of a treatment by strips | T50 of a treatment, pooled with sandwich |");
        output.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var (every, pairs) in new[] { (1, 6), (3, 6), (1, 12) })
        {
            output.WriteLine(Setting(trials, every, pairs));
        }

        var (trial, _) = new SimulatedEmergence(Pairs: 150, VisitEvery: 1).Draw(new RandomStream(Seed));
        var clock = Stopwatch.StartNew();
        var strips = EmergenceTiming.Of(trial);
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{strips.Length} strips, three shapes each, choice of one, times and table of indices: {clock.Elapsed.TotalSeconds:0.000} s"));
        return 0;
    }

    private static string Setting(int trials, int every, int pairs)
    {
        var random = new RandomStream(Seed);
        var truth = new SimulatedEmergence(pairs, every);
        var (t50, spread) = (new List<double>(), new List<double>());
        int[] held = new int[5], asked = new int[5];
        for (var i = 0; i < trials; i++)
        {
            var (trial, medians) = truth.Draw(random);
            var analysis = TrialAnalysis.Of(trial);
            foreach (var strip in analysis.Strips.Emergence)
            {
                var median = medians[strip.Strip.Name];
                if (strip.T50 is { } half && strip.Spread is { } wide)
                {
                    t50.Add(half.Days - median);
                    spread.Add(wide.Days - truth.Spread(median));
                }
            }

            Count(0, analysis.Measures.Single(measure => measure.Measure.Id == "t50").Contrasts[0].Interval, -truth.Sooner);
            var ratio = Math.Log((SimulatedEmergence.Median - truth.Sooner) / SimulatedEmergence.Median);
            var pooled = analysis.Emergence!.Tests[0].Pooled?.LogRatio;
            Count(1, pooled?.IntervalAt(default), ratio);
            Count(2, pooled is null ? null : Plain(pooled, pairs), ratio);
            foreach (var treatment in analysis.Emergence.Treatments)
            {
                var half = treatment.Times.Single(time => time.Id == "t50");
                var mean = SimulatedEmergence.Median - (treatment.Treatment.Name == "treated" ? truth.Sooner : 0);
                Count(3, half.ByStrips?.IntervalAt(default), mean);
                Count(4, half.PooledInterval, mean);
            }
        }

        return string.Create(CultureInfo.InvariantCulture, $"| {(every == 1 ? "daily" : $"every {every} days")} | {pairs} | {t50.Average():+0.000;-0.000} | {spread.Average():+0.000;-0.000} | {Cover(0)} | {Cover(1)} | {Cover(2)} | {Cover(3)} | {Cover(4)} |");

        void Count(int which, Interval? interval, double value)
        {
            if (interval is { } range)
            {
                asked[which]++;
                held[which] += range.Holds(value) ? 1 : 0;
            }
        }

        string Cover(int which) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * held[which] / asked[which]:0.0} %");
    }

    // What the sandwich would give without the factor for few strips and with the normal distribution.
    private static Interval Plain(TEstimate estimate, int pairs)
    {
        var error = estimate.StandardError / Math.Sqrt(2.0 * pairs / (pairs - 1));
        var half = Numerics.Distributions.Normal.UpperQuantile(0.05) * error;
        return new(estimate.Value - half, estimate.Value + half, default);
    }
}
