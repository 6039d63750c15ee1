using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>The time from planting by which a share of the plants that come up, or of the seeds sown, is up.</summary>
/// <param name="Days">Days from the midnight that begins the planting day.</param>
/// <param name="StandardError">In days, by the delta method; null when the counts do not tell it.</param>
/// <param name="Heat">Heat gathered by then, by the trial's method; null where temperatures are not on record.</param>
/// <param name="AverageHeat">Heat gathered by then, by the simple average above 50 F.</param>
public sealed record EmergenceTime(double Days, double? StandardError, HeatSum? Heat, HeatSum? AverageHeat)
{
    /// <summary>The interval of a level, even on the log scale; null without a standard error. It is of this strip: its seeds are taken as independent.</summary>
    /// <param name="level">The level.</param>
    public Interval? IntervalAt(ConfidenceLevel level) => LogInterval.Of(Days, StandardError, level);
}
