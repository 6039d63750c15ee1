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
    /// <summary>The range and every adjustment as one line, in F-days.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Range.Low.FahrenheitDays:0.#} to {Range.High.FahrenheitDays:0.#} F-days by {Method.Name}");
}
