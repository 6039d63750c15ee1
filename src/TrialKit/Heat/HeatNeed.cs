using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The heat from planting to emergence: a range with its method, its source and what the field's conditions added to it.</summary>
/// <param name="Range">The range, conditions included.</param>
/// <param name="Method">How heat is counted towards it.</param>
/// <param name="Source">Where the range before adjustment comes from.</param>
/// <param name="Adjustments">What was added, one by one; empty when nothing was.</param>
public sealed record HeatNeed(HeatRange Range, HeatMethod Method, string Source, ImmutableArray<NeedAdjustment> Adjustments)
{
    /// <summary>Whether the range was given by the user in place of a published one.</summary>
    public bool IsGiven { get; init; }

    /// <summary>Conditions of the field for which the range was not adjusted, because it was given or no adjustment is printed with it.</summary>
    public ImmutableArray<string> Unused { get; init; } = [];

    /// <summary>The range and every adjustment as one line, in F-days.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Range.Low.FahrenheitDays:0.#} to {Range.High.FahrenheitDays:0.#} F-days by {Method.Name}");
}
