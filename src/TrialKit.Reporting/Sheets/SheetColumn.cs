namespace TrialKit.Reporting.Sheets;

/// <summary>A column of the workbook.</summary>
/// <param name="Header">Its name in the trial's table.</param>
/// <param name="Kind">What its cells hold.</param>
/// <param name="Note">What the note at its head says.</param>
/// <param name="Width">Its width in letters.</param>
internal sealed record SheetColumn(string Header, SheetCell Kind, string Note, int Width = 12);
