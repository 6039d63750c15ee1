using System.Globalization;
using TrialKit.Comparison;
using TrialKit.Emergence;
using TrialKit.Numerics;
using TrialKit.Results;

namespace TrialKit.Benchmarks.EmergenceCalibration;

/// <summary>How often measures of evenness are called different when a treatment only shifts all plants in time, as lines of a table.</summary>
internal static class EvennessCalibrationRun
{
    private const ulong Seed = 20260502;
    private const double Shift = 0.5;

    private static readonly (string Id, Func<StripEvenness, double?> OfLags)[] Measures =
    [
        ("lag-mean", strip => strip.Lags.Average(lag => lag.BehindFirst)),
        ("lag-sd", strip => Summary.StandardDeviation([.. strip.Lags.Select(lag => lag.BehindFirst)])),
        ("late-3d", strip => 100.0 * strip.Lags.Count(lag => lag.BehindFirst > PlantEvenness.LateDays + PlantEvenness.Slack) / strip.Lags.Length),
        ("up-48h", strip => 100.0 * strip.Lags.Count(lag => lag.BehindFirst <= 2 + PlantEvenness.Slack) / strip.Lags.Length),
    ];

    private static readonly (string Visits, double Every, double From, double Steepness, double DailyUntil)[] Settings =
    [
        ("daily", 1, 4, 14, 0),
        ("daily", 1, 4.5, 14, 0),
        ("daily", 1, 4, 40, 0),
        ("daily", 1, 4.5, 40, 0),
        ("daily to day 12, then every 3 days", 3, 4, 14, 12),
        ("daily to day 11, then every 3 days", 3, 4, 14, 11),
        ("twice a day", 0.5, 4, 40, 0),
        ("every 2 days", 2, 4, 14, 0),
        ("every 3 days", 3, 4, 14, 0),
        ("every 3 days", 3, 5, 14, 0),
    ];

    /// <summary>Runs and prints the table in Markdown.</summary>
    /// <param name="trials">Trials per setting.</param>
    /// <param name="output">Where it is printed.</param>
    public static int Print(int trials, TextWriter output)
    {
        output.WriteLine("| visits | first on day | T90 - T10, d | lag, mean | lag, SD | over 3 days behind | up within 48 h | T90 - T10 | measures of lag given |");
        output.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var (visits, every, from, steepness, dailyUntil) in Settings)
        {
            output.WriteLine($"| {visits} {Setting(trials, new SimulatedEmergence(Pairs: 4, every) { FirstVisit = from, DailyUntil = dailyUntil, Steepness = steepness, Sooner = Shift, StripSpread = 0.15, Shifts = true })}");
        }

        return 0;
    }

    private static string Setting(int trials, SimulatedEmergence truth)
    {
        var random = new RandomStream(Seed);
        var called = new int[Measures.Length + 1];
        int tested = 0, given = 0;
        for (var i = 0; i < trials; i++)
        {
            var (trial, _) = truth.Draw(random);
            var analysis = TrialAnalysis.Of(trial);
            for (var j = 0; j < Measures.Length; j++)
            {
                var (id, ofLags) = Measures[j];
                var strips = analysis.Strips.Evenness.ToDictionary(strip => strip.Strip.Name, ofLags, StringComparer.Ordinal);
                var values = new StripMeasure(new(id, id, Unit.Days, MeasureKind.Other, Better.Unsaid, IsHeadline: false), [.. trial.Strips.Select(strip => new StripValue(strip, strips[strip.Name]))]);
                called[j] += Different(StripComparison.Compare(values, trial)) ? 1 : 0;
            }

            if (analysis.Measures.FirstOrDefault(measure => measure.Measure.Id == "spread") is { } spread)
            {
                tested++;
                called[^1] += Different(spread) ? 1 : 0;
            }

            given += analysis.Measures.Any(measure => measure.Measure.Id == "lag-mean" && measure.Contrasts.Any(contrast => contrast.P is not null)) ? 1 : 0;
        }

        var rates = called.Select((count, j) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / (j < Measures.Length ? trials : Math.Max(1, tested)):0.0} %"));
        return string.Create(CultureInfo.InvariantCulture, $"| {truth.FirstVisit} | {truth.Spread(SimulatedEmergence.Median):0.0} | {string.Join(" | ", rates)} | {100.0 * given / trials:0} % |");
    }

    private static bool Different(MeasureComparison measure) => measure.Contrasts.Any(contrast => contrast.Verdict == Verdict.Shown);
}
