using System.Diagnostics;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Benchmarks;

/// <summary>Writes random intervals for another program (turnbull.R) and times the non-parametric estimate of the same data, in this run.</summary>
internal static class TurnbullBesideScript
{
    private const int Observations = 100_000;
    private const int Days = 60;

    /// <summary>Writes <c>tied.csv</c> (ends on 61 days) and <c>untied.csv</c> (ends anywhere), and prints the seconds of each fit and its certificate.</summary>
    public static int Run(string folder, TextWriter output)
    {
        Directory.CreateDirectory(folder);
        foreach (var tied in new[] { true, false })
        {
            var (left, right) = Draw(tied);
            File.WriteAllLines(Path.Combine(folder, tied ? "tied.csv" : "untied.csv"), left.Zip(right, (from, to) => string.Create(CultureInfo.InvariantCulture, $"{from:R},{(double.IsInfinity(to) ? "Inf" : to.ToString("R", CultureInfo.InvariantCulture))}")).Prepend("left,right"));
            Turnbull.Fit(left, right, []);
            var clock = Stopwatch.StartNew();
            var fit = Turnbull.Fit(left, right, []);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(tied ? "tied" : "untied")}: {clock.Elapsed.TotalSeconds:0.000} s, log-likelihood {fit.LogLikelihood:0.000000}, excess {fit.LargestExcess:0.0e+0}, certified {fit.Converged}"));
        }

        return 0;
    }

    private static (double[] Left, double[] Right) Draw(bool tied)
    {
        var random = new RandomStream(7);
        var (left, right) = (new double[Observations], new double[Observations]);
        for (var i = 0; i < Observations; i++)
        {
            var time = Days * Math.Pow(random.NextDouble(), 0.7);
            var (before, after) = (time - (6 * random.NextDouble()), time + (6 * random.NextDouble()));
            (before, after) = tied ? (Math.Floor(before), Math.Ceiling(after)) : (before, after);
            left[i] = Math.Max(0, before);
            right[i] = random.NextDouble() < 0.1 ? double.PositiveInfinity : after;
        }

        return (left, right);
    }
}
