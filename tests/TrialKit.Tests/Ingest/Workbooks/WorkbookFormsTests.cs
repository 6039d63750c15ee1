using System.IO.Compression;
using System.Text;
using TrialKit.Fuzz;
using TrialKit.Ingest.Workbooks;

namespace TrialKit.Tests.Ingest.Workbooks;

/// <summary>The forms in which spreadsheets save cells (ECMA-376 part 1, 18.3.1.4 and 18.8.30), and damage that must be seen.</summary>
public class WorkbookFormsTests
{
    private const string Main = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private const string Sheet = "xl/worksheets/sheet1.xml";
    private const string Header = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>strip</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>date</t></is></c><c r=\"C1\" t=\"inlineStr\"><is><t>length_ft</t></is></c><c r=\"D1\" t=\"inlineStr\"><is><t>plants</t></is></c></row>";

    private static byte[] Sound() => new SheetWriter().AddCsv("stand-counts", "strip\n").ToBytes();

    /// <summary>The workbook with some parts replaced or added; null takes a part out.</summary>
    private static byte[] With(byte[] workbook, params (string Part, string? Xml)[] changes)
    {
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (var (part, xml) in changes)
            {
                archive.GetEntry(part)?.Delete();
                if (xml is not null)
                {
                    using var writer = new StreamWriter(archive.CreateEntry(part).Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
                    writer.Write(xml);
                }
            }
        }

        return stream.ToArray();
    }

    private static string Rows(string rows) => $"<worksheet {Main}><sheetData>{rows}</sheetData></worksheet>";

    private static TrialFolder Folder(byte[] workbook) => TrialFolder.Sound().Remove("stand-counts.csv").Remove("plants.csv").Write("trial.xlsx", workbook);

    private static TrialFolder Folder(string rows, params (string Part, string? Xml)[] changes) => Folder(With(Sound(), [(Sheet, Rows(rows)), .. changes]));

    private static string Counts(TrialFolder folder)
    {
        var reading = folder.Read();
        Assert.True(reading.Trial is not null, string.Join("; ", reading.Problems));
        return string.Join('|', reading.Trial!.StandCounts.Select(count => FormattableString.Invariant($"{count.Strip.Name} {count.Date:yyyy-MM-dd} {count.Row.Feet:0.###} {count.Plants}")));
    }

    [Fact]
    public void Read_SharedStrings_AreTheTextOfTheirRunsWithoutHowItIsPronounced()
    {
        using var folder = Folder(
            Header + "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>1</v></c><c r=\"C2\"><v>17.424</v></c><c r=\"D2\"><v>30</v></c></row><row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c><c r=\"C3\"><v>17.424</v></c><c r=\"D3\"><v>31</v></c></row>",
            ("xl/sharedStrings.xml", $"<sst {Main}><si><t>A2</t><rPh sb=\"0\" eb=\"1\"><t>spoken</t></rPh></si><si><r><t>A</t></r><r><rPr><b/></rPr><t xml:space=\"preserve\">1 </t></r></si></sst>"),
            ("xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"/xl/worksheets/sheet1.xml\"/><Relationship Id=\"rId2\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>"));

        Assert.Equal("A1  17.424 30|A2  17.424 31", Counts(folder));
    }

    /// <summary>46162 is 2026-05-20; in a workbook that counts from 1904 the same day is 44700.</summary>
    [Theory]
    [InlineData("built-in date", "14", "", "46162", "2026-05-20")]
    [InlineData("built-in date and time", "22", "", "46162.75", "2026-05-20")]
    [InlineData("own format", "164", "[$-409]d\\-mmm\\-yy;@", "46162", "2026-05-20")]
    [InlineData("own format of a time", "164", "hh:mm", "46162.5", "2026-05-20")]
    [InlineData("the last day that a spreadsheet has", "14", "", "2958465", "9999-12-31")]
    public void Read_NumberInADateFormat_IsADate(string name, string format, string code, string value, string expected)
    {
        using var folder = Folder(
            Header + $"<row r=\"2\"><c r=\"A2\" t=\"str\"><v>A1</v></c><c r=\"B2\" s=\"1\"><v>{value}</v></c><c r=\"C2\"><v>17.424</v></c><c r=\"D2\"><v>30</v></c></row>",
            ("xl/styles.xml", $"<styleSheet {Main}><numFmts><numFmt numFmtId=\"164\" formatCode=\"{code}\"/></numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"{format}\"/></cellXfs></styleSheet>"));

        Assert.True(Counts(folder) == $"A1 {expected} 17.424 30", $"{name}: {Counts(folder)}");
    }

    [Fact]
    public void Read_DaysCountedFrom1904_AreFourYearsLater()
    {
        using var folder = Folder(
            Header + "<row r=\"2\"><c r=\"A2\" t=\"str\"><v>A1</v></c><c r=\"B2\" s=\"1\"><v>44700</v></c><c r=\"C2\"><v>17.424</v></c><c r=\"D2\"><v>30</v></c></row>",
            ("xl/workbook.xml", $"<workbook {Main} xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><workbookPr date1904=\"1\"/><sheets><sheet name=\"stand-counts\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>"));

        Assert.Equal("A1 2026-05-20 17.424 30", Counts(folder));
    }

    [Fact]
    public void Read_CellsWithoutPlaces_FollowEachOther()
    {
        using var folder = Folder("<row><c t=\"inlineStr\"><is><t>strip</t></is></c><c t=\"inlineStr\"><is><t>length_ft</t></is></c><c t=\"inlineStr\"><is><t>plants</t></is></c></row><row/><row><c t=\"inlineStr\"><is><t>A1</t></is></c><c><v>17.424</v></c><c><v>30</v></c></row>");

        Assert.Equal("A1  17.424 30", Counts(folder));
    }

    /// <summary>A time of day is a binary fraction of a day: 17:29:59.9999 is meant to be 17:30, and seconds are kept.</summary>
    [Theory]
    [InlineData("46162.729166666", "2026-05-20T17:30:00")]
    [InlineData("46162.7291666667", "2026-05-20T17:30:00")]
    [InlineData("46162.729687500", "2026-05-20T17:30:45")]
    public void Read_TimeOfDay_IsRoundedToTheSecond(string value, string expected)
    {
        var rows = new SheetRows([], [false, true], since1904: false);
        using var xml = System.Xml.XmlReader.Create(new StringReader(Rows($"<row r=\"1\"><c r=\"A1\" s=\"1\"><v>{value}</v></c></row>")));

        var cell = Assert.Single(Assert.Single(rows.Read(xml).Select(row => row.Cells.ToArray())));

        Assert.True(cell.TypedDate);
        Assert.Equal(DateTime.Parse(expected, System.Globalization.CultureInfo.InvariantCulture), DateTime.Parse(cell.Text, System.Globalization.CultureInfo.InvariantCulture));
    }

    public static TheoryData<string, string> OutOfPlace => new()
    {
        { "a row before the one above", "<row r=\"5\"><c r=\"A5\"><v>1</v></c></row><row r=\"4\"><c r=\"A4\"><v>1</v></c></row>" },
        { "the same row twice", "<row r=\"2\"><c r=\"A2\"><v>1</v></c></row><row r=\"2\"><c r=\"A2\"><v>1</v></c></row>" },
        { "a row beyond the last", "<row r=\"1048577\"><c r=\"A1048577\"><v>1</v></c></row>" },
        { "a row of no number", "<row r=\"99999999999\"><c><v>1</v></c></row>" },
        { "a cell of another row", "<row r=\"2\"><c r=\"A3\"><v>1</v></c></row>" },
        { "a cell before the one beside it", "<row r=\"2\"><c r=\"B2\"><v>1</v></c><c r=\"A2\"><v>1</v></c></row>" },
        { "a cell beyond the last column", "<row r=\"2\"><c r=\"XFE2\"><v>1</v></c></row>" },
        { "a column without end", "<row r=\"2\"><c r=\"ZZZZZZZZZZZZ2\"><v>1</v></c></row>" },
        { "a shared text that is not there", "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>7</v></c></row>" },
    };

    [Theory]
    [MemberData(nameof(OutOfPlace), DisableDiscoveryEnumeration = true)]
    public void Read_PlacesThatCannotBe_AreALocatedError(string name, string rows)
    {
        using var folder = Folder(Header + rows);

        Assert.True(folder.Read().Errors.First().Code == "TK520", name);
    }

    [Fact]
    public void Read_ColumnsBeyondTheLimit_AreRefused()
    {
        using var folder = Folder("<row r=\"1\"><c r=\"ALM1\" t=\"inlineStr\"><is><t>strip</t></is></c></row>");

        Assert.Contains("trial.xlsx!stand-counts!A1: error TK511: the table has more than 1,000 columns; a table of a trial was expected", folder.Problems());
    }

    [Fact]
    public void Read_PartStandingTwice_IsRefused()
    {
        using var stream = new MemoryStream();
        stream.Write(Sound());
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            using var second = archive.CreateEntry("XL/worksheets/Sheet1.xml").Open();
            second.Write(Encoding.UTF8.GetBytes(Rows(string.Empty)));
        }

        using var folder = Folder(stream.ToArray());

        Assert.Equal("TK520", folder.Read().Errors.First().Code);
    }

    /// <summary>One digit of a stored part is another: the XML is sound, and only the checksum can tell.</summary>
    [Fact]
    public void Read_DigitThatChangedInTheArchive_IsRefused()
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        using (var sound = new ZipArchive(new MemoryStream(With(Sound(), (Sheet, Rows(Header + "<row r=\"2\"><c r=\"A2\" t=\"str\"><v>A1</v></c><c r=\"C2\"><v>17.424</v></c><c r=\"D2\"><v>30</v></c></row>"))))))
        {
            foreach (var entry in sound.Entries)
            {
                using var from = entry.Open();
                using var to = archive.CreateEntry(entry.FullName, CompressionLevel.NoCompression).Open();
                from.CopyTo(to);
            }
        }

        var bytes = stream.ToArray();
        using (var folder = Folder(bytes))
        {
            Assert.Equal("A1  17.424 30", Counts(folder));
        }

        bytes[bytes.AsSpan().IndexOf("<v>30</v>"u8) + 3] = (byte)'9';
        using var damaged = Folder(bytes);

        Assert.Contains(damaged.Problems(), problem => problem.Contains("TK520", StringComparison.Ordinal) && problem.Contains("checksum", StringComparison.Ordinal));
    }

    [Fact]
    public void Add_CheckValue_IsThatOfTheStandard() => Assert.Equal(0xCBF43926, Crc32.Finish(Crc32.Add(Crc32.Start, "123456789"u8)));

    [Theory]
    [InlineData("General", false)]
    [InlineData("0.00", false)]
    [InlineData("#,##0 \"days\"", false)]
    [InlineData("0\\d", false)]
    [InlineData("[Red]0.0", false)]
    [InlineData("yyyy-mm-dd", true)]
    [InlineData("[$-407]d. mmmm yyyy", true)]
    [InlineData("hh:mm AM/PM", true)]
    public void IsDate_Format_IsTold(string format, bool isDate) => Assert.Equal(isDate, CellFormats.IsDate(format));
}
