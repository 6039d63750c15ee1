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
    public void Lay_TreatmentsThatDifferInTheirLastWord_AreToldApart()
    {
        using var planned = new PlannedTrial();
        var toml = File.ReadAllText(planned.In("trial.toml"))
            .Replace("label = \"none\"", "label = \"In-furrow 10-34-0 starter at 3 gal/ac\"", StringComparison.Ordinal)
            .Replace("label = \"chains\"", "label = \"In-furrow 10-34-0 starter at 5 gal/ac\"", StringComparison.Ordinal);
        File.WriteAllText(planned.In("trial.toml"), toml);
        var layout = PdfReport.Lay(FieldSheets.Of(planned.Read(), PlannedTrial.Settings()));
        var cells = layout.Pages.SelectMany(page => page.Items).OfType<PlacedText>().Where(text => text.Tag is not null)
            .GroupBy(text => text.Tag!, ReferenceEqualityComparer.Instance)
            .Select(cell => string.Join(' ', cell.Select(text => text.Text.Trim())))
            .ToArray();

        foreach (var rate in new[] { 3, 5 })
        {
            Assert.Equal(planned.Trial.Strips.Length / 2, cells.Count(cell => cell.Replace("- ", "-", StringComparison.Ordinal) == $"In-furrow 10-34-0 starter at {rate} gal/ac"));
        }

        Assert.DoesNotContain(cells, cell => cell.Contains('\u2026', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Of_StripsOfSeveralPasses_NameThePass(int passes)
    {
        using var planned = new PlannedTrial(passes: passes);
        var forms = FieldSheets.Of(planned.Trial, PlannedTrial.Settings()).Blocks.OfType<FormGrid>().ToArray();

        foreach (var form in new[] { forms[1], forms[2] })
        {
            var place = form.Columns.Select(column => column.Header).ToList().IndexOf("Pass");
            Assert.Equal(passes > 1, place >= 0);
            Assert.True(place < 0 || form.Rows[^1][place] == NumberText.Count(FieldWalk.Stops(planned.Trial)[^1].Pass!.Value));
        }
    }

    [Fact]
    public void Of_VisitSheet_SaysTheLengthOfRowAndHasRoomForTheHour()
    {
        using var planned = new PlannedTrial();
        var document = FieldSheets.Of(planned.Trial, PlannedTrial.Settings(PageSize.Letter, new DateOnly(2026, 5, 10)));
        var visits = document.Blocks.OfType<FormGrid>().ElementAt(2);

        Assert.Contains(document.Blocks.OfType<Paragraph>(), paragraph => string.Concat(paragraph.Text.Runs.Select(run => run.Text)).Contains("stands along 17 ft 5 in of row", StringComparison.Ordinal));
        Assert.Equal("Date, hour", visits.Rows[0][0]);
        Assert.All(visits.Rows[0].Skip(1), cell => Assert.Empty(cell));
    }

    [Fact]
    public void Of_TrialCountedInOtherLengths_AsksForThoseLengths()
    {
        using var planned = new PlannedTrial();
        File.Delete(planned.In("spots.csv"));
        File.WriteAllText(planned.In("stand-counts.csv"), "strip,spot,date,length_ft,plants,rows\nS01,1,2026-06-08,10,40,2\n");
        File.WriteAllText(planned.In("emergence.csv"), "strip,spot,date,plants,length_ft\nS01,1,2026-05-10 17:00,0,6\nS01,1,2026-05-12 17:00,9,6\n");
        var document = FieldSheets.Of(planned.Read(), PlannedTrial.Settings());
        var forms = document.Blocks.OfType<FormGrid>().ToArray();

        Assert.Contains("2 rows of 10 ft", forms[1].Rows[0]);
        Assert.Contains("6 ft", forms[2].Rows[1]);
        Assert.DoesNotContain(document.Blocks.OfType<Paragraph>(), paragraph => paragraph.Text.Runs.Any(run => run.Text.Contains("times 1,000", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(UnitSystem.Us, "Length cut, ft", "Width cut, ft", "Test weight, lb/bu")]
    [InlineData(UnitSystem.Metric, "Length cut, m", "Width cut, m", "Test weight, kg/hl")]
    public void Of_HarvestSheet_NamesEachUnit(UnitSystem units, params string[] heads)
    {
        using var planned = new PlannedTrial(units);
        var harvest = FieldSheets.Of(planned.Trial, PlannedTrial.Settings()).Blocks.OfType<FormGrid>().Last();

        Assert.All(heads, head => Assert.Contains(harvest.Columns, column => column.Header == head));
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
