using System.Runtime.InteropServices;
using TrialKit.Heat;

namespace TrialKit.Reporting.Figures;

/// <summary>The heat of one day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Heat">Its heat units, 0 or more, or null where the weather was not recorded.</param>
/// <param name="Kind">What its temperatures rest on.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HeatDay(DateOnly Date, double? Heat, DayKind Kind = DayKind.Observed);
