using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace TrialKit.Export;

/// <summary>Writes an analysis as one JSON document: the trial, the files read, and every table as a list of objects.</summary>
public static class JsonResult
{
    // The writer keeps in memory whatever is not flushed.
    private const int FlushAbove = 1 << 16;

    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonWriterOptions LineOptions = new() { Encoder = Options.Encoder, SkipValidation = true };

    /// <summary>Writes the document, UTF-8 without a byte-order mark, numbers with every digit.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <param name="inputs">The files read: name and SHA-256 in hexadecimal.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(TrialAnalysis analysis, IEnumerable<(string Name, string Sha256)> inputs, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(inputs);
        using var json = new Utf8JsonWriter(stream, Options);
        json.WriteStartObject();
        json.WriteNumber("schema_version", ResultTables.SchemaVersion);
        json.WriteString("program", $"TrialKit {Library.Version}");
        Trial(json, analysis);
        Inputs(json, inputs);
        Tables(json, ResultTables.Of(analysis));
        json.WriteEndObject();
    }

    /// <summary>Writes trials put together as one document: the sites, the files read, and every table as a list of objects.</summary>
    /// <param name="pooled">The trials put together.</param>
    /// <param name="inputs">The files read: site and name, and SHA-256 in hexadecimal.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(PooledTrials pooled, IEnumerable<(string Name, string Sha256)> inputs, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        ArgumentNullException.ThrowIfNull(inputs);
        using var json = new Utf8JsonWriter(stream, Options);
        json.WriteStartObject();
        json.WriteNumber("schema_version", ResultTables.SchemaVersion);
        json.WriteString("program", $"TrialKit {Library.Version}");
        json.WriteStartArray("sites");
        foreach (var site in pooled.Sites)
        {
            json.WriteStartObject();
            json.WriteString("name", site.Name);
            json.WriteString("title", site.Trial.Title);
            json.WriteString("planted", site.Trial.Planted.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Inputs(json, inputs);
        Tables(json, PoolTables.Of(pooled));
        json.WriteEndObject();
    }

    /// <summary>Writes tables alone, in the same form.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(IEnumerable<ResultTable> tables, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(tables);
        using var json = new Utf8JsonWriter(stream, Options);
        json.WriteStartObject();
        json.WriteNumber("schema_version", ResultTables.SchemaVersion);
        json.WriteString("program", $"TrialKit {Library.Version}");
        Tables(json, tables);
        json.WriteEndObject();
    }

    private static void Inputs(Utf8JsonWriter json, IEnumerable<(string Name, string Sha256)> inputs)
    {
        json.WriteStartArray("inputs");
        foreach (var (name, sha256) in inputs)
        {
            json.WriteStartObject();
            json.WriteString("file", name);
            json.WriteString("sha256", sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Tables(Utf8JsonWriter json, IEnumerable<ResultTable> tables)
    {
        json.WriteStartObject("tables");
        foreach (var table in tables)
        {
            Table(json, table);
        }

        json.WriteEndObject();
    }

    private static void Trial(Utf8JsonWriter json, TrialAnalysis analysis)
    {
        var trial = analysis.Trial;
        json.WriteStartObject("trial");
        json.WriteString("title", trial.Title);
        json.WriteString("question", trial.Question);
        json.WriteString("crop", trial.Crop.Name);
        json.WriteString("planted", trial.Planting.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("layout", trial.Design.Layout == Trials.Layout.Pairs ? "pairs" : "blocks");
        json.WriteString("control", trial.Design.Control?.Name);
        json.WriteNumber("alpha", trial.Design.Level.Alpha);
        json.WriteString("units", trial.Units == Quantities.UnitSystem.Us ? "us" : "metric");
        json.WriteString("heat_method", trial.Heat.Method.Name);
        json.WriteBoolean("count_planting_day", trial.Heat.CountPlantingDay);
        json.WriteNumber("strips", trial.Strips.Length);
        json.WriteNumber("blocks", trial.Blocks.Length);
        json.WriteEndObject();
    }

    // A line a row: a table of every plant stays readable, and half the size.
    private static void Table(Utf8JsonWriter json, ResultTable table)
    {
        JsonEncodedText[] names = [.. table.Columns.Select(column => JsonEncodedText.Encode(column.Name, Options.Encoder))];
        var line = new ArrayBufferWriter<byte>();
        using var writer = new Utf8JsonWriter(line, LineOptions);
        json.WriteStartArray(table.Name);
        foreach (var row in table.Rows)
        {
            line.Clear();
            line.Write("\n      "u8);
            writer.Reset();
            writer.WriteStartObject();
            for (var i = 0; i < row.Length; i++)
            {
                writer.WritePropertyName(names[i]);
                Cell(writer, row[i]);
            }

            writer.WriteEndObject();
            writer.Flush();
            json.WriteRawValue(line.WrittenSpan, skipInputValidation: true);
            if (json.BytesPending > FlushAbove)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
    }

    private static void Cell(Utf8JsonWriter json, object? cell)
    {
        switch (cell)
        {
            case null:
                json.WriteNullValue();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case bool flag:
                json.WriteBooleanValue(flag);
                break;
            case int number:
                json.WriteNumberValue(number);
                break;
            case double number:
                json.WriteNumberValue(number);
                break;
            default:
                throw new ArgumentException($"A cell holds a {cell.GetType().Name}; text, a number, true or false was expected.", nameof(cell));
        }
    }
}
