using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Document;

/// <summary>A figure across the page.</summary>
/// <param name="Figure">What is drawn; its alt text says the result.</param>
/// <param name="Caption">What the figure shows, above it; null for none.</param>
/// <param name="Height">Its height in points, or null for the figure's own proportion.</param>
/// <param name="Note">What the reader should know of it, below it; null for none.</param>
public sealed record FigureBlock(IFigure Figure, string? Caption = null, double? Height = null, string? Note = null) : Block
{
    /// <summary>On a page of its own, the least height in points to which the figure gives way, up from which it takes the room that is left; null for a figure of one height.</summary>
    public double? LeastHeight { get; init; }

    /// <summary>A short name for a file of its own, such as <c>emergence</c>; null for a figure that is not written alone.</summary>
    public string? Name { get; init; }
}
