using System.Globalization;
using CsvHelper;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Tables;

/// <summary>A table of separated cells in a text file.</summary>
internal sealed class CsvTable : RawTable
{
    private readonly Utf8Text _text;
    private readonly List<(int Place, int Cells)> _misfits = [];
    private readonly List<CsvMalformedRecord> _malformed = [];

    private CsvTable(Utf8Text text) => _text = text;

    public override ProblemLocation Start => ProblemLocation.StartOf(_text.File);

    /// <summary>Reads a table; faults of quoting and rows with too many or too few cells are added to the problems and the rest is read on.</summary>
    /// <param name="text">The file.</param>
    /// <param name="name">The table's name.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="start">The byte at which the table begins, after whatever stands above it.</param>
    /// <returns>Null when the table is too large, with an error added.</returns>
    public static CsvTable? Read(Utf8Text text, string name, ProblemList problems, int start = 0)
    {
        var table = Parse(text, name, start, lineBreaksInQuotes: true);
        if (table._malformed.Exists(record => record.Reason == CsvMalformedReason.UnterminatedQuote))
        {
            // A quote left open would swallow the rest of the file and every fault in it: read again with each line for itself.
            table = Parse(text, name, start, lineBreaksInQuotes: false);
        }

        if (table.Excess is { } excess)
        {
            problems.Add(FileProblems.TableTooLarge(table.Start, excess));
            return null;
        }

        foreach (var record in table._malformed)
        {
            problems.Add(TableProblems.Quoting(text.Locate(start + (int)record.ByteOffset), Reason(record.Reason)));
        }

        foreach (var (place, cells) in table._misfits)
        {
            problems.Add(TableProblems.FieldCount(text.Locate(place), cells, table.ColumnCount));
        }

        return table;
    }

    protected override ProblemLocation PlaceOf(int line, int place) => _text.Locate(place);

    private static CsvTable Parse(Utf8Text text, string name, int start, bool lineBreaksInQuotes)
    {
        var separator = Separator(text.Bytes.AsSpan(Math.Max(start, text.MarkLength)));
        var table = new CsvTable(text) { Name = name, DecimalComma = separator != ',' };
        var lines = text.Bytes.AsSpan().Count((byte)'\n') + 1;
        table.Reserve(lines, lines + text.Bytes.AsSpan().Count((byte)separator), text.Bytes.Length);
        using var reader = CsvReader.Create(text.Bytes.AsMemory(start), new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            CommentPrefix = '#',
            AllowLineBreaksInQuotes = lineBreaksInQuotes,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = table._malformed.Add,
            FormatProvider = CultureInfo.InvariantCulture,
        });
        while (table.Excess is null && reader.Read())
        {
            // Rows below the header that hold one cell too many or too few are kept, marked, and reported.
            var place = start + (int)reader.ByteOffset;
            for (int i = 0, cell = place; i < reader.FieldCount; i++)
            {
                table.AddCell(reader.GetSpan(i), cell);
                cell += reader.GetRawSpan(i).Length + 1;
            }

            var misfit = table.EndRow(place, sound: table._malformed.Count == 0 || table._malformed[^1].RecordNumber != reader.RowNumber);
            if (misfit > 0)
            {
                table._misfits.Add((place, misfit));
            }
        }

        return table;
    }

    private static char Separator(ReadOnlySpan<byte> text)
    {
        foreach (var range in text.SplitAny("\r\n"u8))
        {
            var line = text[range];
            if (line.IsEmpty || line[0] == '#' || line.Trim(" \t"u8).IsEmpty)
            {
                continue;
            }

            return line.Contains((byte)'\t') ? '\t' : line.Contains((byte)';') ? ';' : ',';
        }

        return ',';
    }

    private static string Reason(CsvMalformedReason reason) => reason switch
    {
        CsvMalformedReason.UnterminatedQuote or CsvMalformedReason.LineBreakInQuotes => "a quoted cell is not closed",
        _ => "a double quote stands where none belongs",
    };
}
