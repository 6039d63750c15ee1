using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>The emergence of a trial as a reviewer would want it: the curve chosen, each treatment's times, and checks of the comparison.</summary>
/// <param name="Curve">The shape used for all strips, and why.</param>
/// <param name="Treatments">Each treatment with a strip in the analysis, in the trial's order.</param>
/// <param name="Tests">Each comparison of two treatments on time.</param>
public sealed record EmergenceReview(CurveChoice Curve, ImmutableArray<TreatmentEmergence> Treatments, ImmutableArray<TimeTest> Tests)
{
    /// <summary>What a reader should know of it.</summary>
    public IEnumerable<Finding> Findings => [Curve.Finding];

    /// <summary>The procedures used.</summary>
    public IEnumerable<Method> Methods => Tests.IsEmpty ? [] : [TimeTest.ScoreMethod, .. Tests.Any(test => test.Pooled is not null) ? new[] { TimeTest.PooledMethod } : []];

    /// <summary>The review of a trial; null when no strip in the analysis has a flagged spot.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="strips">Its strips' emergence.</param>
    /// <param name="pairs">The treatments compared with each other.</param>
    internal static EmergenceReview? Of(StripTrial trial, ImmutableArray<StripEmergence> strips, IEnumerable<(Treatment Treatment, Treatment Baseline)> pairs)
    {
        StripEmergence[] analysed = [.. strips.Where(strip => strip.Strip.IsAnalysed)];
        return analysed.Length == 0
            ? null
            : new(
                CurveChoice.Of(analysed.Select(strip => strip.Fits), trial.Design.Curve),
                [.. from treatment in trial.Treatments
                    let own = analysed.Where(strip => Identifier.Same(strip.Strip.Treatment.Name, treatment.Name)).ToImmutableArray()
                    where own.Length > 0
                    select TreatmentEmergence.Of(treatment, own, trial.Design.Level)],
                [.. pairs.Select(pair => TimeTest.Of(pair.Treatment, pair.Baseline, analysed)).Where(test => !test.Scores.IsEmpty)]);
    }
}
