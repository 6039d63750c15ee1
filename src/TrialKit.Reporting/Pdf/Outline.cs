using PdfSharp.Pdf;

namespace TrialKit.Reporting.Pdf;

/// <summary>Builds the outline: each heading below the nearest one of a higher rank.</summary>
/// <param name="pdf">The document it belongs to.</param>
internal sealed class Outline(PdfDocument pdf)
{
    private readonly List<(int Level, PdfOutline Entry)> open = [];

    /// <summary>Adds a heading.</summary>
    /// <param name="entry">The heading.</param>
    /// <param name="page">The page it stands on.</param>
    /// <param name="top">Its height above the page's lower edge.</param>
    public void Add(OutlineEntry entry, PdfPage page, double top)
    {
        open.RemoveAll(above => above.Level >= entry.Level);
        var siblings = open.Count == 0 ? pdf.Outlines : open[^1].Entry.Outlines;
        var added = siblings.Add(entry.Text, page, opened: true);
        added.PageDestinationType = PdfPageDestinationType.FitH;
        added.Top = top;
        open.Add((entry.Level, added));
    }
}
