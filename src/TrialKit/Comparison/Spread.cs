using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Linear;

namespace TrialKit.Comparison;

/// <summary>Tells a spread of differences from rounding.</summary>
internal static class Spread
{
    /// <summary>Whether pairs differ by unequal amounts, beyond the rounding of the values that were subtracted.</summary>
    public static bool Exists(ImmutableArray<PairDifference> pairs)
    {
        if (pairs.Length < 2)
        {
            return false;
        }

        double[] differences = [.. pairs.Select(pair => pair.Difference)];
        var mean = Summary.Mean(differences);
        return !StableSums.IsRounding(
            2 * differences.Sum(difference => (difference - mean) * (difference - mean)),
            [.. pairs.SelectMany(pair => new[] { pair.TreatedValue, pair.ControlValue })]);
    }
}
