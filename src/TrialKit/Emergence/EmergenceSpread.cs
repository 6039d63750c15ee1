using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>The time from T10 to T90: how long the middle 80 % of the plants that come up take.</summary>
/// <param name="Days">Days.</param>
/// <param name="StandardError">In days, by the delta method; null when the counts do not tell it.</param>
/// <param name="Heat">Heat gathered between, by the trial's method; null where temperatures are not on record.</param>
/// <param name="AverageHeat">Heat gathered between, by the simple average above 50 F.</param>
public sealed record EmergenceSpread(double Days, double? StandardError, HeatSumDifference? Heat, HeatSumDifference? AverageHeat)
{
    /// <summary>The interval of a level, even on the log scale; null without a standard error. It is of this strip: its seeds are taken as independent.</summary>
    /// <param name="level">The level.</param>
    public Interval? IntervalAt(ConfidenceLevel level) => LogInterval.Of(Days, StandardError, level);
}
