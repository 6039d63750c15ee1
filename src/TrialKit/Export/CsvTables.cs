using System.Globalization;
using CsvHelper;
using TrialKit.Trials;

namespace TrialKit.Export;

/// <summary>Writes result tables as CSV: comma, full stop, UTF-8, line feeds, numbers with every digit, an empty cell for what is not there.</summary>
/// <remarks>Text that a spreadsheet would take for a formula, such as <c>=1+1</c>, is written with an apostrophe before it, and the readers of a trial's tables take it off again. Numbers are as they are.</remarks>
public static class CsvTables
{
    private static readonly CsvWriterOptions Options = new() { NewLine = "\n", FormatProvider = CultureInfo.InvariantCulture };

    /// <summary>Writes one table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(ResultTable table, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(table);
        using var csv = CsvWriter.Create(stream, Options, leaveOpen: true);
        foreach (var column in table.Columns)
        {
            csv.WriteField(column.Name);
        }

        csv.EndRecord();
        foreach (var row in table.Rows)
        {
            foreach (var cell in row)
            {
                csv.WriteField(Text(cell));
            }

            csv.EndRecord();
        }
    }

    private static string Text(object? cell) => cell switch
    {
        null => "",
        string text => GuardedText.Guard(text),
        bool flag => flag ? "true" : "false",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        int number => number.ToString(CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A cell holds a {cell.GetType().Name}; text, a number, true or false was expected.", nameof(cell)),
    };
}
