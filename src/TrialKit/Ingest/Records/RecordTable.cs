using System.Collections.Immutable;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Records;

/// <summary>The records read from one table, and the row each came from.</summary>
/// <typeparam name="T">What a row became.</typeparam>
/// <param name="name">The table's name.</param>
/// <param name="table">The table; null when the trial does not have it or its rows cannot be read.</param>
internal sealed class RecordTable<T>(string name, BoundTable? table)
    where T : class
{
    private readonly List<T> _items = [];
    private readonly List<int> _rows = [];
    private Dictionary<T, int>? _rowOf;

    /// <summary>Rows that hold nothing to analyse; each is listed by a warning.</summary>
    public int LeftOut { get; set; }

    /// <summary>The records in the order of their rows.</summary>
    public ImmutableArray<T> Items => [.. _items];

    /// <summary>Adds a record.</summary>
    public void Add(T item, int row)
    {
        _items.Add(item);
        _rows.Add(row);
    }

    /// <summary>Where a record's cell stands; its row when the table lacks the column.</summary>
    public ProblemLocation At(T item, Column column)
    {
        if (_rowOf is null)
        {
            _rowOf = new Dictionary<T, int>(ReferenceEqualityComparer.Instance);
            for (var i = 0; i < _items.Count; i++)
            {
                _rowOf.Add(_items[i], _rows[i]);
            }
        }

        return At(_rowOf[item], column);
    }

    /// <summary>Where the cell of a row stands; the row when the table lacks the column.</summary>
    public ProblemLocation At(int row, Column column)
    {
        var bound = table![column];
        return bound.Exists ? table.Raw.Locate(row, bound.Index) : table.Raw.LocateRow(row);
    }

    /// <summary>What became of the rows; null when there is no table.</summary>
    /// <param name="used">Rows in use; by default one for each record.</param>
    public TableRows? Rows(int? used = null) =>
        table is null ? null : new TableRows(name, table.Raw.Start.File, table.Raw.RowCount, used ?? _items.Count, LeftOut);
}
