using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Money;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>Puts the comparison of yields and the costs of a trial together.</summary>
internal static class TrialMoney
{
    private const double KilogramsPerTonne = 1000;

    /// <summary>A budget for each treatment compared; none when the trial states neither a price nor a cost.</summary>
    public static ImmutableArray<PairBudget> Of(StripTrial trial, ImmutableArray<MeasureComparison> measures)
    {
        var isStated = trial.GrainPrice is not null || trial.Treatments.Any(treatment => !TreatmentCosts.Of(treatment, trial.Money).IsEmpty);
        if (!isStated)
        {
            return [];
        }

        var yields = measures.FirstOrDefault(measure => measure.Measure.Id == "yield");
        var pairs = measures.SelectMany(measure => measure.Contrasts).Select(contrast => contrast.Pair).Distinct();
        return [.. pairs.Select(pair => PairBudget.Of(pair.Treatment, pair.Baseline, Response(trial, yields, pair), trial.GrainPrice, trial.Money))];
    }

    private static YieldResponse? Response(StripTrial trial, MeasureComparison? yields, ComparedPair pair)
    {
        if (yields?.Contrasts.FirstOrDefault(contrast => contrast.Pair == pair) is not { } contrast)
        {
            return null;
        }

        var scale = yields.Measure.Unit == Unit.BushelsPerAcre ? trial.Crop.Bushel!.Value.Kilograms / Land.HectaresPerAcre : KilogramsPerTonne;
        var varied = contrast.Estimate;
        // Two treatments have one comparison; in blocks of more the interval is that of all of them together.
        var sameEverywhere = varied is null && yields.Pairs is { Pairs.Length: > 1 };
        return new(
            GrainYieldDifference.FromKilogramsPerHectare(contrast.Difference * scale),
            varied is { } estimate ? estimate.StandardError * scale : sameEverywhere ? 0 : null,
            varied?.DegreesOfFreedom ?? 0,
            contrast.Interval?.Low * scale,
            contrast.Interval?.High * scale,
            contrast.Level,
            yields.Contrasts.Length);
    }
}
