using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Pdf;

/// <summary>Prints a document: the same document gives the same bytes, on any machine and at any time.</summary>
public static class PdfReport
{
    /// <summary>The date a file bears when none is given; a fixed one, so that files can be compared.</summary>
    public static DateTime UndatedFile { get; } = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>The document as a PDF file.</summary>
    /// <param name="document">What to print.</param>
    /// <param name="created">The date the file bears, such as the day of the trial's last record; a fixed date unless given.</param>
    /// <returns>The bytes of the file: tagged, with alternative text, outline and language.</returns>
    public static byte[] Render(ReportDocument document, DateOnly? created = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        return PackedObjects.Of(Loose(document, created));
    }

    /// <summary>The file before its objects are packed.</summary>
    internal static byte[] Loose(ReportDocument document, DateOnly? created = null)
    {
        using var neutral = new NeutralCulture();
        var date = created?.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc) ?? UndatedFile;
        return StableBytes.Of(StreamChecksums.Complete(new PdfDrawing(document, Lay(document), date).Draw()));
    }

    /// <summary>Where everything of the document stands.</summary>
    internal static PdfLayout Lay(ReportDocument document) => Paginator.Lay(document);
}
