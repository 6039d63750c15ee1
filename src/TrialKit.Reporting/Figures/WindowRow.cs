namespace TrialKit.Reporting.Figures;

/// <summary>A planting day and the emergence foretold for it.</summary>
/// <param name="Planted">The planting day.</param>
/// <param name="Low">The earliest day; null when it is not known.</param>
/// <param name="Mid">The day in between; null when it is not known.</param>
/// <param name="High">The latest day; null when it is not known, so that the range is open.</param>
public sealed record WindowRow(DateOnly Planted, DateOnly? Low, DateOnly? Mid, DateOnly? High);
