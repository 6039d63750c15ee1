using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Sheets;
using TrialKit.Reporting.Words;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UglyToad.PdfPig;
using UnitsNet;
using PageSize = TrialKit.Reporting.Document.PageSize;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>The cautions stand on every page that shows an amount near the seed.</summary>
public class StarterPagesTests
{
    private static StarterSite Site => new("corn", Length.FromInches(30), SoilClass.Sandy, CationExchange: 9);

    private static StarterReview Review => ReviewOf("10-34-0", "10-34-0");

    /// <summary>Two liquids in one band.</summary>
    private static StarterReview MixedReview
    {
        get
        {
            ImmutableArray<PlacedShare> band = [new(Placement.BesideAndBelow, 1)];
            return StarterReview.Of([new("mixed", "Mixed", Cost: null, [Products("10-34-0", "10-34-0", 6.65) with { Placements = band }, Products("KTS", "0-0-25-17S", 2) with { Placements = band }])], Site)!;
        }
    }

    private static ImmutableArray<StreamFlow> Mixed => FlowsOf(MixedReview);

    private static StarterReview ReviewOf(string name, string stated, double gallons = 7) => StarterReview.Of([new("split", "Split", Cost: null, [Products(name, stated, gallons)])], Site)!;

    private static Product Products(string name, string stated, double gallons)
    {
        Assert.True(NutrientAnalysis.TryParse(stated, out var analysis));
        return new(name, [new(Placement.InFurrow, 0.4), new(Placement.BesideAndBelowBothSides, 0.6)], ApplicationRate.FromGallonsPerAcre(gallons), LiquidDensity.FromPoundsPerGallon(11.65), analysis);
    }

    private static ImmutableArray<StreamFlow> Flows => FlowsOf(Review);

    private static ImmutableArray<StreamFlow> FlowsOf(StarterReview review) => StreamFlow.Of(review, new(Speed.FromMilesPerHour(5), Pressure.FromPoundsForcePerSquareInch(20), []));

    [Theory]
    [InlineData(UnitSystem.Us, PageSize.Letter)]
    [InlineData(UnitSystem.Metric, PageSize.A4)]
    public void StarterReport_AsPdf_CarriesEveryCaution(UnitSystem units, PageSize size) =>
        AssertCautions(Text(PdfReport.Render(StarterReport.Of("A starter", Review, Flows, units, size, []))));

    [Fact]
    public void StarterReport_AsHtml_CarriesEveryCaution() =>
        AssertCautions(Html(StarterReport.Of("A starter", Review, Flows, UnitSystem.Us, PageSize.Letter, [])));

    [Fact]
    public void TrialReport_AsPdf_CarriesEveryCautionAndEachSourcesNote()
    {
        var text = Text(PdfReport.Render(TrialReportTests.Report("starter-placement").Document));
        AssertCautions(text);
        Assert.All(LimitSources.All, source => Assert.Contains(Squeeze(source.Note), text, StringComparison.Ordinal));
    }

    [Fact]
    public void TrialReport_AsHtml_CarriesEveryCautionAndEachSourcesNote()
    {
        var text = Html(TrialReportTests.Report("starter-placement").Document);
        AssertCautions(text);
        Assert.All(LimitSources.All, source => Assert.Contains(Squeeze(source.Note), text, StringComparison.Ordinal));
    }

    [Fact]
    public void StarterReport_FromNoFile_HasNoMarkOfData()
    {
        var text = Text(PdfReport.Render(StarterReport.Of("A starter", Review, Flows, UnitSystem.Us, PageSize.Letter, [])));
        Assert.DoesNotContain("e3b0c442", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\u00B7data", text, StringComparison.Ordinal);
        Assert.DoesNotContain("e3b0c442", Html(CalibrationSheet.Of("Catch test", Flows, 8, UnitSystem.Us, PageSize.Letter, [])), StringComparison.Ordinal);
        Assert.Contains("data" + Fingerprint.Of([new("trial.toml", "00", null)]), Text(PdfReport.Render(StarterReport.Of("A starter", Review, Flows, UnitSystem.Us, PageSize.Letter, [new("trial.toml", "00", null)]))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PageSize.Letter, UnitSystem.Us)]
    [InlineData(PageSize.A4, UnitSystem.Metric)]
    public void CalibrationSheet_EightRows_HasOneSideOfPaperForEachPlacement(PageSize size, UnitSystem units)
    {
        var title = "Catch test: Starter in the furrow, beside it, or both, the creek bottom";
        var one = CalibrationSheet.Of(title, Flows, 8, units, size, []);
        var mixed = CalibrationSheet.Of(title, Mixed, 8, units, size, []);
        Assert.Equal(2, PdfReport.Lay(one).Pages.Count);
        Assert.Single(PdfReport.Lay(mixed).Pages);
    }

    [Fact]
    public void CalibrationSheet_TwoLiquidsInOnePlace_NamesEachAndTheirTotal()
    {
        var table = CalibrationSheet.Of("Catch test", Mixed, 8, UnitSystem.Us, PageSize.Letter, []).Blocks.OfType<Table>().First();
        Assert.Equal(["10-34-0", "KTS", "10-34-0 with KTS together", "Water in place of them"], table.Rows.Select(row => row.Cells[0]));
        Assert.Equal(["159 (151 to 167)", "48 (45 to 50)", "207 (196 to 217)"], table.Rows.Take(3).Select(row => row.Cells[1]));
    }

    [Fact]
    public void StarterReport_TwoLiquidsInOnePlace_NamesTheProductOfEachLineAndTheTotal()
    {
        var catches = StarterReport.Of("A starter", MixedReview, Mixed, UnitSystem.Us, PageSize.Letter, []).Blocks.OfType<Table>().Single(table => table.Caption?.StartsWith("Catch test", StringComparison.Ordinal) == true);
        Assert.Equal(["Mixed, 10-34-0", "Mixed, KTS", "Mixed, 10-34-0 with KTS together"], catches.Rows.Select(row => row.Cells[0]));
    }

    [Fact]
    public void Name_TreatmentNamedAsItsProduct_IsSaidOnce()
    {
        var review = StarterReview.Of([new("10-34-0", "10-34-0", Cost: null, [Products("10-34-0", "10-34-0", 7)])], Site)!;
        Assert.DoesNotContain("10-34-0, 10-34-0", StarterWords.Flow(FlowsOf(review)[0], UnitSystem.Us), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(6.9, "at the 8 lb/ac of Kansas State University")]
    [InlineData(6.0, "under the 8 lb/ac of Kansas State University")]
    [InlineData(7.5, "over the 8 lb/ac of Kansas State University")]
    public void Screen_AmountBesideItsLimit_IsNeverOverAFigureThatPrintsTheSame(double gallons, string expected)
    {
        var product = Products("10-34-0", "10-34-0", gallons) with { Placements = [new(Placement.InFurrow, 1)] };
        var review = StarterReview.Of([new("t", "Treatment", Cost: null, [product])], new("corn", Length.FromInches(30), SoilClass.Medium, CationExchange: null))!;
        Assert.Contains(expected, StarterWords.Screen(review.Treatments[0].Screen[0], UnitSystem.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void InOneLine_OverSeveralLimits_LeadsWithTheLabelAndNamesTheSourcesThatFit()
    {
        var review = ReviewOf("10-34-0", "10-34-0", gallons: 30);
        var (full, brief) = (StarterWords.InOneLine("starter-over-limit", review, 260)!, StarterWords.InOneLine("starter-over-limit", review, 80)!);
        Assert.Equal("The label governs. Over the limits of Kansas State University, a soil-testing laboratory's guide and the Tri-State recommendations: Split; see What was put near the seed.", full);
        Assert.Equal("The label governs. Over 3 published limits; see What was put near the seed.", brief);
        Assert.Null(StarterWords.InOneLine("starter-soil-not-known", review, 80));
        Assert.StartsWith("The label governs. In the seed furrow lies what is never to be there: potassium thiosulfate (Split)", StarterWords.InOneLine("never-in-furrow", ReviewOf("KTS", "0-0-25-17S"), 260), StringComparison.Ordinal);
    }

    [Fact]
    public void AnswerPage_StarterOverALimit_NamesTheSourcesAndWhereMoreStands()
    {
        using var pdf = PdfDocument.Open(PdfReport.Render(TrialReportTests.Report("starter-placement").Document));
        var first = Squeeze(string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value)));
        Assert.Contains(Squeeze("The label governs. Over the limits of Kansas State University and a soil-testing laboratory's guide"), first, StringComparison.Ordinal);
        Assert.Contains(Squeeze("see What was put near the seed"), first, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(36)]
    public void CalibrationSheet_AsPdf_CarriesEveryCautionAndARowForEachRow(int rows)
    {
        var document = CalibrationSheet.Of("Catch test", Flows, rows, UnitSystem.Us, PageSize.Letter, []);
        AssertCautions(Text(PdfReport.Render(document)));
        var forms = document.Blocks.OfType<Table>().Where(table => table.IsForm && table.Columns[0].Header == "Row").ToArray();
        Assert.Equal(Flows.Length, forms.Length);
        Assert.All(forms, form => Assert.Equal(rows, form.Rows.Count));
        Assert.All(forms, form => Assert.All(form.Rows, row => Assert.Equal(5, row.Cells.Count(cell => cell.Length == 0))));
    }

    [Fact]
    public void CalibrationSheet_TwoLiquids_CautionsStandInEachPart()
    {
        var blocks = CalibrationSheet.Of("Catch test", Flows, 8, UnitSystem.Us, PageSize.Letter, []).Blocks;
        Assert.Equal(Flows.Length, blocks.OfType<Note>().Count(note => note.Text.Plain == StarterCautions.LabelFirst));
    }

    [Fact]
    public void CalibrationSheet_MaterialNeverInTheFurrow_SaysSoForTheFurrowAlone()
    {
        var flows = FlowsOf(ReviewOf("potassium thiosulfate", "0-0-25-17S"));
        var notes = CalibrationSheet.Of("Catch test", flows, 8, UnitSystem.Us, PageSize.Letter, []).Blocks.OfType<Note>().Where(note => note.Text.Plain.Contains("never put potassium thiosulfate into the seed furrow", StringComparison.Ordinal));

        Assert.Equal(2, flows.Length);
        Assert.Equal(NoteWeight.Grave, Assert.Single(notes).Weight);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(121)]
    public void CalibrationSheet_ImpossibleRows_AreRefused(int rows) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationSheet.Of("Catch test", Flows, rows, UnitSystem.Us, PageSize.Letter, []));

    [Fact]
    public void CalibrationSheet_WithoutALiquid_IsRefused() =>
        Assert.Throws<ArgumentException>(() => CalibrationSheet.Of("Catch test", [], 8, UnitSystem.Us, PageSize.Letter, []));

    [Fact]
    public void CalibrationSheet_Twice_GivesTheSameBytes() => Assert.Equal(Sheet(), Sheet());

    [Fact]
    public void CalibrationSheet_Boxes_AreDrawn()
    {
        var boxed = PdfReport.Lay(CalibrationSheet.Of("Catch test", Flows, 8, UnitSystem.Us, PageSize.Letter, []));
        Assert.True(boxed.Pages.Sum(page => page.Items.OfType<PlacedFill>().Count()) > 8 * 5 * 4, "four sides for each box");
    }

    private static byte[] Sheet() => PdfReport.Render(CalibrationSheet.Of("Catch test", Flows, 8, UnitSystem.Us, PageSize.Letter, []));

    private static void AssertCautions(string text) =>
        Assert.All(StarterCautions.All, caution => Assert.Contains(Squeeze(caution.Text), text, StringComparison.Ordinal));

    private static string Text(byte[] bytes)
    {
        using var pdf = PdfDocument.Open(bytes);
        return Squeeze(string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
    }

    private static string Html(ReportDocument document) =>
        Squeeze(WebUtility.HtmlDecode(Regex.Replace(Encoding.UTF8.GetString(HtmlReport.Render(document)), "<[^>]*>", "", RegexOptions.None, TimeSpan.FromSeconds(5))));

    private static string Squeeze(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
