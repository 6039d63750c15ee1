using System.Security.Cryptography;
using System.Text;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Html;

/// <summary>Writes a document as one HTML file that needs nothing else: no network, no script; the same document gives the same bytes.</summary>
public static class HtmlReport
{
    /// <summary>The document as an HTML file in UTF-8.</summary>
    /// <param name="document">What to write.</param>
    public static byte[] Render(ReportDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var blocks = document.Fullest.ToArray();
        var body = new HtmlBody(blocks).Write();
        var isItalic = body.Contains("<em>", StringComparison.Ordinal);
        var footer = document.Footer.Words(" · ");
        var style = HtmlStyle.Sheet(HtmlFonts.Faces(body + document.Title + footer + Furniture, isItalic));
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        var html = new HtmlText()
            .Raw("<!DOCTYPE html>\n")
            .Raw($"<html lang=\"{HtmlText.Escape(document.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Raw($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-{hash}'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'\">\n")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Raw($"<meta name=\"description\" content=\"{HtmlText.Escape(document.Subject)}\">\n")
            .Element("title", document.Title)
            .Raw($"<link rel=\"icon\" href=\"data:,\">\n<style>{style}</style>\n</head>\n<body>\n")
            .Element("a", "To the report", "class=\"skip\" href=\"#report\"")
            .Raw(body)
            .Raw("<footer>")
            .Element("p", footer)
            .Raw("</footer>\n</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    // The letters of what stands on every page; figures draw their own in the tones of the style.
    private const string Furniture = "To the report Contents Do not rely on this: · 0123456789 •";

    /// <summary>The width at which figures are drawn for a screen, and for a telephone, in points.</summary>
    internal static (double Wide, double Narrow) FigureWidths => (FigureFiles.DefaultWidth, 290);
}
