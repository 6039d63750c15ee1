using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Season;

/// <summary>The words that season tables use for what has a fixed set of values.</summary>
internal static class SeasonNames
{
    public static IReadOnlyDictionary<string, UnitSystem> Units { get; } = new Dictionary<string, UnitSystem>(StringComparer.Ordinal) { ["us"] = UnitSystem.Us, ["metric"] = UnitSystem.Metric };

    public static IReadOnlyDictionary<string, Layout> Layouts { get; } = new Dictionary<string, Layout>(StringComparer.Ordinal) { ["pairs"] = Layout.Pairs, ["blocks"] = Layout.Blocks };

    public static IReadOnlyDictionary<string, MeasureKind> Kinds { get; } = new Dictionary<string, MeasureKind>(StringComparer.Ordinal)
    {
        ["stand"] = MeasureKind.Stand,
        ["share"] = MeasureKind.Share,
        ["time"] = MeasureKind.Time,
        ["heat"] = MeasureKind.Heat,
        ["length"] = MeasureKind.Length,
        ["yield"] = MeasureKind.Yield,
        ["other"] = MeasureKind.Other,
    };

    public static IReadOnlyDictionary<string, Better> Betters { get; } = new Dictionary<string, Better>(StringComparer.Ordinal) { ["higher"] = Better.Higher, ["lower"] = Better.Lower, ["unsaid"] = Better.Unsaid };

    /// <summary>The word of a value.</summary>
    public static string Of<T>(IReadOnlyDictionary<string, T> names, T value)
        where T : struct, Enum => names.First(name => name.Value.Equals(value)).Key;
}
