using System.Globalization;
using System.Xml;

namespace TrialKit.Ingest.Workbooks;

/// <summary>Which formats of a workbook show a number as a date.</summary>
/// <remarks>ECMA-376 part 1, 18.8.30: the numbers of the formats that every spreadsheet has, and the letters of a format of one's own.</remarks>
internal static class CellFormats
{
    /// <summary>For each format that a cell can name, whether it is a date's; none when there is no such part.</summary>
    public static List<bool> Read(PackageParts parts, string? part)
    {
        var dates = new List<bool>();
        if (part is null)
        {
            return dates;
        }

        var own = new Dictionary<int, bool>();
        var inCells = false;
        using var xml = parts.Open(part);
        while (xml.Read())
        {
            if (xml.LocalName == "cellXfs")
            {
                inCells = xml.NodeType == XmlNodeType.Element && !xml.IsEmptyElement;
            }
            else if (xml is { NodeType: XmlNodeType.Element, LocalName: "numFmt" })
            {
                own[Number(xml)] = IsDate(xml.GetAttribute("formatCode") ?? string.Empty);
            }
            else if (inCells && xml is { NodeType: XmlNodeType.Element, LocalName: "xf" })
            {
                var format = Number(xml);
                dates.Add(own.TryGetValue(format, out var isDate) ? isDate : format is (>= 14 and <= 22) or (>= 27 and <= 36) or (>= 50 and <= 58));
            }
        }

        return dates;
    }

    /// <summary>Whether a format writes a day or a time: it has one of their letters outside quotes, brackets and after no backslash.</summary>
    internal static bool IsDate(string format)
    {
        for (var i = 0; i < format.Length; i++)
        {
            var end = format[i] switch
            {
                '"' => format.IndexOf('"', i + 1),
                '[' => format.IndexOf(']', i + 1),
                '\\' or '_' or '*' => i + 1,
                _ => i,
            };
            if (end < 0)
            {
                return false;
            }

            if (end == i && char.ToLowerInvariant(format[i]) is 'd' or 'm' or 'y' or 'h' or 's' && !format[i..].StartsWith("General", StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }

            i = end;
        }

        return false;
    }

    private static int Number(XmlReader xml) =>
        int.TryParse(xml.GetAttribute("numFmtId"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
