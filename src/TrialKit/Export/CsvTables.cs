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
        using var rows = Begin(table.Columns.Select(column => column.Name), stream);
        foreach (var row in table.Rows)
        {
            rows.Add(row);
        }
    }

    /// <summary>Begins a table that is written row by row.</summary>
    /// <param name="columns">Names of its columns.</param>
    /// <param name="stream">Where to; it stays open.</param>
    internal static Rows Begin(IEnumerable<string> columns, Stream stream)
    {
        var rows = new Rows(CsvWriter.Create(stream, Options, leaveOpen: true));
        rows.Add(columns);
        return rows;
    }

    /// <summary>A table that takes rows.</summary>
    internal sealed class Rows(CsvWriter csv) : IDisposable
    {
        /// <summary>Adds a row.</summary>
        public void Add(IEnumerable<object?> cells)
        {
            foreach (var cell in cells)
            {
                csv.WriteField(Text(cell));
            }

            csv.EndRecord();
        }

        /// <summary>Writes what is still held.</summary>
        public void Flush() => csv.Flush();

        /// <inheritdoc/>
        public void Dispose() => csv.Dispose();
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
