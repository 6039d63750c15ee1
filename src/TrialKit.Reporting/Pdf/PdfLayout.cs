namespace TrialKit.Reporting.Pdf;

/// <summary>Where everything of a document stands.</summary>
/// <param name="Width">Width of each page.</param>
/// <param name="Height">Height of each page.</param>
/// <param name="Pages">The pages in order.</param>
internal sealed record PdfLayout(double Width, double Height, IReadOnlyList<LaidPage> Pages);

/// <summary>One page.</summary>
/// <param name="Items">What stands on it, in reading order.</param>
/// <param name="Outline">The headings on it and their place from the upper edge.</param>
internal sealed record LaidPage(IReadOnlyList<PlacedItem> Items, IReadOnlyList<(OutlineEntry Entry, double Y)> Outline);
