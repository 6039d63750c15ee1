using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Sheets;
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
    private static StarterReview Review => ReviewOf("10-34-0", "10-34-0");

    private static StarterReview ReviewOf(string name, string stated)
    {
        Assert.True(NutrientAnalysis.TryParse(stated, out var analysis));
        var product = new Product(name, [new(Placement.InFurrow, 0.4), new(Placement.BesideAndBelowBothSides, 0.6)], ApplicationRate.FromGallonsPerAcre(7), LiquidDensity.FromPoundsPerGallon(11.65), analysis);
        return StarterReview.Of([new("split", "Split", Cost: null, [product])], new("corn", Length.FromInches(30), SoilClass.Sandy, CationExchange: 9))!;
    }

    private static ImmutableArray<StreamFlow> Flows => FlowsOf(Review);

    private static ImmutableArray<StreamFlow> FlowsOf(StarterReview review) => StreamFlow.Of(review, new(Speed.FromMilesPerHour(5), Pressure.FromPoundsForcePerSquareInch(20), []));

    [Theory]
    [InlineData(UnitSystem.Us, PageSize.Letter)]
    [InlineData(UnitSystem.Metric, PageSize.A4)]
    public void StarterReport_AsPdf_CarriesEveryCaution(UnitSystem units, PageSize size) =>
        AssertCautions(PdfReport.Render(StarterReport.Of("A starter", Review, Flows, units, size, [])));

    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(36)]
    public void CalibrationSheet_AsPdf_CarriesEveryCautionAndARowForEachRow(int rows)
    {
        var document = CalibrationSheet.Of("Catch test", Flows, rows, UnitSystem.Us, PageSize.Letter, []);
        AssertCautions(PdfReport.Render(document));
        var forms = document.Blocks.OfType<Table>().Where(table => table is { IsForm: true, Caption: "Caught" }).ToArray();
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

    private static void AssertCautions(byte[] bytes)
    {
        using var pdf = PdfDocument.Open(bytes);
        var text = Squeeze(string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
        Assert.All(StarterCautions.All, caution => Assert.Contains(Squeeze(caution.Text), text, StringComparison.Ordinal));
    }

    private static string Squeeze(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
