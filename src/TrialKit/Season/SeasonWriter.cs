using System.Collections.Immutable;

namespace TrialKit.Season;

/// <summary>Writes trials into the two tables of a season, one after another; no more than some ten thousand rows are held at a time.</summary>
/// <remarks>The same trials in the same order give the same bytes.</remarks>
public sealed class SeasonWriter : IDisposable
{
    private readonly SeasonRows contrasts;
    private readonly SeasonRows strips;

    private SeasonWriter(SeasonRows contrasts, SeasonRows strips) => (this.contrasts, this.strips) = (contrasts, strips);

    /// <summary>A season in Parquet.</summary>
    /// <param name="contrasts">Takes the table of comparisons; stays open.</param>
    /// <param name="strips">Takes the table of strips; stays open.</param>
    public static SeasonWriter Parquet(Stream contrasts, Stream strips)
    {
        ArgumentNullException.ThrowIfNull(contrasts);
        ArgumentNullException.ThrowIfNull(strips);
        return new(new ParquetRows(ContrastFields, contrasts), new ParquetRows(StripFields, strips));
    }

    /// <summary>A season in CSV: comma, full stop, UTF-8, a header.</summary>
    /// <param name="contrasts">Takes the table of comparisons; stays open.</param>
    /// <param name="strips">Takes the table of strips; stays open.</param>
    public static SeasonWriter Csv(Stream contrasts, Stream strips)
    {
        ArgumentNullException.ThrowIfNull(contrasts);
        ArgumentNullException.ThrowIfNull(strips);
        return new(new CsvRows(ContrastFields, contrasts), new CsvRows(StripFields, strips));
    }

    /// <summary>The columns of the table of comparisons.</summary>
    internal static ImmutableArray<SeasonField> ContrastFields { get; } = [.. SeasonSchema.Contrasts.Select(column => column.Field)];

    /// <summary>The columns of the table of strips.</summary>
    internal static ImmutableArray<SeasonField> StripFields { get; } = [.. SeasonSchema.Strips.Select(column => column.Field)];

    /// <summary>Adds a trial.</summary>
    public void Add(SeasonTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        foreach (var row in ContrastRow.Of(trial))
        {
            contrasts.Add([.. SeasonSchema.Contrasts.Select(column => column.Cell(row))]);
        }

        foreach (var row in StripRow.Of(trial))
        {
            strips.Add([.. SeasonSchema.Strips.Select(column => column.Cell(row))]);
        }
    }

    /// <summary>Ends both tables; without it they are no whole files.</summary>
    public void Complete()
    {
        contrasts.Complete();
        strips.Complete();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        contrasts.Dispose();
        strips.Dispose();
    }
}
