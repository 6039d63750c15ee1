using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>One measure at one site, as far as putting sites together needs it.</summary>
/// <param name="Measure">What was measured.</param>
/// <param name="Contrasts">The treatments compared, each once.</param>
/// <param name="Strips">The strips that took part in the comparison.</param>
public sealed record SiteMeasure(Measure Measure, ImmutableArray<SiteContrast> Contrasts, ImmutableArray<SiteStrip> Strips)
{
    /// <summary>The part of a comparison that pooling needs.</summary>
    internal static SiteMeasure Of(MeasureComparison comparison) => new(
        comparison.Measure,
        [.. comparison.Contrasts.Select(contrast => new SiteContrast(contrast.Pair, contrast.Estimate))],
        [.. comparison.Values.Analysed.Select(entry => new SiteStrip(entry.Entry.Strip.Block, entry.Entry.Strip.Treatment.Name, entry.Value))]);

    /// <summary>The difference of a pair, whichever of the two the site compares with the other; null when it has none with an error.</summary>
    internal TEstimate? EstimateOf(ComparedPair pair)
    {
        foreach (var contrast in Contrasts)
        {
            if (pair.IsOf(contrast.Pair.Treatment, contrast.Pair.Baseline))
            {
                return contrast.Estimate;
            }

            if (pair.IsOf(contrast.Pair.Baseline, contrast.Pair.Treatment))
            {
                return contrast.Estimate is { } turned ? turned with { Value = -turned.Value } : null;
            }
        }

        return null;
    }
}
