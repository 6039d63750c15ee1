namespace TrialKit.Results;

/// <summary>Something measured on every strip and compared between treatments.</summary>
/// <param name="Id">A stable name for files, such as <c>t50</c>.</param>
/// <param name="Label">Its name as printed.</param>
/// <param name="Unit">The unit its values are in.</param>
/// <param name="Kind">How its numbers are rounded in print.</param>
/// <param name="Better">Which way is better.</param>
/// <param name="IsHeadline">Whether the first page speaks of it; the others stand in the tables.</param>
public sealed record Measure(string Id, string Label, Unit Unit, MeasureKind Kind, Better Better, bool IsHeadline);
