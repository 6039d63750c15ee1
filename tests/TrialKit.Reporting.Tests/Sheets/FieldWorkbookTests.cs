using System.Globalization;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using TrialKit.Planning;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Sheets;

namespace TrialKit.Reporting.Tests.Sheets;

public class FieldWorkbookTests
{
    private static readonly DateOnly[] Visits = [new(2026, 5, 10), new(2026, 5, 13)];

    [Fact]
    public void Write_Workbook_IsValidOpenXml()
    {
        using var planned = new PlannedTrial();
        using var workbook = SpreadsheetDocument.Open(new MemoryStream(Write(planned)), isEditable: false);

        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(workbook, TestContext.Current.CancellationToken).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}"));
    }

    [Fact]
    public void Write_TheSameTrial_GivesTheSameBytes()
    {
        using var planned = new PlannedTrial();

        Assert.Equal(Write(planned), Write(planned));
    }

    [Fact]
    public void Write_Sheets_OfferStripsAndExplainEachColumn()
    {
        using var planned = new PlannedTrial();
        using var workbook = SpreadsheetDocument.Open(new MemoryStream(Write(planned)), isEditable: false);
        var book = workbook.WorkbookPart!;

        Assert.Equal(["strips", "stand-counts", "emergence", "plants", "harvest", "_lists"], book.Workbook!.Descendants<Sheet>().Select(sheet => sheet.Name!.Value!));
        foreach (var name in new[] { "stand-counts", "emergence", "plants", "harvest" })
        {
            var part = Part(book, name);
            var rules = part.Worksheet!.Descendants<DataValidation>().ToArray();
            Assert.Contains(rules, rule => rule.Type!.Value == DataValidationValues.List && rule.Formula1!.Text == $"_lists!$A$1:$A${planned.Trial.Strips.Length}");
            Assert.Equal(Headers(part).Count, part.WorksheetCommentsPart!.Comments!.CommentList!.Elements<Comment>().Count());
        }

        var list = Part(book, "_lists").Worksheet!.Descendants<Cell>().Select(cell => cell.InnerText);
        Assert.Equal(planned.Trial.Strips.Select(strip => strip.Name), list);
    }

    [Fact]
    public void Read_FilledWorkbook_IsTheTrialOfTheTables()
    {
        using var asTables = new PlannedTrial();
        using var asWorkbook = new PlannedTrial();
        WriteTables(asTables);
        File.WriteAllBytes(asWorkbook.In("trial.xlsx"), Write(asWorkbook));
        File.Delete(asWorkbook.In("strips.csv"));
        Fill(asWorkbook);

        var expected = PlannedTrial.Records(asTables.Read());
        Assert.True(expected.Count > 150, $"{expected.Count} records");
        Assert.Equal(expected, PlannedTrial.Records(asWorkbook.Read()));
    }

    [Fact]
    public void Write_NamesWithMarkup_AreKept()
    {
        using var planned = new PlannedTrial();
        var strips = File.ReadAllText(planned.In("strips.csv")).Replace("S01", "a<b>&\"\"c", StringComparison.Ordinal).Replace("a<b>&\"\"c", "\"a<b>&\"\"c\"", StringComparison.Ordinal);
        File.Delete(planned.In("spots.csv"));
        File.WriteAllText(planned.In("strips.csv"), strips);
        using var stream = new MemoryStream();
        FieldWorkbook.Write(planned.Read(), PlannedTrial.Settings(), stream);
        using var workbook = SpreadsheetDocument.Open(stream, isEditable: false);

        Assert.Contains("a<b>&\"c", Part(workbook.WorkbookPart!, "_lists").Worksheet!.Descendants<Cell>().Select(cell => cell.InnerText));
    }

    private static byte[] Write(PlannedTrial planned)
    {
        using var stream = new MemoryStream();
        FieldWorkbook.Write(planned.Trial, PlannedTrial.Settings(PageSize.Letter, Visits), stream);
        return stream.ToArray();
    }

    // Made-up figures that differ from stop to stop.
    private static int Count(int stop, int visit) => visit == 0 ? stop % 3 : 20 + (stop % 11);

    private static void WriteTables(PlannedTrial planned)
    {
        var stops = FieldWalk.Stops(planned.Trial);
        var counts = new StringBuilder("strip,spot,date,length_ft,plants,planter_row\n");
        var visits = new StringBuilder("strip,spot,date,plants,length_ft\n");
        var plants = new StringBuilder("strip,spot,plant,position_in,first_seen,note\n");
        var harvest = new StringBuilder("strip,weight_lb,moisture_pct,test_weight_lb_bu,note\n");
        for (var i = 0; i < stops.Length; i++)
        {
            counts.AppendLine(CultureInfo.InvariantCulture, $"{stops[i].Strip},{stops[i].Spot},2026-06-08,17.424,{Count(i, 1) + 2},{stops[i].PlanterRow}");
        }

        for (var visit = 0; visit < Visits.Length; visit++)
        {
            for (var i = 0; i < stops.Length; i++)
            {
                visits.AppendLine(CultureInfo.InvariantCulture, $"{stops[i].Strip},{stops[i].Spot},{Visits[visit]:yyyy-MM-dd} 17:30,{(visit == 0 ? 0 : Count(i, visit))},17.424");
            }
        }

        plants.AppendLine("S01,A,1,4.25,2026-05-13 17:30,").AppendLine("S01,A,2,10.5,2026-05-13 17:30,double");
        foreach (var strip in FieldWalk.Strips(planned.Trial))
        {
            harvest.AppendLine(CultureInfo.InvariantCulture, $"{strip},{6800 + (10 * strip.Order)},17.9,56.5,lodged");
        }

        var lines = File.ReadAllLines(planned.In("strips.csv"));
        lines[0] = lines[0].Replace(",left_out,", ",planted,left_out,", StringComparison.Ordinal);
        for (var i = 1; i < lines.Length; i++)
        {
            lines[i] = lines[i].Replace(",,pass", i == 1 ? ",2026-05-05,clogged row,pass" : ",,,pass", StringComparison.Ordinal);
        }

        File.WriteAllText(planned.In("strips.csv"), string.Join('\n', lines) + "\n");
        File.WriteAllText(planned.In("stand-counts.csv"), counts.ToString().ReplaceLineEndings("\n"));
        File.WriteAllText(planned.In("emergence.csv"), visits.ToString().ReplaceLineEndings("\n"));
        File.WriteAllText(planned.In("plants.csv"), plants.ToString().ReplaceLineEndings("\n"));
        File.WriteAllText(planned.In("harvest.csv"), harvest.ToString().ReplaceLineEndings("\n"));
    }

    /// <summary>Fills in the cells that a person would, in the rows that are there.</summary>
    private static void Fill(PlannedTrial planned)
    {
        using var workbook = SpreadsheetDocument.Open(planned.In("trial.xlsx"), isEditable: true);
        var book = workbook.WorkbookPart!;
        var stops = FieldWalk.Stops(planned.Trial);
        var counts = Part(book, "stand-counts");
        var visits = Part(book, "emergence");
        for (var i = 0; i < stops.Length; i++)
        {
            Set(counts, i + 2, "date", new DateTime(2026, 6, 8));
            Set(counts, i + 2, "plants", Count(i, 1) + 2);
            for (var visit = 0; visit < Visits.Length; visit++)
            {
                var row = 2 + (visit * stops.Length) + i;
                Set(visits, row, "date", Visits[visit].ToDateTime(new TimeOnly(17, 30)));
                Set(visits, row, "plants", visit == 0 ? 0 : Count(i, visit));
            }
        }

        // What came out otherwise at planting.
        var record = Part(book, "strips");
        var first = FieldWalk.Strips(planned.Trial)[0];
        Set(record, 2, "planted", first.Planted.AddDays(1).ToDateTime(TimeOnly.MinValue));
        Set(record, 2, "left_out", "clogged row");
        var plants = Part(book, "plants");
        foreach (var (row, name, position, note) in new[] { (2, "1", 4.25, ""), (3, "2", 10.5, "double") })
        {
            Set(plants, row, "strip", "S01");
            Set(plants, row, "spot", "A");
            Set(plants, row, "plant", name);
            Set(plants, row, "position_in", position);
            Set(plants, row, "first_seen", new DateTime(2026, 5, 13, 17, 30, 0));
            Set(plants, row, "note", note);
        }

        var harvest = Part(book, "harvest");
        var strips = FieldWalk.Strips(planned.Trial);
        for (var i = 0; i < strips.Length; i++)
        {
            Set(harvest, i + 2, "weight_lb", 6800 + (10 * strips[i].Order!.Value));
            Set(harvest, i + 2, "moisture_pct", 17.9);
            Set(harvest, i + 2, "test_weight_lb_bu", 56.5);
            Set(harvest, i + 2, "note", "lodged");
        }
    }

    private static WorksheetPart Part(WorkbookPart book, string sheet) =>
        (WorksheetPart)book.GetPartById(book.Workbook!.Descendants<Sheet>().Single(each => each.Name == sheet).Id!);

    private static List<string> Headers(WorksheetPart part) => [.. part.Worksheet!.Descendants<Row>().First().Elements<Cell>().Select(cell => cell.InnerText)];

    private static void Set(WorksheetPart part, int row, string header, object value)
    {
        var data = part.Worksheet!.GetFirstChild<SheetData>()!;
        var line = data.Elements<Row>().FirstOrDefault(each => each.RowIndex! == (uint)row) ?? data.AppendChild(new Row { RowIndex = (uint)row });
        var place = string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + Headers(part).IndexOf(header))}{row}");
        var cell = line.Elements<Cell>().FirstOrDefault(each => each.CellReference == place) ?? line.AppendChild(new Cell { CellReference = place });
        switch (value)
        {
            case string text:
                cell.DataType = CellValues.InlineString;
                cell.InlineString = new InlineString(new Text(text));
                break;
            case DateTime moment:
                cell.StyleIndex ??= 7;
                cell.CellValue = new CellValue(moment.ToOADate().ToString("R", CultureInfo.InvariantCulture));
                break;
            default:
                cell.CellValue = new CellValue(Convert.ToString(value, CultureInfo.InvariantCulture)!);
                break;
        }
    }
}
