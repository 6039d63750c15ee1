using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Tests.Pdf;
using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>The first page is one sheet whatever the trial, and a report of any trial keeps the rules of layout.</summary>
public class AnswerPageTests
{
    public static TheoryData<string, PageSize> Cases => AwkwardTrials.Cases();

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_AwkwardTrial_FillsOneSheetAndKeepsTheRulesOfLayout(string name, PageSize size)
    {
        var document = AwkwardTrials.Named(name, size).Document;
        var layout = PdfReport.Lay(document);
        var (width, height) = PageStyle.Sheet(size);
        var alone = PageFit.Slabs(
            document.Blocks.OfType<OnePage>().Single(), width - (2 * PageStyle.SideMargin), height - PageStyle.TopMargin - PageStyle.BottomMargin);

        Assert.InRange(PageFit.Used(alone), 200, height - PageStyle.TopMargin - PageStyle.BottomMargin);
        Assert.Equal("Design", layout.Pages[1].Items.OfType<PlacedText>().First(text => text.Tag is not null).Text);
        LayoutChecks.WithinMargins(layout, name);
        LayoutChecks.NoTextOverAnother(layout, name);
        LayoutChecks.NothingBelowNinePoints(layout, name);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_AwkwardTrial_AccountsForEveryComparison(string name, PageSize size)
    {
        var (analysis, document) = AwkwardTrials.Named(name, size);
        foreach (var draft in document.Blocks.OfType<OnePage>().Single().Drafts)
        {
            var paragraphs = draft.OfType<Paragraph>().Select(paragraph => paragraph.Text.Plain).ToArray();
            var marked = draft.OfType<MarkedSentences>().Sum(block => block.Sentences.Count);

            // With one comparison a measure each sentence tells one, a plain paragraph where it was not tested; else one sentence tells all of a measure.
            var told = marked + paragraphs.Count(text => text.StartsWith("Not tested, ", StringComparison.Ordinal)) + analysis.Measures.Where(measure => measure.Contrasts.Length > 1 && Array.Exists(paragraphs, text => Tells(text, measure.Measure))).Sum(measure => measure.Contrasts.Length);
            var all = analysis.Measures.Sum(measure => measure.Contrasts.Length);
            Assert.True(told > 0, $"{name}: nothing is told");
            Assert.True(told == all || Array.Exists(paragraphs, text => text.Contains($"{NumberText.CountWord(all - told)} more comparison", StringComparison.Ordinal)), $"{name}: {told} of {all} told, and the rest is not spoken of");
        }
    }

    [Fact]
    public void Of_SeveralTreatments_TellsWhatWasShownBeforeWhatWasNot()
    {
        var (analysis, document) = AwkwardTrials.Named("7 treatments, 4 blocks");
        var told = document.Blocks.OfType<OnePage>().Single().Drafts[0].OfType<Paragraph>().Select(paragraph => paragraph.Text.Plain)
            .Where(text => analysis.Measures.Any(measure => Tells(text, measure.Measure))).ToArray();
        var shown = told.Select(text => analysis.Measures.First(measure => Tells(text, measure.Measure)).Contrasts.Any(contrast => contrast.Verdict == Verdict.Shown)).ToArray();

        Assert.Contains(analysis.Measures.SelectMany(measure => measure.Contrasts), contrast => contrast.Verdict == Verdict.Shown);
        Assert.True(shown[0], told[0]);
        Assert.Equal(shown.OrderByDescending(each => each), shown);
    }

    [Theory]
    [InlineData("starter-placement", "stand", "In the furrow", "Split")]
    [InlineData("closing-wheels", "t50", "Spiked pair", "Notched disc pair", "Cast-iron pair")]
    public void Of_Example_TellsEveryTreatmentOfAMeasureThatShowedADifference(string name, string id, params string[] treatments)
    {
        var (analysis, document) = TrialReportTests.Report(name);
        var measure = analysis.Measures.Single(each => each.Measure.Id == id).Measure;
        var sentence = document.Blocks.OfType<OnePage>().Single().Drafts[^4].OfType<Paragraph>().Select(paragraph => paragraph.Text.Plain).Single(text => Tells(text, measure));

        Assert.All(treatments, treatment => Assert.Contains(treatment, sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2 treatments, 3 pairs")]
    [InlineData("12 treatments, 3 blocks")]
    [InlineData("names of 80 letters")]
    public void Of_Trial_LeavesTheWordsOfStatisticsOut(string name)
    {
        var page = document(name);
        var text = string.Join(" ", page.SelectMany(block => block switch
        {
            Paragraph paragraph => [paragraph.Text.Plain],
            MarkedSentences sentences => sentences.Sentences.Select(sentence => sentence.Text.Plain),
            Note note => [note.Heading, note.Text.Plain],
            _ => Array.Empty<string>(),
        }));

        Assert.All(["p =", "p-value", "significan", "Shapiro", "ANOVA", "degrees of freedom", "standard error", "alpha"], word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));

        static IReadOnlyList<Block> document(string name) => AwkwardTrials.Named(name).Document.Blocks.OfType<OnePage>().Single().Drafts[0];
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Render_AwkwardTrial_PrintsNothingThatIsNoNumber(string name, PageSize size)
    {
        var html = System.Text.Encoding.UTF8.GetString(HtmlReport.Render(AwkwardTrials.Named(name, size).Document));

        Assert.All(["NaN", "∞", "Infinity"], word => Assert.DoesNotContain(word, html[html.IndexOf("<main", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("the control on one strip")]
    [InlineData("the control without a weight")]
    public void Of_ControlThatCannotBeCompared_NamesBothTreatmentsAndTheTestThatJudged(string name)
    {
        var (analysis, document) = AwkwardTrials.Named(name);
        var page = document.Blocks.OfType<OnePage>().Single().Drafts[0];
        var yield = analysis.Measures.Single(measure => measure.Measure.Id == "yield");

        Assert.All(yield.Contrasts.Where(contrast => contrast.P is not null), contrast => Assert.StartsWith("Tukey", contrast.JudgedBy.Name, StringComparison.Ordinal));
        Assert.Contains("Tukey's test of all pairs", TrialWords.Level(analysis), StringComparison.Ordinal);
        Assert.Equal("The treatments against each other", page.OfType<Heading>().Single(heading => heading.Level == 2).Text);
        Assert.DoesNotContain("More than 500", string.Join(" ", page.OfType<Paragraph>().Select(paragraph => paragraph.Text.Plain)), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TreatmentOnOneStrip_SaysThatItWasNotTested()
    {
        var (analysis, _) = AwkwardTrials.Named("a treatment on one strip");

        Assert.All(analysis.Measures.SelectMany(measure => measure.Contrasts).Where(contrast => contrast.Treatment.Name == "t3"), contrast => Assert.Equal(Verdict.NotJudged, contrast.Verdict));
        Assert.Contains("Dunnett's test against the control", TrialWords.Level(analysis), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_LettersTheFontLacks_NamesThemInANote()
    {
        var note = Assert.Single(AwkwardTrials.Named("letters the font lacks").Document.Blocks.OfType<Note>(), each => each.Heading == "Letters not printed");

        Assert.Contains("U+7389", note.Text.Plain, StringComparison.Ordinal);
        Assert.Contains("U+1F33D", note.Text.Plain, StringComparison.Ordinal);
        Assert.Empty(PrintFindings.Of(AwkwardTrials.Named("2 treatments, 3 pairs").Analysis));
    }

    private static bool Tells(string text, Measure measure) =>
        text.StartsWith($"{measure.Label}: ", StringComparison.Ordinal)
        || text.StartsWith($"No difference in {MeasureWords.Of(measure).Noun} was shown in any of the ", StringComparison.Ordinal);
}
