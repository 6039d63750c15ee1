using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Sheets;
using TrialKit.Trials;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace TrialKit.Reporting.Tests.Sheets;

public class FieldSheetsTests
{
    [Theory]
    [InlineData(PageSize.Letter, UnitSystem.Us, "17 ft 5 in", "an acre")]
    [InlineData(PageSize.A4, UnitSystem.Metric, "13.33 m", "a hectare")]
    public void Render_Sheets_NameTrialPageAndEveryStop(PageSize size, UnitSystem units, string row, string area)
    {
        using var planned = new PlannedTrial(units);
        var bytes = PdfReport.Render(FieldSheets.Of(planned.Trial, PlannedTrial.Settings(size)));
        using var pdf = PdfDocument.Open(bytes);
        var pages = pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)).ToArray();

        for (var i = 0; i < pages.Length; i++)
        {
            Assert.Contains(planned.Trial.Title, pages[i], StringComparison.Ordinal);
            Assert.Contains($"page {i + 1} of {pages.Length}", pages[i], StringComparison.Ordinal);
        }

        var text = string.Join('\n', pages);
        Assert.All(["Planting record", "Stand counts", "Visits", "Plants along the tape", "Harvest"], heading => Assert.Contains(heading, text, StringComparison.Ordinal));
        Assert.Contains($"A thousandth of {area} is {row} of one row", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(planned.Trial.PlannedSpots, spot => Assert.Contains(units == UnitSystem.Us ? $"{NumberText.Number(spot.FromStart.Feet, 0)} ft" : $"{NumberText.Number(spot.FromStart.Meters, 1)} m", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_CountingSheets_KeepTreatmentsToThemselves()
    {
        using var planned = new PlannedTrial();
        var forms = FieldSheets.Of(planned.Trial, PlannedTrial.Settings()).Blocks.OfType<FormGrid>().ToArray();

        Assert.Contains(forms[0].Rows, cells => cells.Contains("chains"));
        Assert.All(forms.Skip(1), form => Assert.DoesNotContain(form.Rows, cells => cells.Contains("chains")));
    }

    [Fact]
    public void Of_CountingSheets_FollowTheWalk()
    {
        using var planned = new PlannedTrial();
        var stand = FieldSheets.Of(planned.Trial, PlannedTrial.Settings()).Blocks.OfType<FormGrid>().ElementAt(1);

        Assert.Equal(FieldWalk.Stops(planned.Trial).Select(stop => (stop.Strip.Name, stop.Spot)), stand.Rows.Select(cells => (cells[0], cells[1])));
    }

    [Fact]
    public void Of_KnownVisits_HeadTheirColumns()
    {
        using var planned = new PlannedTrial();
        DateOnly[] visits = [.. Enumerable.Range(10, 8).Select(day => new DateOnly(2026, 5, day))];
        var forms = FieldSheets.Of(planned.Trial, PlannedTrial.Settings(PageSize.Letter, visits)).Blocks.OfType<FormGrid>().ToArray();

        Assert.All(visits, visit => Assert.Contains(forms, form => form.Columns.Any(column => column.Header == NumberText.ShortDate(visit))));
    }

    [Theory]
    [InlineData(PageSize.Letter)]
    [InlineData(PageSize.A4)]
    public void Render_TheSameTrial_GivesTheSameBytes(PageSize size)
    {
        using var planned = new PlannedTrial();
        var settings = PlannedTrial.Settings(size);

        Assert.Equal(PdfReport.Render(FieldSheets.Of(planned.Trial, settings)), PdfReport.Render(FieldSheets.Of(planned.Trial, settings)));
        Assert.Equal(PdfReport.Render(FieldMap.Page(planned.Trial, planned.Plan, size, [])), PdfReport.Render(FieldMap.Page(planned.Trial, planned.Plan, size, [])));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(24)]
    public void Lay_FormOfManyRows_StaysOnThePage(int replicates)
    {
        using var planned = new PlannedTrial(replicates: replicates);
        var layout = PdfReport.Lay(FieldSheets.Of(planned.Trial, PlannedTrial.Settings()));

        Assert.All(layout.Pages, page => Assert.All(page.Items, item => Assert.InRange(item.Box.Bottom, 0, layout.Height)));
        Assert.All(layout.Pages, page => Assert.All(page.Items, item => Assert.InRange(item.Box.Right, 0, layout.Width)));
    }

    [Fact]
    public void Of_TrialWithoutStrips_IsRefused()
    {
        using var planned = new PlannedTrial();
        File.Delete(planned.In("spots.csv"));
        File.WriteAllText(planned.In("strips.csv"), "strip,block,treatment\n");
        StripTrial empty = planned.Read();

        Assert.Throws<ArgumentException>(() => FieldSheets.Of(empty, PlannedTrial.Settings()));
        Assert.Throws<ArgumentException>(() => FieldWorkbook.Write(empty, PlannedTrial.Settings(), Stream.Null));
        Assert.Throws<ArgumentException>(() => FieldPage.Write(empty, Stream.Null));
    }

    [Fact]
    public void Form_WrongShape_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => new FormGrid([], []));
        Assert.Throws<ArgumentException>(() => new FormGrid([new("a", 1)], [["1", "2"]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FormColumn("a", double.NaN));
    }
}
