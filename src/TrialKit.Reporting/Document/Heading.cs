namespace TrialKit.Reporting.Document;

/// <summary>A heading; it stays with what follows it and becomes an entry of the outline.</summary>
/// <param name="Level">1 for the report's title, 2 for a part, 3 for a part of a part.</param>
/// <param name="Text">The words.</param>
public sealed record Heading(int Level, string Text) : Block
{
    /// <summary>1 for the report's title, 2 for a part, 3 for a part of a part.</summary>
    public int Level { get; init; } = Level is >= 1 and <= 3
        ? Level
        : throw new ArgumentOutOfRangeException(nameof(Level), Level, "A heading's level is 1, 2 or 3.");
}
