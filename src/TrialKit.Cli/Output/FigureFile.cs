using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Cli.Output;

/// <summary>Writes a figure as SVG, PNG or PDF, by the ending of the file's name.</summary>
internal static class FigureFile
{
    /// <summary>Whether a name ends as one of the forms.</summary>
    public static bool IsKnown(string path) => Ending(path) is ".SVG" or ".PNG" or ".PDF";

    /// <summary>Writes the figure; a PDF has a heading and the table below it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="notes">Sentences that belong to it.</param>
    /// <param name="table">The numbers behind it.</param>
    /// <param name="fingerprint">The mark of the data.</param>
    public static void Write(string path, IFigure figure, string title, IEnumerable<string> notes, Table table, string fingerprint) => WholeFile.Write(path, stream =>
    {
        switch (Ending(path))
        {
            case ".SVG":
                FigureFiles.WriteSvg(figure, stream);
                break;
            case ".PNG":
                FigureFiles.WritePng(figure, stream);
                break;
            default:
                Block[] blocks = [new Heading(1, title), new FigureBlock(figure, title), .. notes.Select(note => new Paragraph(note)), table];
                stream.Write(PdfReport.Render(new ReportDocument(title, title, "en-US", PageSize.Letter, new ReportFooter($"TrialKit {Library.Version}", fingerprint), blocks)));
                break;
        }
    });

    private static string Ending(string path) => Path.GetExtension(path).ToUpperInvariant();
}
