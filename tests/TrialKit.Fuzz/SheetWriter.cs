using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace TrialKit.Fuzz;

/// <summary>Writes a small workbook part by part (ECMA-376), with cells typed as a spreadsheet would type them.</summary>
internal sealed class SheetWriter
{
    private readonly List<(string Name, string Rows)> _sheets = [];

    /// <summary>Adds a sheet from CSV text: numbers become numbers, dates typed dates, and <c>#...</c> errors.</summary>
    public SheetWriter AddCsv(string name, string csv)
    {
        var rows = new StringBuilder();
        var line = 0;
        foreach (var text in csv.TrimEnd('\n').Split('\n'))
        {
            line++;
            rows.Append(CultureInfo.InvariantCulture, $"<row r=\"{line}\">");
            var cells = text.Split(',');
            for (var column = 0; column < cells.Length; column++)
            {
                rows.Append(Cell($"{(char)('A' + column)}{line.ToString(CultureInfo.InvariantCulture)}", cells[column]));
            }

            rows.Append("</row>");
        }

        _sheets.Add((name, rows.ToString()));
        return this;
    }

    /// <summary>The workbook.</summary>
    /// <param name="sheetXml">Stands in for the XML of the first sheet, to damage it.</param>
    public byte[] ToBytes(string? sheetXml = null)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(archive, "[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>");
            Part(archive, "_rels/.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            var sheets = string.Concat(_sheets.Select((sheet, index) => FormattableString.Invariant($"<sheet name=\"{sheet.Name}\" sheetId=\"{index + 1}\" r:id=\"rId{index + 1}\"/>")));
            Part(archive, "xl/workbook.xml", $"<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>{sheets}</sheets></workbook>");
            var relations = string.Concat(_sheets.Select((_, index) => FormattableString.Invariant($"<Relationship Id=\"rId{index + 1}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet{index + 1}.xml\"/>")));
            Part(archive, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">{relations}<Relationship Id=\"rId99\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/></Relationships>");
            Part(archive, "xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><cellXfs count=\"3\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/><xf numFmtId=\"22\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            for (var i = 0; i < _sheets.Count; i++)
            {
                var xml = $"<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>{_sheets[i].Rows}</sheetData></worksheet>";
                Part(archive, FormattableString.Invariant($"xl/worksheets/sheet{i + 1}.xml"), i == 0 && sheetXml is not null ? sheetXml : xml);
            }
        }

        return stream.ToArray();
    }

    private static string Cell(string place, string text)
    {
        if (text.Length == 0)
        {
            return string.Empty;
        }

        if (text[0] == '#')
        {
            return $"<c r=\"{place}\" t=\"e\"><v>{text}</v></c>";
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        {
            return $"<c r=\"{place}\"><v>{text}</v></c>";
        }

        if (DateTime.TryParseExact(text, ["yyyy-MM-dd", "yyyy-MM-dd HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"{(date.TimeOfDay == TimeSpan.Zero ? 1 : 2)}\"><v>{date.ToOADate():R}</v></c>");
        }

        return $"<c r=\"{place}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";
    }

    private static void Part(ZipArchive archive, string name, string xml)
    {
        using var writer = new StreamWriter(archive.CreateEntry(name).Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        writer.Write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + xml);
    }
}
