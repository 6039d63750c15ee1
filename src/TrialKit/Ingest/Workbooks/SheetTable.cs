using System.Text;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Workbooks;

/// <summary>A table on a sheet of a workbook.</summary>
internal sealed class SheetTable : RawTable
{
    private readonly string _workbook;
    private readonly string _sheet;

    private SheetTable(string workbook, string sheet)
    {
        _workbook = workbook;
        _sheet = sheet;
    }

    public override ProblemLocation Start => new(_workbook, _sheet, 1, 1);

    /// <summary>Reads a sheet; a value to the right of the header's last name is added to the problems.</summary>
    /// <param name="workbook">The workbook's file name.</param>
    /// <param name="sheet">The sheet's name as written.</param>
    /// <param name="name">The table's name.</param>
    /// <param name="rows">The rows that hold something, in their order; cells by column.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>Null when the sheet is too large, with an error added.</returns>
    public static SheetTable? Read(string workbook, string sheet, string name, IEnumerable<(int Row, IReadOnlyList<SheetValue> Cells)> rows, ProblemList problems)
    {
        var table = new SheetTable(workbook, sheet) { Name = name };
        foreach (var (line, cells) in rows)
        {
            if (cells[0] is { Column: 1, Text: var first } && first.StartsWith('#') && !IsError(first))
            {
                continue;
            }

            table.AddRow(line, cells, problems);
            if (table.Excess is { } excess)
            {
                problems.Add(FileProblems.TableTooLarge(table.Start, excess));
                return null;
            }
        }

        return table;
    }

    /// <summary>Whether a text is how a spreadsheet shows a failed formula.</summary>
    public static bool IsError(string text) => text is "#N/A" or "#VALUE!" or "#REF!" or "#DIV/0!" or "#NUM!" or "#NAME?" or "#NULL!" or "#SPILL!" or "#CALC!";

    protected override ProblemLocation PlaceOf(int line, int place) => new(_workbook, _sheet, line, place);

    private void AddRow(int line, IReadOnlyList<SheetValue> cells, ProblemList problems)
    {
        var width = HasHeader ? ColumnCount : cells[^1].Column;
        var next = 0;
        for (var column = 1; column <= width; column++)
        {
            var isThere = next < cells.Count && cells[next].Column == column;
            AddCell(isThere ? Encoding.UTF8.GetBytes(cells[next].Text) : [], column, isThere && cells[next].TypedDate);
            next += isThere ? 1 : 0;
        }

        for (; next < cells.Count; next++)
        {
            problems.Add(TableProblems.NamelessColumn(PlaceOf(line, cells[next].Column), PlaceOf(1, cells[next].Column)));
        }

        EndRow(line, sound: true);
    }
}
