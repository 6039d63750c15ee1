using System.Collections.Immutable;

namespace TrialKit.Export;

/// <summary>Results as a table, the same for CSV, JSON and whatever reads them.</summary>
/// <param name="Name">Its stable name, which is its file's name too.</param>
/// <param name="Description">What one row is.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, which may be made anew whenever they are asked for: each cell is a <see cref="string"/>, a finite <see cref="double"/>, an <see cref="int"/>, a <see cref="bool"/>, or null for what is not recorded or not defined.</param>
public sealed record ResultTable(string Name, string Description, ImmutableArray<ResultColumn> Columns, IReadOnlyList<ImmutableArray<object?>> Rows)
{
    /// <summary>A table whose rows are made from items, column by column.</summary>
    internal static ResultTable Of<T>(string name, string description, IEnumerable<T> items, params ReadOnlySpan<(string Name, string Description, Func<T, object?> Cell)> columns)
    {
        var heads = ImmutableArray.CreateBuilder<ResultColumn>(columns.Length);
        var cells = new Func<T, object?>[columns.Length];
        for (var i = 0; i < columns.Length; i++)
        {
            heads.Add(new(columns[i].Name, columns[i].Description));
            cells[i] = columns[i].Cell;
        }

        return new(name, description, heads.MoveToImmutable(), new ResultRows<T>([.. items], cells));
    }
}
