using System.Text;

namespace TrialKit.Ingest.Tables;

/// <summary>The cells of one table as they stand, trimmed and as UTF-8, each with its place: what a text file and a sheet have in common.</summary>
internal abstract class RawTable
{
    /// <summary>The most rows that are read; a network's season has fewer.</summary>
    public const int MostRows = 1_000_000;

    /// <summary>The most columns.</summary>
    public const int MostColumns = 1_000;

    /// <summary>The most cells.</summary>
    public const int MostCells = 20_000_000;

    private readonly List<Row> _rows = [];
    private readonly List<Cell> _cells = [];
    private byte[] _text = [];
    private int _textLength;

    /// <summary>The table's name: that of its sheet, or of its file without the ending.</summary>
    public required string Name { get; init; }

    /// <summary>Whether a comma stands for the decimal point.</summary>
    public bool DecimalComma { get; init; }

    /// <summary>Rows below the header.</summary>
    public int RowCount => Math.Max(0, _rows.Count - 1);

    /// <summary>Whether there is a header.</summary>
    public bool HasHeader => _rows.Count > 0;

    /// <summary>Cells of the header.</summary>
    public int ColumnCount => HasHeader ? _rows[0].Cells : 0;

    /// <summary>What there is too much of, as a message says it; null while the table is within the limits.</summary>
    public string? Excess => (RowCount > MostRows, ColumnCount > MostColumns, _cells.Count > MostCells) switch
    {
        (true, _, _) => "1,000,000 rows",
        (_, true, _) => "1,000 columns",
        (_, _, true) => "20,000,000 cells",
        _ => null,
    };

    /// <summary>Where the table begins.</summary>
    public abstract ProblemLocation Start { get; }

    /// <summary>The text of a header cell.</summary>
    public string Header(int column) => Encoding.UTF8.GetString(Bytes(_rows[0], column));

    /// <summary>Where a header cell stands.</summary>
    public ProblemLocation LocateHeader(int column) => PlaceOf(_rows[0].Line, _cells[_rows[0].FirstCell + column].Place);

    /// <summary>The cell's text as UTF-8 without outer spaces; empty when the row is shorter.</summary>
    /// <param name="row">From 0, below the header.</param>
    /// <param name="column">From 0.</param>
    public ReadOnlySpan<byte> Utf8(int row, int column) => Bytes(_rows[row + 1], column);

    /// <summary>The cell's text without outer spaces.</summary>
    public string Text(int row, int column) => Encoding.UTF8.GetString(Utf8(row, column));

    /// <summary>Whether the row has as many cells as the header and sound quotes; the cells of another row may stand in the wrong column.</summary>
    public bool IsWhole(int row) => _rows[row + 1].Whole;

    /// <summary>Whether the cell was a spreadsheet's typed date.</summary>
    public bool IsTypedDate(int row, int column) => column < _rows[row + 1].Cells && _cells[_rows[row + 1].FirstCell + column].TypedDate;

    /// <summary>Where a cell stands; the row's first cell when the row is shorter.</summary>
    public ProblemLocation Locate(int row, int column)
    {
        var at = _rows[row + 1];
        return PlaceOf(at.Line, _cells[at.FirstCell + (column < at.Cells ? column : 0)].Place);
    }

    /// <summary>Where a row begins.</summary>
    public ProblemLocation LocateRow(int row) => Locate(row, 0);

    /// <summary>The place of a cell from what <see cref="AddCell"/> was told.</summary>
    protected abstract ProblemLocation PlaceOf(int line, int place);

    /// <summary>Makes room at once for a table of about this size.</summary>
    protected void Reserve(int rows, int cells, int textLength)
    {
        _rows.EnsureCapacity(Math.Min(rows, MostRows));
        _cells.EnsureCapacity(Math.Min(cells, MostCells));
        Array.Resize(ref _text, Math.Max(_text.Length, textLength));
    }

    /// <summary>Adds a cell to the row that the next <see cref="EndRow"/> ends.</summary>
    /// <param name="text">UTF-8; outer spaces are taken off.</param>
    /// <param name="place">Whatever <see cref="PlaceOf"/> needs to find the cell again.</param>
    /// <param name="typedDate">Whether a spreadsheet typed it as a date.</param>
    protected void AddCell(ReadOnlySpan<byte> text, int place, bool typedDate = false)
    {
        if (!text.IsEmpty && (text[0] <= ' ' || text[^1] <= ' '))
        {
            text = text.Trim(" \t\r\n"u8);
        }

        if (_text.Length - _textLength < text.Length)
        {
            Array.Resize(ref _text, (int)Math.Min(Array.MaxLength, 256 + Math.Max(_text.Length * 2L, _textLength + (long)text.Length)));
        }

        text.CopyTo(_text.AsSpan(_textLength));
        _cells.Add(new Cell(_textLength, text.Length, place, typedDate));
        _textLength += text.Length;
    }

    /// <summary>Ends a row: keeps it when any cell holds something, else forgets it like a blank line.</summary>
    /// <param name="line">Whatever <see cref="PlaceOf"/> needs to find the row again.</param>
    /// <param name="sound">Whether its quotes are sound.</param>
    /// <returns>Cells of the row when it has another number of them than the header; else 0.</returns>
    protected int EndRow(int line, bool sound)
    {
        var first = _rows.Count == 0 ? 0 : _rows[^1].FirstCell + _rows[^1].Cells;
        var cells = _cells.Count - first;
        var blank = true;
        for (var i = first; i < _cells.Count && blank; i++)
        {
            blank = _cells[i].Length == 0;
        }

        if (blank)
        {
            _cells.RemoveRange(first, cells);
            return 0;
        }

        var fits = !HasHeader || cells == ColumnCount;
        _rows.Add(new Row(first, cells, line, fits && sound));
        return fits ? 0 : cells;
    }

    private ReadOnlySpan<byte> Bytes(Row row, int column)
    {
        if (column >= row.Cells)
        {
            return default;
        }

        var cell = _cells[row.FirstCell + column];
        return _text.AsSpan(cell.Start, cell.Length);
    }

    private readonly record struct Row(int FirstCell, int Cells, int Line, bool Whole);

    private readonly record struct Cell(int Start, int Length, int Place, bool TypedDate);
}
