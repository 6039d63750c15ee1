using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Draws a laid-out document: text, lines, marks and figures, with structure and outline.</summary>
/// <param name="document">What the document says of itself.</param>
/// <param name="layout">Where everything stands.</param>
/// <param name="created">The date the file bears.</param>
internal sealed class PdfDrawing(ReportDocument document, PdfLayout layout, DateTime created)
{
    private static readonly XPdfFontOptions FontOptions = new(PdfFontEncoding.Unicode);

    private readonly Dictionary<(BundledFace, double), XFont> fonts = [];

    /// <summary>The file as the PDF package writes it, still with its random marks.</summary>
    public byte[] Draw()
    {
        BundledFonts.Register();
        using var pdf = new PdfDocument();
        Describe(pdf);
        var accessibility = UAManager.ForDocument(pdf);
        accessibility.SetDocumentLanguage(document.Language);
        pdf.ViewerPreferences.DisplayDocTitle = true;
        var tagger = new Tagger(accessibility.StructureBuilder, layout.Height);

        var figures = layout.Pages.SelectMany(page => page.Items.OfType<PlacedFigure>()).ToList();
        using var sheet = new MemoryStream(figures.Count == 0 ? [] : FigureSheet.Draw(figures, created));
        using var form = figures.Count == 0 ? null : XPdfForm.FromStream(sheet);

        var drawnFigures = 0;
        var outline = new Outline(pdf);
        XGraphics? graphics = null;
        foreach (var page in layout.Pages)
        {
            // An element that goes on is cut at the end of the page before, which must still be open to be written to.
            var pdfPage = pdf.AddPage();
            graphics?.Dispose();
            graphics = null;
            pdfPage.Width = XUnit.FromPoint(layout.Width);
            pdfPage.Height = XUnit.FromPoint(layout.Height);
            graphics = XGraphics.FromPdfPage(pdfPage);

            // Decoration lies below the text; drawn first, it does not cut a paragraph's element in two.
            var canvas = graphics;
            foreach (var item in page.Items.OrderBy(item => item.Tag is null ? 0 : 1))
            {
                tagger.Draw(item, () =>
                {
                    if (item is PlacedFigure)
                    {
                        form!.PageIndex = drawnFigures++;
                    }

                    Draw(canvas, item, form);
                });
            }

            foreach (var (entry, y) in page.Outline)
            {
                outline.Add(entry, pdfPage, layout.Height - y + 6);
            }
        }

        tagger.Close();
        graphics?.Dispose();
        FigureFonts.Shrink(pdf);
        using var saved = new MemoryStream();
        pdf.Save(saved, closeStream: false);
        return saved.ToArray();
    }

    private void Describe(PdfDocument pdf)
    {
        pdf.Info.Title = PrintableText.Clean(document.Title);
        pdf.Info.Subject = PrintableText.Clean(document.Subject);
        pdf.Info.Creator = document.Footer.Version;
        pdf.Info.CreationDate = created;
        pdf.Info.ModificationDate = created;
        pdf.Options.CompressContentStreams = true;
    }

    private void Draw(XGraphics graphics, PlacedItem item, XPdfForm? form)
    {
        var box = item.Box;
        switch (item)
        {
            case PlacedText text:
                graphics.DrawString(
                    text.Text, Font(text.Face, text.Size), new XSolidBrush(PdfColors.Of(text.Color)), box.X, text.Baseline, XStringFormats.BaseLineLeft);
                break;
            case PlacedFill fill:
                graphics.DrawRectangle(new XSolidBrush(PdfColors.Of(fill.Color)), box.X, box.Y, box.Width, box.Height);
                break;
            case PlacedMark mark:
                MarkDrawing.Draw(graphics, mark);
                break;
            case PlacedFigure:
                var (width, height) = FigureSheet.PageSize(box);
                graphics.DrawImage(form!, box.X, box.Y, width, height);
                break;
            default:
                throw new NotSupportedException($"Nothing draws a {item.GetType().Name}.");
        }
    }

    private XFont Font(BundledFace face, double size)
    {
        if (!fonts.TryGetValue((face, size), out var font))
        {
            var style = face switch
            {
                BundledFace.Regular => XFontStyleEx.Regular,
                BundledFace.Italic => XFontStyleEx.Italic,
                BundledFace.SemiBold => XFontStyleEx.Bold,
                _ => XFontStyleEx.BoldItalic,
            };
            font = new XFont(BundledFonts.Family, size, style, FontOptions);
            fonts.Add((face, size), font);
        }

        return font;
    }
}
