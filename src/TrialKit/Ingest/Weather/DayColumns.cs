using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>Where a table of days holds the extremes.</summary>
/// <param name="table">The table.</param>
/// <param name="maximum">The column of maxima.</param>
/// <param name="minimum">The column of minima.</param>
internal sealed class DayColumns(BoundTable table, Column maximum, Column minimum)
{
    /// <summary>The table.</summary>
    public BoundTable Table => table;

    /// <summary>The column of maxima.</summary>
    public BoundColumn Maximum { get; } = table[maximum];

    /// <summary>The column of minima.</summary>
    public BoundColumn Minimum { get; } = table[minimum];

    /// <summary>Whether the days come from a grid rather than a station.</summary>
    public bool IsGrid { get; } = table[Schema.Year].Exists;

    /// <summary>Both columns with those of their quality flags.</summary>
    public (BoundColumn Column, BoundColumn Flags)[] Both { get; } =
        [(table[maximum], table[Schema.MaximumFlags]), (table[minimum], table[Schema.MinimumFlags])];
}
