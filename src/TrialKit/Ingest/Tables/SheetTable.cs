using System.Globalization;
using System.Text;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Tables;

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
    /// <param name="rows">Every row of the sheet from the first, blank ones included; cells by column.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static SheetTable Read(string workbook, string sheet, string name, IEnumerable<IEnumerable<object?>> rows, ProblemList problems)
    {
        var table = new SheetTable(workbook, sheet) { Name = name };
        var line = 0;
        foreach (var row in rows)
        {
            line++;
            var cells = row.Select(Write).ToList();
            if (cells.Count > 0 && cells[0].Text.StartsWith('#') && !IsError(cells[0].Text))
            {
                continue;
            }

            var width = table.HasHeader ? table.ColumnCount : cells.FindLastIndex(cell => cell.Text.Length > 0) + 1;
            for (var column = 0; column < Math.Max(width, cells.Count); column++)
            {
                var (text, typedDate) = column < cells.Count ? cells[column] : (string.Empty, false);
                if (column < width)
                {
                    table.AddCell(Encoding.UTF8.GetBytes(text), column + 1, typedDate);
                }
                else if (text.Length > 0)
                {
                    problems.Add(TableProblems.NamelessColumn(table.PlaceOf(line, column + 1), table.PlaceOf(1, column + 1)));
                }
            }

            table.EndRow(line, sound: true);
        }

        return table;
    }

    /// <summary>Whether a text is how a spreadsheet shows a failed formula.</summary>
    public static bool IsError(string text) => text is "#N/A" or "#VALUE!" or "#REF!" or "#DIV/0!" or "#NUM!" or "#NAME?" or "#NULL!" or "#SPILL!" or "#CALC!";

    protected override ProblemLocation PlaceOf(int line, int place) => new(_workbook, _sheet, line, place);

    private static (string Text, bool TypedDate) Write(object? value) => value switch
    {
        null => (string.Empty, false),
        string text => (text.Trim(), false),
        DateTime time => (Wording.Time(time), true),
        bool flag => (flag ? "true" : "false", false),
        IFormattable number => (number.ToString(null, CultureInfo.InvariantCulture), false),
        _ => (value.ToString()!, false),
    };
}
