using System.Buffers;
using System.Text;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Workbooks;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Tables;

/// <summary>Reads the cells of a table as what their columns hold. A cell that is not recorded reads as null; so does a faulty one, whose fault is added to the problems.</summary>
/// <param name="table">The table.</param>
/// <param name="dates">The order in which the trial writes dates.</param>
/// <param name="problems">Takes faulty cells.</param>
internal sealed class CellReader(BoundTable table, DateOrder dates, ProblemList problems)
{
    private static readonly SearchValues<byte> Controls = SearchValues.Create([.. Enumerable.Range(0, 0x20).Where(value => value is not ('\t' or '\r' or '\n')).Select(value => (byte)value), 0x7F]);

    private readonly RawTable _raw = table.Raw;

    private readonly (int Row, string? Name)[] _lastNames = new (int, string?)[table.Raw.ColumnCount];

    // Names recur in thousands of rows: each is made a string once.
    private readonly Dictionary<string, string> _names = new(StringComparer.Ordinal);

    /// <summary>Where a cell stands.</summary>
    public ProblemLocation At(int row, BoundColumn column) => column.Exists ? _raw.Locate(row, column.Index) : _raw.LocateRow(row);

    /// <summary>The cell's text as written, for messages.</summary>
    public string Written(int row, BoundColumn column) => _raw.Text(row, column.Index);

    /// <summary>Free text; null with an error added when a character in it is none that can be read.</summary>
    public string? Text(int row, BoundColumn column) =>
        TryCell(row, column, out var cell) && IsLegible(row, column, cell) ? GuardedText.Unguard(Encoding.UTF8.GetString(cell)) : null;

    /// <summary>An identifier.</summary>
    public string? Name(int row, BoundColumn column)
    {
        if (!TryCell(row, column, out var cell))
        {
            return null;
        }

        if (_raw.IsTypedDate(row, column.Index))
        {
            problems.Add(TableProblems.TypedDateAsName(At(row, column), column.Header, Written(row, column)));
            return null;
        }

        if (!IsLegible(row, column, cell))
        {
            return null;
        }

        // Neighbouring rows mostly hold the same name.
        ref var last = ref _lastNames[column.Index];
        if (last.Name is null || !_raw.Utf8(last.Row, column.Index).SequenceEqual(cell))
        {
            last.Name = Intern(cell);
        }

        last.Row = row;
        return last.Name;
    }

    /// <summary>A number of any sign.</summary>
    public double? Number(int row, BoundColumn column)
    {
        if (!TryCell(row, column, out var cell))
        {
            return null;
        }

        if (NumberCell.TryRead(cell, _raw.DecimalComma, out var value))
        {
            return value;
        }

        problems.Add(TableProblems.NotNumber(At(row, column), column.Header, Written(row, column)));
        return null;
    }

    /// <summary>A number above zero.</summary>
    public double? Positive(int row, BoundColumn column)
    {
        var value = Number(row, column);
        if (value is null or > 0)
        {
            return value;
        }

        problems.Add(TableProblems.NotAboveZero(At(row, column), column.Header, Written(row, column)));
        return null;
    }

    /// <summary>A number of zero or more.</summary>
    public double? NotNegative(int row, BoundColumn column)
    {
        var value = Number(row, column);
        if (value is null or >= 0)
        {
            return value;
        }

        problems.Add(TableProblems.Negative(At(row, column), column.Header, Written(row, column)));
        return null;
    }

    /// <summary>A whole number from <paramref name="least"/> (0 or 1) to <paramref name="most"/>.</summary>
    public int? Count(int row, BoundColumn column, int least = 0, int most = 1_000_000)
    {
        if (!TryCell(row, column, out var cell))
        {
            return null;
        }

        var problem = NumberCell.TryRead(cell, _raw.DecimalComma, out var value) switch
        {
            false => TableProblems.NotWhole(At(row, column), column.Header, Written(row, column)),
            true when value < 0 => TableProblems.Negative(At(row, column), column.Header, Written(row, column)),
            true when value != Math.Floor(value) => TableProblems.Fraction(At(row, column), column.Header, Written(row, column)),
            true when value < least => TableProblems.NotAboveZero(At(row, column), column.Header, Written(row, column)),
            true when value > most => TableProblems.TooLarge(At(row, column), column.Header, Written(row, column), most),
            _ => null,
        };
        if (problem is null)
        {
            return (int)value;
        }

        problems.Add(problem);
        return null;
    }

    /// <summary>A date, or a date and time.</summary>
    public DateTime? Date(int row, BoundColumn column)
    {
        if (!TryCell(row, column, out var cell))
        {
            return null;
        }

        var result = DateCell.Read(cell, dates, out var value);
        if (result == DateResult.Date)
        {
            return value;
        }

        problems.Add(result == DateResult.NoSuchDate
            ? TableProblems.NoSuchDate(At(row, column), column.Header, Written(row, column))
            : TableProblems.NotDate(At(row, column), column.Header, Written(row, column), DateCell.Form(dates)));
        return null;
    }

    /// <summary>A length in the column's unit.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="zeroAllowed">Whether it may be zero.</param>
    public Length? Length(int row, BoundColumn column, bool zeroAllowed) =>
        (zeroAllowed ? NotNegative(row, column) : Positive(row, column)) is { } value ? UnitKinds.ToLength(value, column.Unit!) : null;

    /// <summary>Whether nothing is recorded in the cell.</summary>
    public bool IsEmpty(int row, BoundColumn column) => !column.Exists || NumberCell.IsNotRecorded(_raw.Utf8(row, column.Index));

    /// <summary>Whether the cell holds exactly a number that stands for something else.</summary>
    public bool Is(int row, BoundColumn column, double sentinel) =>
        NumberCell.TryRead(_raw.Utf8(row, column.Index), _raw.DecimalComma, out var value) && value == sentinel;

    /// <summary>Adds an error when a cell that every row needs is not recorded.</summary>
    /// <returns>Whether it is recorded.</returns>
    public bool Require(int row, BoundColumn column)
    {
        if (!IsEmpty(row, column))
        {
            return true;
        }

        problems.Add(TableProblems.NotRecorded(At(row, column), column.Header));
        return false;
    }

    /// <summary>The cell when something is recorded in it; a spreadsheet's error is added to the problems and is nothing.</summary>
    private bool TryCell(int row, BoundColumn column, out ReadOnlySpan<byte> cell)
    {
        cell = column.Exists ? _raw.Utf8(row, column.Index) : default;
        if (NumberCell.IsNotRecorded(cell))
        {
            return false;
        }

        if (cell[0] == '#' && SheetTable.IsError(Written(row, column)))
        {
            problems.Add(TableProblems.SpreadsheetError(At(row, column), column.Header, Written(row, column)));
            return false;
        }

        return true;
    }

    /// <summary>Whether a text holds no control character but tabs and line breaks: others steer screens and printers, and no one sees them in a spreadsheet.</summary>
    private bool IsLegible(int row, BoundColumn column, ReadOnlySpan<byte> cell)
    {
        var at = cell.IndexOfAny(Controls);
        if (at < 0)
        {
            return true;
        }

        problems.Add(TableProblems.ControlCharacter(At(row, column), column.Header, cell[at]));
        return false;
    }

    private string Intern(ReadOnlySpan<byte> utf8)
    {
        const int LongestOnStack = 128;
        if (utf8.Length > LongestOnStack)
        {
            return GuardedText.Unguard(Encoding.UTF8.GetString(utf8));
        }

        Span<char> buffer = stackalloc char[LongestOnStack];
        var text = buffer[..Encoding.UTF8.GetChars(utf8, buffer)];
        var lookup = _names.GetAlternateLookup<ReadOnlySpan<char>>();
        if (!lookup.TryGetValue(text, out var name))
        {
            var written = new string(text);
            name = GuardedText.Unguard(written);
            _names.Add(written, name);
        }

        return name;
    }
}
