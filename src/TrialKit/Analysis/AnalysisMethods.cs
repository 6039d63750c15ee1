using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Emergence;
using TrialKit.Heat;
using TrialKit.Money;
using TrialKit.Results;
using TrialKit.Stand;
using TrialKit.Starter;
using TrialKit.Starter.Flow;

namespace TrialKit.Analysis;

/// <summary>The procedures that an analysis used, each once, in the order of the work.</summary>
internal static class AnalysisMethods
{
    public static ImmutableArray<Method> Of(StripSummaries strips, TrialHeat? heat, TrialForecast? forecast, ImmutableArray<MeasureComparison> measures, ImmutableArray<SpotVariation> spots, ImmutableArray<CountComparison> counts)
    {
        var methods = new List<Method>();
        Add(!strips.Stands.IsEmpty, StandCounts.Method);
        Add(!strips.Emergence.IsEmpty, EmergenceTiming.Method);
        if (heat is not null)
        {
            methods.Add(new($"Heat by {heat.Clock.HeatMethod.Name}", heat.Clock.HeatMethod.Source, HeatClock.Method.Page));
        }

        Add(forecast is not null, EmergenceForecast.Method);
        Add(!strips.Spacings.IsEmpty, InRowSpacing.Method);
        Add(!strips.Evenness.IsEmpty, PlantEvenness.Method);
        Add(!strips.Stages.IsEmpty, LeafStage.Method);
        Add(!strips.Depths.IsEmpty, SeedDepth.Method);
        Add(!strips.Yields.IsEmpty, StripYields.Method);
        methods.AddRange(measures.SelectMany(Comparisons));
        Add(!spots.IsEmpty, SpotVariation.Method);
        methods.AddRange(counts.Select(comparison => comparison.Method));
        return [.. methods.Distinct()];

        void Add(bool used, Method method)
        {
            if (used)
            {
                methods.Add(method);
            }
        }
    }

    /// <summary>Those of what is put near the seed and of money.</summary>
    public static IEnumerable<Method> Of(StarterReview? starter, ImmutableArray<StreamFlow> flows, ImmutableArray<PairBudget> budgets) =>
    [
        .. starter is null ? [] : StarterReview.Methods,
        .. flows.Take(1).Select(_ => StreamFlow.Method),
        .. budgets.Take(1).Select(_ => PairBudget.Method),
    ];

    private static IEnumerable<Method> Comparisons(MeasureComparison measure)
    {
        if (measure.Blocks is { } blocks)
        {
            yield return blocks.Anova.Method;
        }

        foreach (var contrast in measure.Contrasts)
        {
            yield return contrast.JudgedBy;
            if (contrast.Equivalence is { } equivalence)
            {
                yield return equivalence.Method;
            }
        }

        Method?[] beside =
        [
            measure.Pairs?.SignFlips?.Method,
            measure.Pairs?.SignedRank?.Method,
            measure.Pairs?.SignedRankPratt?.Method,
            measure.Pairs?.Signs?.Test?.Method,
            measure.Pairs?.Median?.Method,
            measure.Pairs?.AllStrips?.Estimate.Method,
            measure.Blocks?.Randomization?.Method,
            measure.Blocks?.Friedman?.Method,
            measure.Blocks?.NonAdditivity?.Method,
        ];
        foreach (var method in beside.OfType<Method>())
        {
            yield return method;
        }
    }
}
