namespace TrialKit.Reporting.Pdf;

/// <summary>A stretch of the flow that is never broken: a line, a table's row, a figure.</summary>
/// <param name="Height">Its height.</param>
/// <param name="Items">What stands in it, placed from its upper left corner.</param>
internal sealed record Slab(double Height, IReadOnlyList<PlacedItem> Items)
{
    /// <summary>White space above it, dropped at the head of a page.</summary>
    public double SpaceBefore { get; init; }

    /// <summary>Whether it must stand on the same page as the next one.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Whether it begins a page.</summary>
    public bool BeginsPage { get; init; }

    /// <summary>What is repeated above it when it comes to stand at the head of a page: a table's head.</summary>
    public Slab? RepeatedHead { get; init; }

    /// <summary>The entry it makes in the outline.</summary>
    public OutlineEntry? Outline { get; init; }
}

/// <summary>An entry of the outline.</summary>
/// <param name="Level">1 for the title, deeper below.</param>
/// <param name="Text">The heading's words.</param>
internal sealed record OutlineEntry(int Level, string Text);
