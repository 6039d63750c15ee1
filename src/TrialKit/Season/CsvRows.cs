using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Export;

namespace TrialKit.Season;

/// <summary>A season table in CSV, written row by row.</summary>
internal sealed class CsvRows : SeasonRows
{
    private readonly CsvTables.Rows rows;

    public CsvRows(ImmutableArray<SeasonField> fields, Stream stream)
        : base(fields) => rows = CsvTables.Begin([.. fields.Select(field => field.Name)], stream);

    /// <inheritdoc/>
    public override void Add(object?[] row) => rows.Add(row.Select(cell => cell is DateOnly date ? date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : cell));

    /// <inheritdoc/>
    public override void Complete() => rows.Flush();

    /// <inheritdoc/>
    public override void Dispose() => rows.Dispose();
}
