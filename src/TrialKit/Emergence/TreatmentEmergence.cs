using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.EventTimes;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>The emergence of one treatment: its times with intervals, and where its plain curve is not defined.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Strips">Analysed strips with flagged spots.</param>
/// <param name="Times">T10, T50 and T90 of the plants that come up and of the seeds sown, and the spread.</param>
/// <param name="Undefined">Stretches between visits in which the non-parametric curve of all its strips may run anywhere.</param>
public sealed record TreatmentEmergence(Treatment Treatment, int Strips, ImmutableArray<TreatmentTime> Times, ImmutableArray<UndefinedShare> Undefined)
{
    private static readonly Method StripMean = new("Mean of the strips' times, t interval", "Student 1908, Biometrika 6:1-25", "docs/methods/emergence-timing.md");

    /// <summary>One treatment's emergence.</summary>
    internal static TreatmentEmergence Of(Treatment treatment, ImmutableArray<StripEmergence> strips, ConfidenceLevel level)
    {
        var (counts, sown) = SharedCounts.Of(strips);
        var shape = strips[0].Fit.Shape;
        var pooled = IntervalCounts.Merge(counts);
        var fit = sown ? EventTimeFit.Fit(pooled, shape) : EventTimeFit.FitOfEmerged(pooled, shape);
        var judged = strips.Length > 1 && pooled.Total > 0 ? fit.ClusterSandwich(counts) : null;
        return new(
            treatment,
            strips.Length,
            [
                Time("t10", "T10 of plants up", strip => strip.T10?.Days, from => from.QuantileOfEmerged(0.1)),
                Time("t50", "T50 of plants up", strip => strip.T50?.Days, from => from.QuantileOfEmerged(0.5)),
                Time("t90", "T90 of plants up", strip => strip.T90?.Days, from => from.QuantileOfEmerged(0.9)),
                Time("spread", "T90 - T10 of plants up", strip => strip.Spread?.Days, Spread),
                Time("t10-sown", "T10 of seeds sown", strip => strip.T10OfSown?.Days, from => sown ? from.QuantileOfSown(0.1) : null),
                Time("t50-sown", "T50 of seeds sown", strip => strip.T50OfSown?.Days, from => sown ? from.QuantileOfSown(0.5) : null),
                Time("t90-sown", "T90 of seeds sown", strip => strip.T90OfSown?.Days, from => sown ? from.QuantileOfSown(0.9) : null),
            ],
            UndefinedShare.Of(pooled));

        static EventQuantile? Spread(EventTimeFit from) => from.Spread(0.1, 0.9) is { } spread ? new(spread.Time, spread.StandardError / spread.Time) : null;

        TreatmentTime Time(string id, string label, Func<StripEmergence, double?> ofStrip, Func<EventTimeFit, EventQuantile?> ofFit)
        {
            // A strip that never reaches a share of its seeds is later than any: the mean of the others would flatter the treatment.
            var reached = strips.Select(ofStrip).OfType<double>().ToArray();
            double[] values = id.EndsWith("-sown", StringComparison.Ordinal) && reached.Length < strips.Length ? [] : reached;
            var error = values.Length > 1 ? Summary.StandardDeviation(values) / Math.Sqrt(values.Length) : 0;
            EventQuantile? single = fit.Converged ? ofFit(fit) : null;
            var clustered = judged is { Converged: true } ? ofFit(judged) : null;
            return new(
                id,
                label,
                reached.Length,
                values.Length > 0 ? Summary.Mean(values) : null,
                error > 0 ? new TEstimate(Summary.Mean(values), error, values.Length - 1, values.Length, Unit.Days, StripMean) : null,
                single?.Time,
                clustered is { } time ? LogInterval.Of(time.Time, time.StandardError, level) : null);
        }
    }
}
