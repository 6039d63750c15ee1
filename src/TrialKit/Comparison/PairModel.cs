using System.Collections.Immutable;
using TrialKit.Numerics.Mixed;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>All strips of a trial in pairs in one mixed model, for trials in which a strip was lost.</summary>
/// <remarks>y = treatment + pair + e, treatment fixed, pair random; REML, Satterthwaite degrees of freedom. With every pair whole it is the paired t.</remarks>
internal static class PairModel
{
    private const int FewestPairs = 2;

    /// <summary>The difference; null when no strip lost its partner, with fewer than two whole pairs, and where the fit has no error.</summary>
    /// <param name="values">The measure on each strip.</param>
    /// <param name="pairs">The whole pairs.</param>
    /// <param name="treatment">The treatment that the control is taken from.</param>
    public static AllStripsEstimate? Of(StripMeasure values, ImmutableArray<PairDifference> pairs, Treatment treatment)
    {
        var strips = values.Analysed.ToArray();
        if (strips.Length == 2 * pairs.Length || pairs.Length < FewestPairs)
        {
            return null;
        }

        var design = new double[strips.Length, 2];
        var pair = new int[strips.Length];
        var names = new Dictionary<string, int>(Identifier.Comparer);
        for (var i = 0; i < strips.Length; i++)
        {
            var strip = strips[i].Entry.Strip;
            design[i, 0] = 1;
            design[i, 1] = Identifier.Same(strip.Treatment.Name, treatment.Name) ? 1 : 0;
            pair[i] = names.TryGetValue(strip.Block.Trim(), out var known) ? known : names[strip.Block.Trim()] = names.Count;
        }

        var fit = MixedFit.Of([.. strips.Select(strip => strip.Value)], design, [pair]);
        return fit.Status == MixedStatus.Converged && fit.Contrast([0, 1]) is { StandardError: { } error, DegreesOfFreedom: { } degrees } contrast
            ? new(
                new TEstimate(contrast.Estimate, error, degrees, pairs.Length, values.Measure.Unit, Methods.MixedPairs),
                strips.Length,
                fit.VarianceComponents[0],
                fit.ResidualVariance)
            : null;
    }
}
