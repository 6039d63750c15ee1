using SkiaSharp;

namespace TrialKit.Reporting.Pdf;

/// <summary>All figures of a report as pages of one vector document, so that they share their fonts.</summary>
internal static class FigureSheet
{
    /// <summary>The document: one page for each figure, as large as the figure's place.</summary>
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
                var canvas = document.BeginPage(width, height);
                figure.Figure.Draw(canvas, SKRect.Create(0, 0, width, height));
                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }
}
