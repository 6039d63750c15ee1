namespace TrialKit.Reporting.Document;

/// <summary>A form to fill in with a pencil; its head is repeated on each page it reaches.</summary>
/// <param name="Columns">The columns, one or more.</param>
/// <param name="Rows">The rows, each with one text for each column; an empty text is room to write.</param>
/// <exception cref="ArgumentException">No column, or a row whose number of cells differs from the number of columns.</exception>
public sealed record FormGrid(IReadOnlyList<FormColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block
{
    /// <summary>The rows, each with one text for each column; an empty text is room to write.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; init; } = Check(Columns, Rows);

    /// <summary>Whether it stands on one page; for forms of few rows.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Whether its last row stands on the page of what follows.</summary>
    public bool StaysWithNext { get; init; }

    private static IReadOnlyList<IReadOnlyList<string>> Check(IReadOnlyList<FormColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        if (columns.Count == 0)
        {
            throw new ArgumentException("A form has one column or more; found none.", nameof(columns));
        }

        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i].Count != columns.Count)
            {
                throw new ArgumentException(FormattableString.Invariant($"Row {i + 1} has {rows[i].Count} cells; the form has {columns.Count} columns."), nameof(rows));
            }
        }

        return rows;
    }
}
