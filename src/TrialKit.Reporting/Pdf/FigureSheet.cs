using SkiaSharp;

namespace TrialKit.Reporting.Pdf;

/// <summary>All figures of a report as pages of one vector document, so that they share their fonts.</summary>
internal static class FigureSheet
{
    /// <summary>The size of a figure's page: whole points, since the page that draws it reads no parts of them.</summary>
    public static (float Width, float Height) PageSize(Box place) => ((float)Math.Ceiling(place.Width), (float)Math.Ceiling(place.Height));

    /// <summary>The document: one page for each figure.</summary>
    public static byte[] Draw(IReadOnlyList<PlacedFigure> figures, DateTime created)
    {
        using var stream = new MemoryStream();
        var metadata = SKDocumentPdfMetadata.Default;
        metadata.Creation = created;
        metadata.Modified = created;
        using (var document = SKDocument.CreatePdf(stream, metadata))
        {
            foreach (var figure in figures)
            {
                var width = (float)figure.Box.Width;
                var height = (float)figure.Box.Height;
                var (pageWidth, pageHeight) = PageSize(figure.Box);
                var canvas = document.BeginPage(pageWidth, pageHeight);
                figure.Figure.Draw(canvas, SKRect.Create(0, 0, width, height));
                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }
}
