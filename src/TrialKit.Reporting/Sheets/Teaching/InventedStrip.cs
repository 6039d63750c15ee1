namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>A strip of an invented trial.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Block">Its pair or block, from 1.</param>
/// <param name="Treatment">Its treatment's name.</param>
internal sealed record InventedStrip(string Name, int Block, string Treatment);
