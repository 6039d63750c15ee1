using System.Globalization;
using System.Xml;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Workbooks;

/// <summary>Reads the rows of one sheet as they come, each with its number, so that a sheet of any size takes no more room than its cells.</summary>
/// <remarks>ECMA-376 part 1, 18.3.1: rows and the cells in them stand in the order of their places, and a place that is not written is the next one.</remarks>
/// <param name="strings">The texts that cells refer to.</param>
/// <param name="dates">For each format, whether it is a date's.</param>
/// <param name="since1904">Whether days are counted from 1904.</param>
internal sealed class SheetRows(IReadOnlyList<string> strings, IReadOnlyList<bool> dates, bool since1904)
{
    private const int LastRow = 1_048_576;
    private const int LastColumn = 16_384;
    private const int DaysTo1904 = 1462;

    // No offset is read: the clock on the wall is what the trial keeps.
    private static readonly string[] WrittenDates = ["yyyy-MM-dd", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-ddTHH:mm:ss.FFFFFFF"];

    /// <summary>The rows that hold a cell, in their order.</summary>
    /// <param name="xml">The part of the sheet.</param>
    /// <exception cref="InvalidDataException">Rows or cells are out of their order or beyond the last place of a sheet, or a cell refers to what is not there.</exception>
    /// <exception cref="XmlException">The part is not XML.</exception>
    public IEnumerable<(int Row, IReadOnlyList<SheetValue> Cells)> Read(XmlReader xml)
    {
        var row = 0;
        var cells = new List<SheetValue>();
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "row" })
            {
                row = RowOf(xml.GetAttribute("r"), row);
                cells.Clear();
                if (!xml.IsEmptyElement)
                {
                    ReadCells(xml, row, cells);
                }

                if (cells.Count > 0)
                {
                    yield return (row, cells);
                }
            }
        }
    }

    private void ReadCells(XmlReader xml, int row, List<SheetValue> cells)
    {
        var depth = xml.Depth;
        var column = 0;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml is not { NodeType: XmlNodeType.Element, LocalName: "c" })
            {
                continue;
            }

            column = ColumnOf(xml.GetAttribute("r"), row, column);
            var (type, style) = (xml.GetAttribute("t"), xml.GetAttribute("s"));
            var (text, typedDate) = Value(RawText(xml), type, style);
            text = text.Trim();
            if (text.Length > 0)
            {
                cells.Add(new SheetValue(column, text, typedDate));
            }
        }
    }

    /// <summary>What the cell's element holds: its value, or the text that stands in it.</summary>
    private static string RawText(XmlReader xml)
    {
        if (xml.IsEmptyElement)
        {
            return string.Empty;
        }

        var depth = xml.Depth;
        var text = string.Empty;
        var inValue = false;
        while (xml.Read() && xml.Depth > depth)
        {
            switch (xml.NodeType)
            {
                case XmlNodeType.Element when xml.LocalName == "is":
                    text += SharedStrings.TextOf(xml);
                    break;
                case XmlNodeType.Element when xml.LocalName == "v":
                    inValue = !xml.IsEmptyElement;
                    break;
                case XmlNodeType.EndElement when xml.LocalName == "v":
                    inValue = false;
                    break;
                case XmlNodeType.Text or XmlNodeType.CDATA when inValue:
                    text += xml.Value;
                    break;
            }
        }

        return text;
    }

    private (string Text, bool TypedDate) Value(string raw, string? type, string? style)
    {
        switch (type)
        {
            case "s":
                return (Shared(raw), false);
            case "b":
                return (raw switch { "1" => "true", "0" => "false", _ => raw }, false);
            case "d":
                return DateTime.TryParseExact(raw, WrittenDates, CultureInfo.InvariantCulture, DateTimeStyles.None, out var written) ? (DateText(written), true) : (raw, false);
            case null or "n":
                return Number(raw, style);
            default:
                return (raw, false);
        }
    }

    private string Shared(string raw)
    {
        if (raw.Length == 0)
        {
            return string.Empty;
        }

        return int.TryParse(raw, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var index) && index < strings.Count
            ? strings[index]
            : throw new InvalidDataException($"a cell refers to the text {Wording.Quote(raw)}, and there are {Wording.Count(strings.Count, "text")}");
    }

    private (string Text, bool TypedDate) Number(string raw, string? style)
    {
        // What is no number keeps its text, and is reported where the column wants a number.
        if (!double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return (raw, false);
        }

        var isDate = int.TryParse(style, NumberStyles.None, CultureInfo.InvariantCulture, out var format) && format < dates.Count && dates[format];
        var days = number + (since1904 ? DaysTo1904 : 0);
        return isDate && days is >= 0 and < 2_958_465.99 ? (DateText(DateTime.FromOADate(days)), true) : (Wording.Number(number), false);
    }

    /// <summary>The date as a text file writes it. A part of a day is held as a binary fraction: it is rounded to the second that was meant.</summary>
    private static string DateText(DateTime date)
    {
        var time = new DateTime((date.Ticks + (TimeSpan.TicksPerSecond / 2)) / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond);
        return time.Second == 0 ? Wording.Time(time) : time.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
    }

    private static int RowOf(string? written, int before)
    {
        if (written is null)
        {
            return before < LastRow ? before + 1 : throw OutOfPlace("row", "after the last");
        }

        return int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out var row) && row > before && row <= LastRow ? row : throw OutOfPlace("row", written);
    }

    private static int ColumnOf(string? written, int row, int before)
    {
        if (written is null)
        {
            return before < LastColumn ? before + 1 : throw OutOfPlace("cell", "after the last");
        }

        var column = 0;
        var letters = 0;
        while (letters < written.Length && char.IsAsciiLetter(written[letters]) && column <= LastColumn)
        {
            column = (column * 26) + (char.ToUpperInvariant(written[letters]) - 'A') + 1;
            letters++;
        }

        return column > before && column <= LastColumn && int.TryParse(written.AsSpan(letters), NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at == row
            ? column
            : throw OutOfPlace("cell", written);
    }

    private static InvalidDataException OutOfPlace(string what, string where) => new($"the {what} {Wording.Quote(where)} is out of its place on the sheet");
}
