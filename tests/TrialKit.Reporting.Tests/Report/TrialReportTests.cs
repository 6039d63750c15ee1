using System.Collections.Concurrent;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;
using UglyToad.PdfPig;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>The report of each example trial.</summary>
public class TrialReportTests
{
    private static readonly string[] Overclaims = ["no effect", "no difference between", "are equal", "is equal", "the same as the control", "proves"];

    public static TheoryData<string> Examples => ["drag-chains", "starter-placement", "closing-wheels"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_SaysEveryHeadlineSentence(string name)
    {
        var (analysis, document) = Report(name);
        var said = document.Blocks.OfType<MarkedSentences>().SelectMany(block => block.Sentences).Select(sentence => sentence.Text.Plain)
            .Concat(document.Blocks.OfType<FigureBlock>().Select(figure => figure.Figure.AltText));
        var all = string.Join(" ", said);

        var expected =
            from pair in analysis.ComparedPairs
            from entry in analysis.ContrastsOf(pair)
            where entry.Measure.Measure.IsHeadline
            select VerdictSentence.Of(entry.Measure.Measure, entry.Contrast, TrialWords.Replicates(analysis.Trial));
        Assert.NotEmpty(expected);
        Assert.All(expected, sentence => Assert.Contains(sentence, all, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("starter-placement")]
    [InlineData("closing-wheels")]
    public void Of_SeveralTreatments_SaysEachHeadlineInWordsWithWhatWouldHaveBeenSeen(string name)
    {
        var (analysis, document) = Report(name);
        var said = document.Blocks.SkipWhile(block => block is not Heading { Text: "The answers in words" }).Skip(1).TakeWhile(block => block is Paragraph).Cast<Paragraph>().Select(paragraph => paragraph.Text.Plain).ToArray();
        var headlines = analysis.Measures.Where(measure => measure.Measure.IsHeadline && !measure.Contrasts.IsEmpty).ToArray();

        Assert.Equal(headlines.Length, said.Length);
        for (var i = 0; i < said.Length; i++)
        {
            Assert.Contains(headlines[i].Measure.Label, said[i].Replace($"No difference in {MeasureWords.Of(headlines[i].Measure).Noun}", headlines[i].Measure.Label, StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Equal(headlines[i].Contrasts.Any(contrast => contrast is { Verdict: Comparison.Verdict.NotShown, Detectable: not null }), said[i].Contains("would usually show", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_NeverClaimsMoreThanWasShown(string name)
    {
        var text = Text(Report(name).Document);

        Assert.All(Overclaims, claim => Assert.DoesNotContain(claim, text, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_ListsEveryFileFindingAndStrip(string name)
    {
        var (analysis, document) = Report(name);
        var text = Text(document).ReplaceLineEndings(" ");

        Assert.Contains("strips.csv", text, StringComparison.Ordinal);
        Assert.All(analysis.Trial.Strips, strip => Assert.Contains(strip.Name, text, StringComparison.Ordinal));
        Assert.All(analysis.Trial.Strips.Where(strip => !strip.IsAnalysed), strip => Assert.Contains(Squeeze(strip.LeftOut!), Squeeze(text), StringComparison.Ordinal));
        Assert.Equal(
            analysis.AllFindings.Select(finding => (finding.Id, finding.Weight)).Distinct().Count(),
            document.Blocks.SkipWhile(block => block is not Heading { Text: "Doubts and notes" }).OfType<Note>().Count());
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_AnswersOnOnePage(string name)
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(Report(name).Document));
        var first = Squeeze(string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value)));

        Assert.Contains("usuallymeansfourtimesinfive", first, StringComparison.Ordinal);
        Assert.Contains("Nexttime:", first, StringComparison.Ordinal);
        Assert.DoesNotContain("Nexttime:", Squeeze(string.Concat(pdf.GetPage(2).Letters.Select(letter => letter.Value))), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Figures_Example_HaveTheMapOfTheRows(string name)
    {
        var document = Report(name).Document;

        var maps = document.Blocks.OfType<FigureBlock>().Where(figure => figure.Figure is RowMapFigure).ToArray();
        Assert.NotEmpty(maps);
        Assert.Equal(maps, TrialReport.Figures(document).Where(figure => figure.Figure is RowMapFigure));
        Assert.Equal("row-map", maps[0].Name);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Figures_Example_HaveNamesOfTheirOwn(string name)
    {
        var figures = TrialReport.Figures(Report(name).Document).ToArray();

        Assert.All(["design-map", "heat", "emergence", "differences-t50", "spacing"], wanted => Assert.Contains(figures, figure => figure.Name == wanted));
        Assert.All(figures, figure => Assert.Matches("^[a-z0-9-]+$", figure.Name!));
        Assert.Equal(figures.Length, figures.Select(figure => figure.Name).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_Example_GivesEachFigureAResultInWords(string name)
    {
        var figures = Report(name).Document.Blocks.OfType<FigureBlock>().ToArray();

        Assert.NotEmpty(figures);
        Assert.All(figures, figure => Assert.True(figure.Figure.AltText.Length > 40, figure.Figure.AltText));
    }

    [Fact]
    public void Fingerprint_OtherContent_IsAnother()
    {
        ReportInput[] files = [new("a.csv", "00", 1), new("b.csv", "11", 2)];

        Assert.Equal(Fingerprint.Of(files), Fingerprint.Of([files[1], files[0]]));
        Assert.NotEqual(Fingerprint.Of(files), Fingerprint.Of([files[0] with { Sha256 = "01" }, files[1]]));
    }

    // An analysis and its report never change, and each takes a second.
    private static readonly ConcurrentDictionary<string, (TrialAnalysis Analysis, ReportDocument Document)> Reports = new(StringComparer.Ordinal);

    internal static (TrialAnalysis Analysis, ReportDocument Document) Report(string name) => Reports.GetOrAdd(name, Read);

    private static (TrialAnalysis Analysis, ReportDocument Document) Read(string name)
    {
        var reading = TrialReader.Read(Path.Combine(Repository.Root, "example-trials", name));
        var analysis = TrialAnalysis.Of(reading.Trial!);
        var settings = new ReportSettings(
            PageSize.Letter,
            [.. InputFile.Of(reading).Select(file => new ReportInput(file.Name, file.Sha256, file.Rows))],
            [.. reading.Warnings.Select(warning => warning.ToString())]);
        return (analysis, TrialReport.Of(analysis, settings));
    }

    private static string Text(ReportDocument document)
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(document));
        return string.Join('\n', pdf.GetPages().Select(page => page.Text));
    }

    private static string Squeeze(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
