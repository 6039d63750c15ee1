using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Workbooks;

namespace TrialKit.Ingest.Tables;

/// <summary>Finds each table of a trial as a file or as a sheet of the workbook.</summary>
internal sealed class TableSource
{
    /// <summary>A sheet whose name begins so is its owner's business, such as the lists that cells are chosen from.</summary>
    private const char OwnSheet = '_';

    private readonly string _folder;
    private readonly ProblemList _problems;
    private readonly Workbook? _workbook;
    private readonly Dictionary<string, string> _sheets = new(StringComparer.Ordinal);

    /// <summary>Opens the workbook, when there is one, and says which of its sheets are not used.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="usesWorkbook">Whether the folder is a trial's, whose workbook may hold tables.</param>
    public TableSource(string folder, ProblemList problems, bool usesWorkbook = true)
    {
        (_folder, _problems) = (folder, problems);
        _workbook = usesWorkbook ? Workbook.Open(folder, problems) : null;
        foreach (var sheet in _workbook?.Sheets ?? [])
        {
            var table = Schema.TableNames.FirstOrDefault(name => string.Equals(name, SheetKey(sheet), StringComparison.OrdinalIgnoreCase));
            if (table is null && sheet.StartsWith(OwnSheet))
            {
                continue;
            }

            if (table is null)
            {
                problems.Add(FileProblems.UnusedSheet(Workbook.FileName, sheet, Schema.TableNames));
            }
            else if (!_sheets.TryAdd(table, sheet))
            {
                problems.Add(FileProblems.SheetTwice(Workbook.FileName, sheet, _sheets[table]));
            }
        }
    }

    /// <summary>The units that <c>trial.toml</c> sets for columns.</summary>
    public required IReadOnlyDictionary<string, string> Units { get; init; }

    /// <summary>The order in which the trial writes dates.</summary>
    public required DateOrder Dates { get; init; }

    /// <summary>Whether the table exists, as a file or as a sheet.</summary>
    public bool Has(string table, string? file = null) => _sheets.ContainsKey(table) || TrialFile.Exists(_folder, file ?? FileOf(table));

    /// <summary>The file of a table: its name with <c>.csv</c>.</summary>
    public static string FileOf(string table) => table + ".csv";

    /// <summary>Opens a table with its header matched.</summary>
    /// <param name="name">The table.</param>
    /// <param name="columns">Its columns.</param>
    /// <param name="file">The file, when another than its own is named.</param>
    /// <returns>Null when the table does not exist or its rows cannot be read; the reason is added.</returns>
    public BoundTable? Open(string name, IReadOnlyList<Column> columns, string? file = null)
    {
        file ??= FileOf(name);
        var hasFile = TrialFile.Exists(_folder, file);
        RawTable? raw = null;
        if (_sheets.TryGetValue(name, out var sheet))
        {
            if (hasFile)
            {
                _problems.Add(FileProblems.SheetAndFile(Workbook.FileName, sheet, file));
                return null;
            }

            raw = _workbook!.Read(sheet, name, _problems);
        }
        else if (hasFile && Utf8Text.Read(_folder, file, _problems) is { } text)
        {
            raw = CsvTable.Read(text, name, _problems);
        }

        if (raw is null)
        {
            return null;
        }

        return Bind(raw, columns, Units);
    }

    /// <summary>A table's own file when it is no sheet.</summary>
    /// <returns>Null when there is none, or none that can be read; the reason is added.</returns>
    public Utf8Text? Text(string name, string? file)
    {
        file ??= FileOf(name);
        return !_sheets.ContainsKey(name) && TrialFile.Exists(_folder, file) ? Utf8Text.Read(_folder, file, _problems) : null;
    }

    /// <summary>A file that is named beside the tables, such as one of a weather forecast.</summary>
    /// <returns>Null when it cannot be read; the reason is added.</returns>
    public Utf8Text? Further(string file) => Utf8Text.Read(_folder, file, _problems);

    /// <summary>Whether the table is a sheet.</summary>
    public bool IsSheet(string name) => _sheets.ContainsKey(name);

    /// <summary>Matches the header of a table that has been read.</summary>
    /// <returns>Null when its rows cannot be read; the reason is added.</returns>
    public BoundTable? Bind(RawTable raw, IReadOnlyList<Column> columns, IReadOnlyDictionary<string, string> units, bool passesOverOthers = false)
    {
        var table = BoundTable.Bind(raw, columns, units, _problems, passesOverOthers);
        if (table.IsSound && raw.RowCount == 0)
        {
            _problems.Add(TableProblems.NoRows(raw.Start, raw.Name));
        }

        return table.IsSound ? table : null;
    }

    private static string SheetKey(string sheet) => sheet.Trim().Replace(' ', '-').Replace('_', '-');
}
