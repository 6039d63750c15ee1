using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Document;

/// <summary>A figure across the page.</summary>
/// <param name="Figure">What is drawn; its alt text says the result.</param>
/// <param name="Caption">What the figure shows, above it; null for none.</param>
/// <param name="Height">Its height in points, or null for the figure's own proportion.</param>
/// <param name="Note">What the reader should know of it, below it; null for none.</param>
public sealed record FigureBlock(IFigure Figure, string? Caption = null, double? Height = null, string? Note = null) : Block;
