namespace TrialKit.Reporting.Document;

/// <summary>A report as plain data: what it says, in order, without how a page is drawn.</summary>
/// <param name="Title">The document's title, for the reader's window and the head of later pages.</param>
/// <param name="Subject">One sentence on what the report is about.</param>
/// <param name="Language">The language of the text as a BCP 47 tag, such as <c>en-US</c>.</param>
/// <param name="PageSize">The sheet it is printed on.</param>
/// <param name="Footer">What stands at the foot of each page.</param>
/// <param name="Blocks">The content, first to last.</param>
public sealed record ReportDocument(
    string Title,
    string Subject,
    string Language,
    PageSize PageSize,
    ReportFooter Footer,
    IReadOnlyList<Block> Blocks)
{
    /// <summary>The content with each page of drafts in its fullest form.</summary>
    public IEnumerable<Block> Fullest => Blocks.SelectMany(block => block is OnePage page ? page.Drafts[0] : [block]);
}
