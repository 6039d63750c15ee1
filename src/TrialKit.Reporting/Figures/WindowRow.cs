using TrialKit.Heat;

namespace TrialKit.Reporting.Figures;

/// <summary>A planting day and the emergence foretold for it.</summary>
/// <param name="Planted">The planting day.</param>
/// <param name="Low">The earliest day; null when it is not known.</param>
/// <param name="Mid">The day in between; null when it is not known.</param>
/// <param name="Kinds">What each day rests on, from the earliest to the latest, or to the last day on hand; empty without an earliest day.</param>
/// <param name="Open">Why there is no latest day, in a word or two; null when there is one.</param>
public sealed record WindowRow(DateOnly Planted, DateOnly? Low, DateOnly? Mid, IReadOnlyList<DayKind> Kinds, string? Open)
{
    /// <summary>The last day of the range, or the last on hand where it is open; null without an earliest day.</summary>
    public DateOnly? Last => Low is { } low && Kinds.Count > 0 ? low.AddDays(Kinds.Count - 1) : Low;
}
