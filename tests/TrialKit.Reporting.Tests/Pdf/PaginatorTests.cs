using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class PaginatorTests
{
    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Lay_AwkwardDocument_KeepsWithinTheMargins(string name, PageSize size) =>
        LayoutChecks.WithinMargins(PdfReport.Lay(Gallery.Named(name, size)), name);

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Lay_AwkwardDocument_LaysNoTextOverAnother(string name, PageSize size) =>
        LayoutChecks.NoTextOverAnother(PdfReport.Lay(Gallery.Named(name, size)), name);

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Lay_AwkwardDocument_SetsNothingBelowNinePoints(string name, PageSize size) =>
        LayoutChecks.NothingBelowNinePoints(PdfReport.Lay(Gallery.Named(name, size)), name);

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Lay_AwkwardDocument_NeverEndsAPageWithAHeading(string name, PageSize size)
    {
        var layout = PdfReport.Lay(Gallery.Named(name, size));
        var blocks = layout.Pages.Select(page => page.Items.Where(item => item.Tag is not null).ToList()).ToList();

        // A heading after which nothing comes has nothing to stay with; neither have headings that fill a page.
        foreach (var (items, number) in blocks.Take(blocks.Count - 1).Select((items, i) => (items, i + 1)).Where(each => each.items.Count > 0))
        {
            var onlyHeadings = items.All(item => IsHeading(item.Tag!));
            Assert.True(onlyHeadings || !IsHeading(items[^1].Tag!), FormattableString.Invariant($"{name}: page {number} ends with {items[^1]}"));
        }
    }

    [Fact]
    public void Lay_TableOverPages_RepeatsItsHeadOnEachAndKeepsEveryRow()
    {
        var layout = PdfReport.Lay(Gallery.Named("table of 300 rows"));
        var rows = layout.Pages.SelectMany(page => page.Items).OfType<PlacedText>().Where(text => text.Text.StartsWith('r')).Select(text => text.Text);

        Assert.True(layout.Pages.Count >= 8, $"{layout.Pages.Count} pages");
        Assert.All(layout.Pages, page => Assert.Single(page.Items.OfType<PlacedText>(), text => text.Text == "Column 1"));
        Assert.Equal(Enumerable.Range(1, 300).Select(i => FormattableString.Invariant($"r{i}")), rows);
    }

    [Fact]
    public void Lay_TableOverPages_TagsTheHeadOnce()
    {
        var heads = PdfReport.Lay(Gallery.Named("table of 300 rows")).Pages
            .SelectMany(page => page.Items).OfType<PlacedText>().Where(text => text.Text == "Column 1").ToList();

        Assert.NotNull(heads[0].Tag);
        Assert.All(heads.Skip(1), head => Assert.Null(head.Tag));
    }

    [Fact]
    public void Lay_HeadingBeforeAHighFigure_StandsOnTheFiguresPage()
    {
        var page = Assert.Single(
            PdfReport.Lay(Gallery.Named("heading before a high figure")).Pages,
            each => each.Items.OfType<PlacedFigure>().Any());

        Assert.Contains(page.Items.OfType<PlacedText>(), text => text.Text == "Kept with its figure");
        Assert.Contains(page.Items.OfType<PlacedText>(), text => text.Text == "Caption");
    }

    [Fact]
    public void Lay_Pages_AreNumberedOfTheirCount()
    {
        var layout = PdfReport.Lay(Gallery.Named("table of 300 rows"));

        for (var i = 0; i < layout.Pages.Count; i++)
        {
            Assert.Contains(
                layout.Pages[i].Items.OfType<PlacedText>(),
                text => text.Text == FormattableString.Invariant($"page {i + 1} of {layout.Pages.Count}"));
        }
    }

    [Fact]
    public void Lay_ParagraphOverPages_LeavesNoSingleLine()
    {
        var pages = PdfReport.Lay(Gallery.Named("paragraphs over pages")).Pages;
        var lines = pages
            .SelectMany((page, number) => page.Items.OfType<PlacedText>().Where(text => text.Tag is not null).Select(text => (text.Tag, number, text.Box.Y)))
            .GroupBy(line => line.Tag)
            .Where(paragraph => paragraph.Select(line => line.number).Distinct().Count() > 1)
            .ToList();

        Assert.NotEmpty(lines);
        Assert.All(lines, paragraph => Assert.All(
            paragraph.GroupBy(line => line.number),
            part => Assert.True(part.Select(line => line.Y).Distinct().Count() > 1, "a single line was left")));
    }

    private static bool IsHeading(Tag tag) => tag.Kind is TagKind.Heading1 or TagKind.Heading2 or TagKind.Heading3;
}
