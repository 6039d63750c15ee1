namespace TrialKit.Reporting.Document;

/// <summary>A table; its head is repeated on each page it reaches.</summary>
/// <param name="Caption">What the table shows, above it; null for none.</param>
/// <param name="Columns">The columns, one or more.</param>
/// <param name="Rows">The rows, each with one cell for each column.</param>
/// <param name="Note">What the reader should know of it, below it; null for none.</param>
/// <exception cref="ArgumentException">No column, or a row whose number of cells differs from the number of columns.</exception>
public sealed record Table(
    string? Caption,
    IReadOnlyList<TableColumn> Columns,
    IReadOnlyList<TableRow> Rows,
    string? Note = null) : Block
{
    /// <summary>The rows, each with one cell for each column.</summary>
    public IReadOnlyList<TableRow> Rows { get; init; } = Check(Columns, Rows);

    /// <summary>Whether empty cells are boxes to write in, with room for a hand.</summary>
    public bool IsForm { get; init; }

    private static IReadOnlyList<TableRow> Check(IReadOnlyList<TableColumn> columns, IReadOnlyList<TableRow> rows)
    {
        if (columns.Count == 0)
        {
            throw new ArgumentException("A table has one column or more; found none.", nameof(columns));
        }

        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i].Cells.Count != columns.Count)
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Row {i + 1} has {rows[i].Cells.Count} cells; the table has {columns.Count} columns."),
                    nameof(rows));
            }
        }

        return rows;
    }
}
