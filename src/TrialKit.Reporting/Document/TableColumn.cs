namespace TrialKit.Reporting.Document;

/// <summary>A column of a table.</summary>
/// <param name="Header">What the column holds.</param>
/// <param name="Unit">Its unit, printed below the header, or null.</param>
/// <param name="Alignment">How its cells stand.</param>
public sealed record TableColumn(string Header, string? Unit = null, ColumnAlignment Alignment = ColumnAlignment.Left);
