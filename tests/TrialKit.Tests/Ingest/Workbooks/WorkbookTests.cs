using System.Text;
using TrialKit.Fuzz;
using TrialKit.Ingest;
using TrialKit.Ingest.Workbooks;

namespace TrialKit.Tests.Ingest.Workbooks;

public class WorkbookTests
{
    private static TrialFolder With(string sheet, string csv, string? removed = null)
    {
        var folder = TrialFolder.Sound().Write("trial.xlsx", new SheetWriter().AddCsv(sheet, csv).ToBytes());
        return removed is null ? folder : folder.Remove(removed);
    }

    [Fact]
    public void Read_FaultyCell_IsNamedAsTheSheetNamesIt()
    {
        using var folder = With("stand-counts", "strip,length_ft,plants\nA1,17.424,30\n\n# a remark\nA2,17.424,many\nA2,0,30\n", "stand-counts.csv");

        Assert.Equal(
            [
                "trial.xlsx!stand-counts!C5: error TK103: column 'plants' holds 'many'; a whole number was expected, such as 29",
                "trial.xlsx!stand-counts!B6: error TK110: column 'length_ft' holds '0'; a value above zero was expected",
            ],
            folder.Problems());
    }

    [Theory]
    [InlineData("#N/A")]
    [InlineData("#DIV/0!")]
    [InlineData("#REF!")]
    public void Read_ErrorCell_IsAnError(string error)
    {
        using var folder = With("harvest", $"strip,weight_lb,moisture_pct\nA1,{error},17.5\nA2,2500,17.5\n", "harvest.csv");

        Assert.Equal(
            [$"trial.xlsx!harvest!B2: error TK113: column 'weight_lb' holds the spreadsheet error '{error}'; a value or an empty cell was expected"],
            folder.Problems());
    }

    [Fact]
    public void Read_ErrorCellInFirstColumn_IsNoComment()
    {
        using var folder = With("harvest", "strip,weight_lb,moisture_pct\n#REF!,2500,17.5\nA2,2500,17.5\n", "harvest.csv");

        Assert.Equal(
            ["trial.xlsx!harvest!A2: error TK113: column 'strip' holds the spreadsheet error '#REF!'; a value or an empty cell was expected"],
            folder.Problems());
    }

    [Fact]
    public void Read_TableAsSheetAndFile_IsAnError()
    {
        using var folder = With("harvest", TrialFolder.SoundText("harvest.csv"));

        Assert.Equal(
            ["trial.xlsx!harvest!A1: error TK522: the table 'harvest' stands here and in harvest.csv; each table was expected once, as a sheet or as a file"],
            folder.Problems());
    }

    [Fact]
    public void Read_SameTableOnTwoSheets_IsAnError()
    {
        using var folder = TrialFolder.Sound().Remove("harvest.csv").Write(
            "trial.xlsx",
            new SheetWriter().AddCsv("harvest", TrialFolder.SoundText("harvest.csv")).AddCsv("Harvest ", TrialFolder.SoundText("harvest.csv")).ToBytes());

        Assert.Contains("trial.xlsx!Harvest !A1: error TK524: the sheets 'harvest' and 'Harvest ' are the same table; each table was expected on one sheet", folder.Problems());
    }

    [Fact]
    public void Read_SheetOfAnotherName_IsAWarning()
    {
        using var folder = With("harvst", TrialFolder.SoundText("harvest.csv"));

        Assert.Equal(
            ["trial.xlsx!harvst!A1: warning TK523: the sheet 'harvst' is not used; the tables are strips, spots, stand-counts, emergence, plants, harvest, measures, weather, soil-temperature; the nearest is 'harvest'"],
            folder.Problems());
    }

    [Fact]
    public void Read_NameThatBecameADate_IsAnError()
    {
        using var folder = With("measures", "strip,spot,measure,value\nA1,2026-01-02,residue,40\n", "measures.csv");

        Assert.Equal(
            ["trial.xlsx!measures!B2: error TK115: column 'spot' holds the date '2026-01-02', which the spreadsheet may have made of a name; a name was expected; format the cell as text and type the name again"],
            folder.Problems());
    }

    [Fact]
    public void Read_ValueBeyondTheHeader_IsAnError()
    {
        using var folder = With("measures", "strip,measure,value\nA1,residue,40,x\n", "measures.csv");

        Assert.Equal(
            ["trial.xlsx!measures!D2: error TK125: the cell has a value and its column has no name at trial.xlsx!measures!D1; a column name was expected above every value"],
            folder.Problems());
    }

    [Fact]
    public void Read_EmptySheet_IsAnError()
    {
        using var folder = With("measures", string.Empty, "measures.csv");

        Assert.Equal(
            ["trial.xlsx!measures!A1: error TK101: the table has no header; a first line that names the columns was expected"],
            folder.Problems());
    }

    public static TheoryData<string, byte[]> NotWorkbooks => new()
    {
        { "text", Encoding.UTF8.GetBytes("strip,block,treatment\n") },
        { "nothing", [] },
        { "a truncated workbook", new SheetWriter().AddCsv("harvest", TrialFolder.SoundText("harvest.csv")).ToBytes()[..300] },
        { "a sheet that is not XML", new SheetWriter().AddCsv("harvest", "strip\n").ToBytes("<worksheet><sheetData><row") },
        { "a sheet with an entity", new SheetWriter().AddCsv("harvest", "strip\n").ToBytes("<!DOCTYPE x [<!ENTITY a \"aaaa\">]><worksheet><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&a;</t></is></c></row></sheetData></worksheet>") },
    };

    [Theory]
    [MemberData(nameof(NotWorkbooks), DisableDiscoveryEnumeration = true)]
    public void Read_NotAWorkbook_IsALocatedError(string name, byte[] bytes)
    {
        using var folder = TrialFolder.Sound().Remove("harvest.csv").Write("trial.xlsx", bytes);

        var reading = folder.Read();

        Assert.True(reading.Trial is null, name);
        Assert.Equal(("TK520", "trial.xlsx:1:1"), (reading.Problems[0].Code, reading.Problems[0].Location.ToString()));
    }

    [Fact]
    public void Open_WorkbookThatDeclaresTooMuch_IsRefused()
    {
        using var folder = With("harvest", TrialFolder.SoundText("harvest.csv"));
        var problems = new ProblemList();

        Assert.Null(Workbook.Open(folder.Path, problems, largestUnpacked: 1000));
        Assert.Equal(
            ["trial.xlsx:1:1: error TK521: the workbook unpacks to more than 0.001 MB; the workbook of a trial was expected"],
            problems.InFileOrder().Select(problem => problem.ToString()));
    }

    [Fact]
    public void Open_WorkbookWhoseDeclaredSizesLie_IsRefused()
    {
        var padding = new string(' ', 2_000_000);
        var bytes = new SheetWriter().AddCsv("harvest", "strip\n").ToBytes($"<worksheet>{padding}<sheetData/></worksheet>");
        foreach (var offset in LocalAndCentralHeaders(bytes))
        {
            BitConverter.TryWriteBytes(bytes.AsSpan(offset), 10u);
        }

        using var folder = TrialFolder.Sound().Write("trial.xlsx", bytes);
        var problems = new ProblemList();

        Assert.Null(Workbook.Open(folder.Path, problems, largestUnpacked: 100_000));
        Assert.Contains(Assert.Single(problems.InFileOrder()).Code, new[] { "TK520", "TK521" });
    }

    /// <summary>Where each header of the archive declares an uncompressed size (APPNOTE 4.3.7 and 4.3.12).</summary>
    private static IEnumerable<int> LocalAndCentralHeaders(byte[] bytes)
    {
        for (var i = 0; i + 28 < bytes.Length; i++)
        {
            var signature = BitConverter.ToUInt32(bytes, i);
            if (signature == 0x04034b50)
            {
                yield return i + 22;
            }
            else if (signature == 0x02014b50)
            {
                yield return i + 24;
            }
        }
    }
}
