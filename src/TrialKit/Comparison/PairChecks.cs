using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Screening;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>Looks at the differences of pairs for an odd one out and for a shape far from the bell: what it finds is flagged, never taken out.</summary>
internal static class PairChecks
{
    /// <summary>The findings; with too few pairs, that nothing can be said.</summary>
    public static IEnumerable<Finding> Of(Measure measure, ImmutableArray<PairDifference> pairs)
    {
        if (pairs.Length < 2 || !Spread.Exists(pairs))
        {
            yield break;
        }

        if (pairs.Length < ResidualChecks.Fewest)
        {
            yield return ResidualChecks.TooFew(measure, pairs.Length, "pairs");
            yield break;
        }

        double[] differences = [.. pairs.Select(pair => pair.Difference)];

        // Taken from their mean first: a large common difference says nothing of the shape and would cost digits.
        var mean = Summary.Mean(differences);
        differences = [.. differences.Select(difference => difference - mean)];
        var shape = ShapiroWilk.Test(differences);
        if (shape.P < ResidualChecks.Level)
        {
            yield return ResidualChecks.Shape(measure, shape, "differences");
        }

        var furthest = Grubbs.Test(differences);
        if (furthest.P < ResidualChecks.Level)
        {
            yield return ResidualChecks.Outlier(measure, $"pair {pairs[furthest.Index].Block}", furthest);
        }
    }
}
