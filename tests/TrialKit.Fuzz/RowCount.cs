using System.IO.Compression;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace TrialKit.Fuzz;

/// <summary>Counts the rows of a file without the readers that are tried: what went in, to be held against what came out.</summary>
internal static class RowCount
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Rows below the header of a table in text; null where quotes or lone carriage returns make lines and rows two things.</summary>
    public static int? OfTable(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal);
        if (text.AsSpan().IndexOfAny('"', '\r', '\0') >= 0)
        {
            return null;
        }

        string[] lines = [.. text.Split('\n').Where(line => !line.StartsWith('#') && line.AsSpan().IndexOfAnyExcept(" \t") >= 0)];
        var separator = lines.Length == 0 || lines[0].Contains('\t', StringComparison.Ordinal) ? "\t" : lines[0].Contains(';', StringComparison.Ordinal) ? ";" : ",";
        return Math.Max(0, lines.Count(line => line.AsSpan().IndexOfAnyExcept(" \t" + separator) >= 0) - 1);
    }

    /// <summary>Lines of a station's file.</summary>
    public static int OfLines(byte[] bytes) =>
        Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').Split('\n').Count(line => line.Trim('\r', ' ').Length > 0 && !line.StartsWith('#'));

    /// <summary>Rows below the header on each sheet of a workbook, by the sheet's name in lower case; empty where another reader cannot tell.</summary>
    public static IReadOnlyDictionary<string, int> OfSheets(byte[] workbook)
    {
        try
        {
            using var archive = new ZipArchive(new MemoryStream(workbook));
            var sheets = Part(archive, "xl/workbook.xml").Descendants(Main + "sheet").ToArray();
            var relations = Part(archive, "xl/_rels/workbook.xml.rels").Root!.Elements().ToDictionary(
                relation => relation.Attribute("Id")!.Value, relation => relation.Attribute("Target")!.Value, StringComparer.Ordinal);
            return sheets.ToDictionary(
                sheet => sheet.Attribute("name")!.Value.ToLowerInvariant(),
                sheet => RowsOf(Part(archive, "xl/" + relations[sheet.Attributes().Single(attribute => attribute.Name.LocalName == "id").Value])),
                StringComparer.Ordinal);
        }
        catch (Exception failure) when (failure is XmlException or InvalidDataException or KeyNotFoundException or NullReferenceException or ArgumentException or InvalidOperationException or IOException or NotSupportedException)
        {
            return new Dictionary<string, int>(StringComparer.Ordinal);
        }
    }

    private static XDocument Part(ZipArchive archive, string name)
    {
        using var stream = archive.Entries.Single(entry => entry.FullName == name).Open();
        return XDocument.Load(stream);
    }

    private static int RowsOf(XDocument sheet)
    {
        var rows = sheet.Root!.Elements(Main + "sheetData").Single().Elements(Main + "row")
            .Select(row => row.Elements(Main + "c").Select(CellText).ToArray())
            .Where(cells => cells.Any(text => text.Length > 0));
        return Math.Max(0, rows.Count() - 1);
    }

    private static string CellText(XElement cell) => string.Concat(cell.Descendants().Where(part => part.Name.LocalName is "v" or "t").Select(part => part.Value)).Trim();
}
