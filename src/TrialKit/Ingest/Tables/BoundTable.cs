using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Tables;

/// <summary>A table whose header has been matched with the columns it may have.</summary>
internal sealed class BoundTable
{
    private readonly Column[] _columns;
    private readonly BoundColumn[] _bound;
    private bool _passesOverOthers;

    private BoundTable(RawTable raw, IReadOnlyList<Column> columns)
    {
        Raw = raw;
        _columns = [.. columns];
        _bound = Array.ConvertAll(_columns, Absent);
    }

    /// <summary>The cells.</summary>
    public RawTable Raw { get; }

    /// <summary>Whether the header is sound; the rows of another table are not read.</summary>
    public bool IsSound { get; private set; } = true;

    /// <summary>A column, found or not.</summary>
    public BoundColumn this[Column column]
    {
        get
        {
            // Asked for each cell: a look at a dozen references is faster than a hash of the name.
            for (var i = 0; i < _columns.Length; i++)
            {
                if (ReferenceEquals(_columns[i], column))
                {
                    return _bound[i];
                }
            }

            return Absent(column);
        }
    }

    /// <summary>Matches a header with columns; adds unknown, doubled and missing columns and wrong units to the problems.</summary>
    /// <param name="raw">The table.</param>
    /// <param name="columns">What it may have.</param>
    /// <param name="units">The units that <c>trial.toml</c> sets for columns whose header has none, by column name or <c>table.column</c>.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="passesOverOthers">Whether columns that are not known are passed over without a warning, as in files of many elements.</param>
    public static BoundTable Bind(RawTable raw, IReadOnlyList<Column> columns, IReadOnlyDictionary<string, string> units, ProblemList problems, bool passesOverOthers = false)
    {
        var table = new BoundTable(raw, columns) { _passesOverOthers = passesOverOthers };
        if (!raw.HasHeader)
        {
            problems.Add(TableProblems.Empty(raw.Start));
            table.IsSound = false;
            return table;
        }

        for (var i = 0; i < raw.ColumnCount; i++)
        {
            table.BindColumn(i, columns, units, problems);
        }

        foreach (var column in columns.Where(column => column.Required && !table[column].Exists))
        {
            table.Fault(problems, TableProblems.MissingColumn(raw.LocateHeader(0), column.Name));
        }

        return table;
    }

    /// <summary>Adds an error of the header, after which the rows are not read.</summary>
    public void Fault(ProblemList problems, Problem problem)
    {
        problems.Add(problem);
        IsSound = false;
    }

    private static BoundColumn Absent(Column column) => new(-1, column.Name, null);

    private void BindColumn(int index, IReadOnlyList<Column> columns, IReadOnlyDictionary<string, string> units, ProblemList problems)
    {
        var header = Raw.Header(index);
        var at = Raw.LocateHeader(index);
        if (header.Length == 0)
        {
            CheckNameless(index, problems);
            return;
        }

        var column = HeaderName.Find(header, columns, out var unit);
        if (column is null)
        {
            if (!_passesOverOthers)
            {
                problems.Add(TableProblems.UnknownColumn(at, header, [.. columns.Where(candidate => candidate.IsListed).Select(candidate => candidate.Name)]));
            }

            return;
        }

        if (this[column] is { Exists: true } earlier)
        {
            Fault(problems, TableProblems.DuplicateColumn(at, header, earlier.Header));
            return;
        }

        _bound[Array.IndexOf(_columns, column)] = new BoundColumn(index, header, UnitOf(column, header, unit, at, units, problems));
    }

    private string? UnitOf(
        Column column, string header, string written, ProblemLocation at, IReadOnlyDictionary<string, string> units, ProblemList problems)
    {
        if (column.Kind is not { } kind)
        {
            return null;
        }

        if (written.Length > 0)
        {
            var unit = kind.Find(written);
            if (unit is null)
            {
                Fault(problems, TableProblems.UnknownUnit(at, header, written, kind.Units));
            }

            return unit;
        }

        if (units.TryGetValue($"{Raw.Name}.{column.Name}", out var set) || units.TryGetValue(column.Name, out set))
        {
            return set;
        }

        Fault(problems, TableProblems.MissingUnit(at, header, column.Name, kind.Units));
        return null;
    }

    private void CheckNameless(int index, ProblemList problems)
    {
        for (var row = 0; row < Raw.RowCount; row++)
        {
            if (!Raw.Utf8(row, index).IsEmpty)
            {
                problems.Add(TableProblems.NamelessColumn(Raw.Locate(row, index), Raw.LocateHeader(index)));
                return;
            }
        }
    }
}
