using System.Collections.Immutable;
using System.Globalization;
using Parquet;
using Parquet.Schema;

namespace TrialKit.Season;

/// <summary>A season table in Parquet, written a row group at a time.</summary>
internal sealed class ParquetRows : SeasonRows
{
    /// <summary>Rows of a group: enough that engines skip and compress well, few enough to hold.</summary>
    private const int GroupSize = 32_768;

    private readonly ImmutableArray<DataField> columns;
    private readonly ParquetWriter writer;
    private readonly List<object?[]> held = new(GroupSize);

    public ParquetRows(ImmutableArray<SeasonField> fields, Stream stream)
        : base(fields)
    {
        columns = [.. fields.Select(Column)];
        writer = ParquetWriter.CreateAsync(new ParquetSchema([.. columns]), stream).GetAwaiter().GetResult();
        writer.CustomMetadata = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [ParquetTable.SchemaKey] = SeasonSchema.Version.ToString(CultureInfo.InvariantCulture),
        };
    }

    /// <inheritdoc/>
    public override void Add(object?[] row)
    {
        held.Add(row);
        if (held.Count == GroupSize)
        {
            WriteGroup();
        }
    }

    /// <inheritdoc/>
    public override void Complete()
    {
        if (held.Count > 0)
        {
            WriteGroup();
        }
    }

    /// <inheritdoc/>
    public override void Dispose() => writer.DisposeAsync().AsTask().GetAwaiter().GetResult();

    private static DataField Column(SeasonField field) => new(
        field.Name,
        field.Type switch
        {
            SeasonType.Text => typeof(string),
            SeasonType.Whole => typeof(int),
            SeasonType.Number => typeof(double),
            SeasonType.YesNo => typeof(bool),
            _ => typeof(DateOnly),
        },
        isNullable: !field.IsRequired);

    private void WriteGroup()
    {
        using var group = writer.CreateRowGroup();
        for (var c = 0; c < columns.Length; c++)
        {
            Write(group, c);
        }

        held.Clear();
    }

    private void Write(ParquetRowGroupWriter group, int c)
    {
        switch (Fields[c].Type)
        {
            case SeasonType.Text:
                group.WriteAsync(columns[c], (string[])[.. held.Select(row => (string)row[c]!)]).GetAwaiter().GetResult();
                break;
            case SeasonType.Whole:
                Write<int>(group, c);
                break;
            case SeasonType.Number:
                Write<double>(group, c);
                break;
            case SeasonType.YesNo:
                Write<bool>(group, c);
                break;
            default:
                Write<DateOnly>(group, c);
                break;
        }
    }

    private void Write<T>(ParquetRowGroupWriter group, int c)
        where T : struct
    {
        var written = Fields[c].IsRequired
            ? group.WriteAsync<T>(columns[c], (T[])[.. held.Select(row => (T)row[c]!)])
            : group.WriteAsync<T>(columns[c], (T?[])[.. held.Select(row => (T?)row[c])]);
        written.GetAwaiter().GetResult();
    }
}
