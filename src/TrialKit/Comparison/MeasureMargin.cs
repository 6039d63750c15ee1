using System.Globalization;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Finds the margin of a measure and says where one cannot be used.</summary>
internal static class MeasureMargin
{
    /// <summary>The margin in the measure's unit; null without one.</summary>
    public static double? Of(Measure measure, StripTrial trial) => Named(measure, trial) is { } margin ? MarginUnits.Convert(margin, measure.Unit, trial.Crop.Bushel) : null;

    /// <summary>A finding about a margin whose unit cannot be brought into that of its measure.</summary>
    public static IEnumerable<Finding> Findings(Measure measure, StripTrial trial)
    {
        if (Named(measure, trial) is { } margin && MarginUnits.Convert(margin, measure.Unit, trial.Crop.Bushel) is null)
        {
            yield return new("margin-other-unit", FindingWeight.Serious, string.Create(CultureInfo.InvariantCulture, $"{measure.Label}: the margin of {margin.Amount} {(margin.Unit.Length == 0 ? "without a unit" : margin.Unit)} cannot be told in {(measure.Unit.Symbol.Length == 0 ? "a plain number" : measure.Unit.Symbol)}; equivalence was not tested."), measure.Id);
        }
    }

    private static EquivalenceMargin? Named(Measure measure, StripTrial trial) =>
        trial.Design.Margins.FirstOrDefault(margin => string.Equals(margin.Measure, measure.Id, StringComparison.Ordinal));
}
