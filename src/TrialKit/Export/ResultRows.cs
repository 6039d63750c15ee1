using System.Collections;
using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace TrialKit.Export;

/// <summary>Rows made from items one at a time, so that a table of every plant is never in memory whole.</summary>
/// <param name="items">One per row.</param>
/// <param name="cells">One per column: an item's cell.</param>
internal sealed class ResultRows<T>(T[] items, Func<T, object?>[] cells) : IReadOnlyList<ImmutableArray<object?>>
{
    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public ImmutableArray<object?> this[int index]
    {
        get
        {
            var row = new object?[cells.Length];
            for (var i = 0; i < row.Length; i++)
            {
                row[i] = cells[i](items[index]);
            }

            return ImmutableCollectionsMarshal.AsImmutableArray(row);
        }
    }

    /// <inheritdoc/>
    public IEnumerator<ImmutableArray<object?>> GetEnumerator()
    {
        for (var i = 0; i < items.Length; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
