using System.Collections.Immutable;
using TrialKit.Numerics;

namespace TrialKit.Comparison;

/// <summary>Tells a spread of differences from rounding.</summary>
internal static class Spread
{
    private const double Rounding = 1e-12;

    /// <summary>Whether pairs differ by unequal amounts, beyond the rounding of the values that were subtracted.</summary>
    public static bool Exists(ImmutableArray<PairDifference> pairs) =>
        pairs.Length > 1
        && Summary.StandardDeviation([.. pairs.Select(pair => pair.Difference)])
            > Rounding * pairs.Max(pair => Math.Max(Math.Abs(pair.TreatedValue), Math.Abs(pair.ControlValue)));
}
