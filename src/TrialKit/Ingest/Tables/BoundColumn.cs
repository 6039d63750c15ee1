namespace TrialKit.Ingest.Tables;

/// <summary>A column of a table as it was found: where, and in which unit.</summary>
/// <param name="Index">From 0; -1 when the table does not have it.</param>
/// <param name="Header">The header as written, for messages; the column's own name when absent.</param>
/// <param name="Unit">The unit as printed; null when it has none.</param>
internal sealed record BoundColumn(int Index, string Header, string? Unit)
{
    /// <summary>Whether the table has the column.</summary>
    public bool Exists => Index >= 0;
}
