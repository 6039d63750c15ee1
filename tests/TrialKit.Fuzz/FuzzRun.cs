using System.Diagnostics;
using System.Globalization;
using TrialKit.Fuzz.Corpus;

namespace TrialKit.Fuzz;

/// <summary>Runs cases.</summary>
internal static class FuzzRun
{
    /// <summary>A case that takes this long is a hang that would never be counted: the run is ended with its number.</summary>
    private static readonly TimeSpan Endless = TimeSpan.FromSeconds(60);

    private const int Retries = 4;

    /// <summary>Runs every case of the settings.</summary>
    /// <param name="settings">What is run.</param>
    /// <param name="progress">Told the number of cases done, now and then; null when nobody asks.</param>
    public static FuzzTally Run(FuzzSettings settings, Action<long>? progress = null)
    {
        var subjects = Subjects.Of(settings.Repository, settings.Subject);
        var tally = new FuzzTally();
        var next = settings.First - 1;
        Thread[] workers = [.. Enumerable.Range(0, settings.Workers).Select(_ => new Thread(Work))];
        Array.ForEach(workers, worker => worker.Start());
        Array.ForEach(workers, worker => worker.Join());
        return tally;

        void Work()
        {
            using var folder = new FuzzFolder();
            for (var number = Interlocked.Increment(ref next); number < settings.First + settings.Cases; number = Interlocked.Increment(ref next))
            {
                var tried = FuzzCase.Of(subjects, settings.Seed, number);
                var (outcome, took) = Timed(folder, tried, settings);
                for (var again = 0; again < Retries && took > settings.Longest; again++)
                {
                    // A machine that was busy elsewhere is no hang: what is slow is slow again.
                    (outcome, took) = Timed(folder, tried, settings);
                }

                outcome = took > settings.Longest ? outcome with { Broken = string.Create(CultureInfo.InvariantCulture, $"took {took.TotalSeconds:0.0} s") } : outcome;

                tally.Add(tried, outcome, took);
                if (number % 1000 == 0)
                {
                    progress?.Invoke(number);
                }
            }
        }
    }

    private static (Outcome Outcome, TimeSpan Took) Timed(FuzzFolder folder, FuzzCase tried, FuzzSettings settings)
    {
        using var alarm = new Timer(_ => Environment.FailFast(string.Create(CultureInfo.InvariantCulture, $"Case {tried.Number} of seed {settings.Seed} does not end.")), state: null, Endless, Timeout.InfiniteTimeSpan);
        var watch = Stopwatch.StartNew();
        var outcome = folder.With(tried, path => Promises.Check(path, tried, tried.Number % settings.ReportEvery == 0));
        return (outcome, watch.Elapsed);
    }
}
