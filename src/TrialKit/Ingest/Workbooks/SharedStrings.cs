using System.Text;
using System.Xml;

namespace TrialKit.Ingest.Workbooks;

/// <summary>Texts that cells of a workbook refer to by number.</summary>
internal static class SharedStrings
{
    /// <summary>Reads the texts of a part; none when there is no such part.</summary>
    public static List<string> Read(PackageParts parts, string? part)
    {
        var strings = new List<string>();
        if (part is null)
        {
            return strings;
        }

        using var xml = parts.Open(part);
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "si" })
            {
                strings.Add(TextOf(xml));
            }
        }

        return strings;
    }

    /// <summary>The text of an element and its runs; how a text is pronounced is no part of it.</summary>
    /// <param name="xml">Stands on the element, and afterwards on its end.</param>
    public static string TextOf(XmlReader xml)
    {
        if (xml.IsEmptyElement)
        {
            return string.Empty;
        }

        var text = new StringBuilder();
        var (depth, inText, pronounced) = (xml.Depth, false, 0);
        while (xml.Read() && xml.Depth > depth)
        {
            switch (xml.NodeType)
            {
                case XmlNodeType.Element when xml.LocalName == "rPh":
                    pronounced += xml.IsEmptyElement ? 0 : 1;
                    break;
                case XmlNodeType.EndElement when xml.LocalName == "rPh":
                    pronounced--;
                    break;
                case XmlNodeType.Element when xml.LocalName == "t":
                    inText = !xml.IsEmptyElement;
                    break;
                case XmlNodeType.EndElement when xml.LocalName == "t":
                    inText = false;
                    break;
                case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace when inText && pronounced == 0:
                    text.Append(xml.Value);
                    break;
            }
        }

        return text.ToString();
    }
}
