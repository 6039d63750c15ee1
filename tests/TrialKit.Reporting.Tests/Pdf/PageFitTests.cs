using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class PageFitTests
{
    private const double Width = 488;
    private const double Height = 600;

    [Fact]
    public void Slabs_FirstDraftTooLong_TakesTheNextThatFits()
    {
        var page = new OnePage([[new Paragraph(Gallery.Words(20000))], [new Paragraph("second")], [new Paragraph("third")]]);

        var text = Assert.Single(PageFit.Slabs(page, Width, Height).SelectMany(slab => slab.Items).OfType<PlacedText>());
        Assert.Equal("second", text.Text);
    }

    [Fact]
    public void Slabs_FigureThatGivesWay_TakesTheRoomThatIsLeftUpToItsHeight()
    {
        var figure = new FigureBlock(Gallery.Curves(2), Height: 300) { LeastHeight = 100 };

        Assert.Equal(300, FigureHeight([figure]), 6);
        Assert.InRange(FigureHeight([new Space(0), new Paragraph("a"), new Space(380), figure]), 100.5, 299.5);
        Assert.Equal(Height, PageFit.Used(PageFit.Slabs(new([[new Paragraph("a"), new Space(380), figure]]), Width, Height)), 6);
    }

    [Fact]
    public void Slabs_NoDraftFits_PrintsTheLast()
    {
        var page = new OnePage([[new Paragraph(Gallery.Words(30000))], [new Paragraph(Gallery.Words(20000))]]);

        Assert.True(PageFit.Used(PageFit.Slabs(page, Width, Height)) > Height);
    }

    [Fact]
    public void Lay_PageOfDrafts_BeginsASheetAndEndsIt()
    {
        var document = new ReportDocument(
            "t", "s", "en-US", PageSize.Letter, new("v", "f"), [new Paragraph("before"), new OnePage([[new Paragraph("alone")]]), new Paragraph("after")]);

        Assert.Equal(
            ["before", "alone", "after"],
            PdfReport.Lay(document).Pages.Select(page => page.Items.OfType<PlacedText>().First(text => text.Tag is not null).Text));
    }

    [Fact]
    public void OnePage_WithoutDraft_IsRefused() => Assert.Throws<ArgumentException>(() => new OnePage([]));

    private static double FigureHeight(IReadOnlyList<Block> draft) =>
        PageFit.Slabs(new([draft]), Width, Height).SelectMany(slab => slab.Items).OfType<PlacedFigure>().Single().Box.Height;
}
