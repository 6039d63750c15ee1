using TrialKit.Reporting.Document;
using TrialKit.Reporting.PlainText;

namespace TrialKit.Reporting.Tests.PlainText;

public class TextReportTests
{
    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_AnyDocument_EndsWithItsFooter(string name, PageSize size)
    {
        var text = TextReport.Render(Gallery.Named(name, size));

        Assert.EndsWith("TrialKit 0.1.0 · data 7f3a 91c2\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" \n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_ALongParagraph_IsBrokenAtTheWidth()
    {
        var lines = TextReport.Render(Document(new Paragraph(string.Join(' ', Enumerable.Repeat("strip", 100)))), 40).Split('\n');

        Assert.All(lines, line => Assert.True(line.Length <= 40, line));
        Assert.Equal(100, lines.Sum(line => line.Split("strip").Length - 1));
    }

    [Fact]
    public void Render_ATable_SetsColumnsApartByTwoSpaces()
    {
        var text = TextReport.Render(Document(new Table("Counts", [new("Pair", Alignment: ColumnAlignment.Right), new("With chains")], [TableRow.Of("1", "31"), TableRow.Of("12", "8")])));

        Assert.Contains("Counts\nPair  With chains\n   1  31\n  12  8\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_AForm_ShowsRoomToWrite()
    {
        var text = TextReport.Render(Document(new NumberedQuestion(3, "Add them up."), new FormGrid([new("Pair", 1), new("d", 1)], [["1", ""]]), new AnswerRoom(4, "sum, plants")));

        Assert.Contains("3. Add them up.", text, StringComparison.Ordinal);
        Assert.Contains("1     ______", text, StringComparison.Ordinal);
        Assert.Contains("sum, plants: ______", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_NoRoomForAWord_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TextReport.Render(Document(), 19));

    private static ReportDocument Document(params Block[] blocks) => new("t", "s", "en-US", PageSize.Letter, new ReportFooter("TrialKit", "0"), blocks);
}
