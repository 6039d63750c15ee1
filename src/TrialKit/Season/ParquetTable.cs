using System.Globalization;
using Parquet;
using Parquet.Schema;
using TrialKit.Ingest;
using TrialKit.Ingest.Messages;

namespace TrialKit.Season;

/// <summary>A Parquet file read row by row, one group at a time; whatever other columns it has are passed over.</summary>
internal static class ParquetTable
{
    /// <summary>The key under which a file says the version of its columns.</summary>
    public const string SchemaKey = "trialkit.season.schema";

    /// <summary>Rows of a group that are read at most: more would be held at once.</summary>
    private const long LargestGroup = 4_000_000;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="fields">The columns that are needed.</param>
    /// <param name="problems">Takes what is wrong with the file as a whole, after which nothing more is read.</param>
    /// <param name="row">Takes each row.</param>
    public static void Read(string path, IReadOnlyList<SeasonField> fields, List<Problem> problems, Action<SeasonCells> row)
    {
        var name = Path.GetFileName(path);
        try
        {
            using var stream = File.OpenRead(path);
            var reader = ParquetReader.CreateAsync(stream, new ParquetOptions { UseDateOnlyTypeForDates = true }).GetAwaiter().GetResult();
            try
            {
                if (Columns(reader, fields, name, problems) is { } columns)
                {
                    Groups(reader, columns, fields, name, problems, row);
                }
            }
            finally
            {
                reader.DisposeAsync().AsTask().GetAwaiter().GetResult();
            }
        }
#pragma warning disable CA1031 // A damaged file makes the package throw what it will; to the reader of the message it is a file that cannot be read.
        catch (Exception failure) when (failure is not OutOfMemoryException)
#pragma warning restore CA1031
        {
            problems.Add(SeasonProblems.Unreadable(name, failure.Message));
        }
    }

    private static DataField[]? Columns(ParquetReader reader, IReadOnlyList<SeasonField> fields, string name, List<Problem> problems)
    {
        if (reader.CustomMetadata.TryGetValue(SchemaKey, out var version) && version != SeasonSchema.Version.ToString(CultureInfo.InvariantCulture))
        {
            problems.Add(SeasonProblems.OtherSchema(name, version));
            return null;
        }

        var found = reader.Schema.DataFields.Where(field => field.MaxRepetitionLevel == 0 && field.Path.Length == 1).ToLookup(field => field.Name, StringComparer.Ordinal);
        var before = problems.Count;
        foreach (var field in fields)
        {
            if (found[field.Name].FirstOrDefault() is not { } column)
            {
                problems.Add(SeasonProblems.MissingColumn(name, field.Name));
            }
            else if (column.ClrType != Clr(field.Type))
            {
                problems.Add(SeasonProblems.OtherType(name, field.Name, column.ClrType.Name, field.Type));
            }
        }

        return problems.Count > before ? null : [.. fields.Select(field => found[field.Name].First())];
    }

    private static Type Clr(SeasonType type) => type switch
    {
        SeasonType.Text => typeof(ReadOnlyMemory<char>),
        SeasonType.Whole => typeof(int),
        SeasonType.Number => typeof(double),
        SeasonType.YesNo => typeof(bool),
        _ => typeof(DateOnly),
    };

    private static void Groups(ParquetReader reader, DataField[] columns, IReadOnlyList<SeasonField> fields, string name, List<Problem> problems, Action<SeasonCells> row)
    {
        var first = 1L;
        for (var g = 0; g < reader.RowGroupCount; g++)
        {
            using var group = reader.OpenRowGroupReader(g);
            if (group.RowCount is < 0 or > LargestGroup)
            {
                problems.Add(SeasonProblems.GroupTooLarge(name, group.RowCount, LargestGroup));
                return;
            }

            object?[][] cells = [.. columns.Select((column, c) => Cells(group, column, fields[c].Type))];
            for (var r = 0; r < group.RowCount; r++)
            {
                row(new SeasonCells(name, (int)Math.Min(first + r, int.MaxValue), fields, cells, r, problems));
            }

            first += group.RowCount;
        }
    }

    private static object?[] Cells(ParquetRowGroupReader group, DataField column, SeasonType type) => type switch
    {
        SeasonType.Text => Texts(group, column),
        SeasonType.Whole => Cells<int>(group, column),
        SeasonType.Number => Cells<double>(group, column),
        SeasonType.YesNo => Cells<bool>(group, column),
        _ => Cells<DateOnly>(group, column),
    };

    private static object?[] Texts(ParquetRowGroupReader group, DataField column)
    {
        var texts = new string?[group.RowCount];
        group.ReadAsync(column, texts.AsMemory()).AsTask().GetAwaiter().GetResult();
        return texts;
    }

    private static object?[] Cells<T>(ParquetRowGroupReader group, DataField column)
        where T : struct
    {
        if (column.IsNullable)
        {
            var some = new T?[group.RowCount];
            group.ReadAsync<T>(column, some.AsMemory()).AsTask().GetAwaiter().GetResult();
            return [.. some.Select(cell => (object?)cell)];
        }

        var all = new T[group.RowCount];
        group.ReadAsync<T>(column, all.AsMemory()).AsTask().GetAwaiter().GetResult();
        return [.. all.Select(cell => (object?)cell)];
    }
}
