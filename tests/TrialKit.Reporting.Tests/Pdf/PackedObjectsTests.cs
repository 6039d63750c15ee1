using System.Text;
using TrialKit.Reporting.Pdf;
using UglyToad.PdfPig;

namespace TrialKit.Reporting.Tests.Pdf;

public class PackedObjectsTests
{
    [Theory]
    [InlineData("report")]
    [InlineData("table of 300 rows")]
    [InlineData("characters the font lacks")]
    [InlineData("nothing at all")]
    public void Of_File_HoldsTheSamePagesTagsAndOutlineInLess(string name)
    {
        var loose = PdfReport.Loose(Gallery.Named(name));
        var packed = PackedObjects.Of(loose);
        using var before = PdfDocument.Open(loose);
        using var after = PdfDocument.Open(packed);

        Assert.True(packed.Length < loose.Length, $"{name}: {packed.Length} of {loose.Length} bytes");
        Assert.Equal(before.GetPages().Select(page => page.Text), after.GetPages().Select(page => page.Text));
        Assert.Equal(before.Information.Title, after.Information.Title);
        Assert.Equal(Tags(before), Tags(after));
    }

    [Fact]
    public void Of_File_EndsWithTheTableOfItsObjects()
    {
        var text = Encoding.Latin1.GetString(PdfReport.Render(Gallery.Named("report")));
        var start = int.Parse(text[(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + "startxref\n".Length)..text.LastIndexOf("\n%%EOF", StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture);

        Assert.Matches("^\\d+ 0 obj\n<</Type/XRef/W\\[1 4 2\\]/Size \\d+.*/Root ", text[start..(start + 300)]);
        Assert.DoesNotContain("\nxref\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoTable_IsRefused() => Assert.Throws<InvalidOperationException>(() => PackedObjects.Of("%PDF-1.7\n"u8.ToArray()));

    private static string[] Tags(PdfDocument pdf) => [.. StructureNode.Root(pdf).All().Select(node => $"{node.Kind} {node.Scope} {node.Alternative}")];
}
