using System.Globalization;
using TrialKit.Reporting.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;
using PageSize = TrialKit.Reporting.Document.PageSize;

namespace TrialKit.Reporting.Tests.Pdf;

public class PdfReportTests
{
    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_Twice_GivesTheSameBytes(string name, PageSize size) =>
        Assert.Equal(PdfReport.Render(Gallery.Named(name, size)), PdfReport.Render(Gallery.Named(name, size)));

    [Fact]
    public void Render_UnderAnotherCultureAndTimeZone_GivesTheSameBytes()
    {
        var expected = PdfReport.Render(Gallery.Named("report"), Gallery.Planted);
        var culture = CultureInfo.CurrentCulture;
        var zone = Environment.GetEnvironmentVariable("TZ");
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Environment.SetEnvironmentVariable("TZ", "Pacific/Kiritimati");
            TimeZoneInfo.ClearCachedData();
            Assert.NotEqual(TimeSpan.Zero, TimeZoneInfo.Local.BaseUtcOffset);
            Assert.Equal(expected, PdfReport.Render(Gallery.Named("report"), Gallery.Planted));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();
        }
    }

    [Fact]
    public void Render_AnotherDocument_GivesOtherIdentifiers()
    {
        var one = Trailer(PdfReport.Loose(Gallery.Named("report")));
        var other = Trailer(PdfReport.Loose(Gallery.Named("long words")));

        Assert.Contains("/ID", one, StringComparison.Ordinal);
        Assert.NotEqual(one[one.IndexOf("/ID", StringComparison.Ordinal)..][..80], other[other.IndexOf("/ID", StringComparison.Ordinal)..][..80]);
    }

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_AwkwardDocument_DrawsEveryLineOfTheLayout(string name, PageSize size)
    {
        var layout = PdfReport.Lay(Gallery.Named(name, size));
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named(name, size)));

        Assert.Equal(layout.Pages.Count, pdf.NumberOfPages);
        foreach (var page in pdf.GetPages())
        {
            var drawn = Squeeze(string.Concat(page.Letters.Select(letter => letter.Value)));
            Assert.All(
                layout.Pages[page.Number - 1].Items.OfType<PlacedText>(),
                text => Assert.Contains(Squeeze(text.Text), drawn, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_AwkwardDocument_EmbedsTheBundledFontAloneAndNothingLeavesThePage(string name, PageSize size)
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named(name, size)));

        foreach (var page in pdf.GetPages())
        {
            Assert.All(page.Letters, letter =>
            {
                Assert.Contains("Plex", letter.FontName, StringComparison.Ordinal);
                Assert.True(letter.PointSize >= 8.99, $"{name}: '{letter.Value}' has {letter.PointSize} points");
                Assert.True(
                    letter.BoundingBox.Left >= 40 && letter.BoundingBox.Right <= page.Width - 40 && letter.BoundingBox.Bottom >= 18 && letter.BoundingBox.Top <= page.Height - 18,
                    $"{name}, page {page.Number}: '{letter.Value}' at {letter.BoundingBox}");
            });
        }
    }

    [Fact]
    public void Render_Figures_HoldNoLettersOverOthers()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("figures one after another")));

        foreach (var page in pdf.GetPages())
        {
            var letters = page.Letters.Where(letter => letter.BoundingBox.Area > 0.5).ToList();
            Assert.True(letters.Count > 50, "a page of figures has text in it");
            for (var i = 0; i < letters.Count; i++)
            {
                foreach (var other in letters.Skip(i + 1))
                {
                    Assert.False(CoverEachOther(letters[i], other), $"page {page.Number}: '{letters[i].Value}' and '{other.Value}' at {other.BoundingBox}");
                }
            }
        }
    }

    [Fact]
    public void Render_Figures_KeepTheirTextAsText()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("figures one after another")));
        var text = string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value));

        Assert.Contains("days after planting", text, StringComparison.Ordinal);
        Assert.Contains("90 % interval 0.2 to 0.5", text, StringComparison.Ordinal);
        Assert.DoesNotContain(pdf.GetPages(), page => page.GetImages().Any());
    }

    [Fact]
    public void Render_Report_TagsHeadingsListsTablesAndFigures()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("report")));
        var nodes = StructureNode.Root(pdf).All().ToList();
        int Count(string kind) => nodes.Count(node => node.Kind == kind);

        Assert.Equal(1, Count("H1") + Count("Heading1"));
        Assert.Equal(2, Count("H2"));
        Assert.Equal(1, Count("Table"));
        Assert.Equal(7, Count("TR"));
        Assert.Equal(5, Count("TH"));
        Assert.Equal(30, Count("TD"));
        Assert.Equal(2, Count("LI"));
        Assert.True(Count("P") >= 10);
        Assert.All(nodes.Where(node => node.Kind == "TH"), node => Assert.Equal("Column", node.Scope));
        Assert.All(nodes.Where(node => node.Kind == "Table"), table => Assert.All(table.Children, row => Assert.Equal("TR", row.Kind)));
        Assert.Equal(
            ["Half of the seeds were up 0.3 days sooner.", "The mean difference was 0.3 days, 0.2 to 0.5."],
            nodes.Where(node => node.Kind == "Figure").Select(node => node.Alternative));
    }

    [Fact]
    public void Render_TableOverPages_IsOneTableInTheStructure()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("table of 300 rows")));
        var nodes = StructureNode.Root(pdf).All().ToList();

        Assert.Equal(301, Assert.Single(nodes, node => node.Kind == "Table").Children.Count);
        Assert.Equal(5, nodes.Count(node => node.Kind == "TH"));
        Assert.Equal(1500, nodes.Count(node => node.Kind == "TD"));
    }

    [Fact]
    public void Render_ParagraphsOverPages_AreOneElementEach()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("paragraphs over pages")));

        Assert.True(pdf.NumberOfPages > 5);
        Assert.Equal(40, StructureNode.Root(pdf).All().Count(node => node.Kind == "P"));
    }

    [Fact]
    public void Render_Report_NamesItsLanguageAndTitleAndClaimsNoStandard()
    {
        var bytes = PdfReport.Render(Gallery.Named("report"), Gallery.Planted);
        using var pdf = PdfDocument.Open(bytes);
        var catalog = pdf.Structure.Catalog.CatalogDictionary;

        Assert.Equal("Closing chains (invented numbers)", pdf.Information.Title);
        Assert.Equal("en-US", (StructureNode.Get(pdf, catalog, "Lang") as StringToken)?.Data);
        Assert.StartsWith("D:20260427", pdf.Information.CreationDate, StringComparison.Ordinal);
        var mark = Assert.IsType<DictionaryToken>(StructureNode.Get(pdf, catalog, "MarkInfo"));
        Assert.True((StructureNode.Get(pdf, mark, "Marked") as BooleanToken)?.Data);
        Assert.True(pdf.TryGetXmpMetadata(out var metadata));
        Assert.DoesNotContain("pdfuaid", metadata.GetXDocument().ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("pdfaid", metadata.GetXDocument().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Render_Report_HasAnOutlineOfItsHeadings()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Gallery.Named("report")));

        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        var root = Assert.Single(bookmarks!.Roots);
        Assert.Equal("Do closing chains bring corn up sooner?", root.Title);
        Assert.Equal(["Doubts", "The measures side by side"], root.Children.Select(child => child.Title));
    }

    [Fact]
    public void Render_Report_IsSmall() => Assert.InRange(PdfReport.Render(Gallery.Named("report")).Length, 10_000, 200_000);

    private static bool CoverEachOther(Letter a, Letter b)
    {
        var (p, q) = (a.BoundingBox, b.BoundingBox);
        var width = Math.Min(p.Right, q.Right) - Math.Max(p.Left, q.Left);
        var height = Math.Min(p.Top, q.Top) - Math.Max(p.Bottom, q.Bottom);
        return width > 0 && height > 0 && width * height > 0.25 * Math.Min(p.Area, q.Area);
    }

    // PdfPig leaves out letters of no width and reads a no-break space as a space.
    private static string Squeeze(string text) => text.Replace(" ", string.Empty, StringComparison.Ordinal).Replace("\u00A0", string.Empty, StringComparison.Ordinal);

    private static string Trailer(byte[] file) => System.Text.Encoding.Latin1.GetString(file, file.Length - 400, 400);
}
