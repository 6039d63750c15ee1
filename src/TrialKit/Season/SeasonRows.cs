using System.Collections.Immutable;

namespace TrialKit.Season;

/// <summary>Takes the rows of one season table, trial after trial, and writes them.</summary>
internal abstract class SeasonRows(ImmutableArray<SeasonField> fields) : IDisposable
{
    /// <summary>The columns.</summary>
    protected ImmutableArray<SeasonField> Fields { get; } = fields;

    /// <summary>Adds a row: one cell per column.</summary>
    public abstract void Add(object?[] row);

    /// <summary>Writes what is still held and whatever ends the file.</summary>
    public abstract void Complete();

    /// <inheritdoc/>
    public abstract void Dispose();
}
