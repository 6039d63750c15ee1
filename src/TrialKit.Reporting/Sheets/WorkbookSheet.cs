namespace TrialKit.Reporting.Sheets;

/// <summary>A sheet of the workbook.</summary>
/// <param name="Name">The table it is.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Rows that are there already: each cell is text, a number, a date, or null.</param>
internal sealed record WorkbookSheet(string Name, IReadOnlyList<SheetColumn> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows);
