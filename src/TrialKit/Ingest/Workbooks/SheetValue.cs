namespace TrialKit.Ingest.Workbooks;

/// <summary>A cell of a sheet that is not empty.</summary>
/// <param name="Column">Its column, from 1.</param>
/// <param name="Text">What it holds, as a text file would.</param>
/// <param name="TypedDate">Whether the spreadsheet holds it as a date.</param>
internal readonly record struct SheetValue(int Column, string Text, bool TypedDate);
