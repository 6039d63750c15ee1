using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;

namespace TrialKit.Reporting.Sheets;

/// <summary>Writes a workbook part by part (ECMA-376, Office Open XML), so that the same sheets give the same bytes.</summary>
internal static class WorkbookParts
{
    private const string ListSheet = "_lists";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private const int LastRow = 5000;
    private const int HeaderStyle = 1;
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the workbook.</summary>
    /// <param name="sheets">The sheets that people fill in.</param>
    /// <param name="strips">The strips to choose from, on a sheet of their own that is hidden.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(IReadOnlyList<WorkbookSheet> sheets, IReadOnlyList<string> strips, Stream stream)
    {
        using var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        Add(zip, "[Content_Types].xml", ContentTypes(sheets.Count));
        Add(zip, "_rels/.rels", Links([("officeDocument", "xl/workbook.xml")]));
        Add(zip, "xl/workbook.xml", Workbook(sheets));
        Add(zip, "xl/_rels/workbook.xml.rels", Links([.. Enumerable.Range(1, sheets.Count + 1).Select(i => ("worksheet", Text($"worksheets/sheet{i}.xml"))), ("styles", "styles.xml")]));
        Add(zip, "xl/styles.xml", Styles);
        for (var i = 0; i < sheets.Count; i++)
        {
            Add(zip, Text($"xl/worksheets/sheet{i + 1}.xml"), Sheet(sheets[i], strips.Count));
            Add(zip, Text($"xl/worksheets/_rels/sheet{i + 1}.xml.rels"), Links([("comments", Text($"../comments{i + 1}.xml")), ("vmlDrawing", Text($"../drawings/vmlDrawing{i + 1}.vml"))]));
            Add(zip, Text($"xl/comments{i + 1}.xml"), Notes(sheets[i]));
            Add(zip, Text($"xl/drawings/vmlDrawing{i + 1}.vml"), NoteShapes(sheets[i]));
        }

        Add(zip, Text($"xl/worksheets/sheet{sheets.Count + 1}.xml"), List(strips));
    }

    private static string ContentTypes(int sheets)
    {
        var text = new StringBuilder(Head)
            .Append("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Default Extension=\"vml\" ContentType=\"application/vnd.openxmlformats-officedocument.vmlDrawing\"/>")
            .Append("<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>");
        for (var i = 1; i <= sheets + 1; i++)
        {
            text.Append(Text($"<Override PartName=\"/xl/worksheets/sheet{i}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>"));
            if (i <= sheets)
            {
                text.Append(Text($"<Override PartName=\"/xl/comments{i}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml\"/>"));
            }
        }

        return text.Append("</Types>").ToString();
    }

    private static string Links(IReadOnlyList<(string Kind, string Target)> links) =>
        Head + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + string.Concat(links.Select((link, i) => Text($"<Relationship Id=\"rId{i + 1}\" Type=\"{Relations}/{link.Kind}\" Target=\"{link.Target}\"/>"))) + "</Relationships>";

    private static string Workbook(IReadOnlyList<WorkbookSheet> sheets)
    {
        var text = new StringBuilder(Head).Append(Text($"<workbook xmlns=\"{Main}\" xmlns:r=\"{Relations}\"><sheets>"));
        for (var i = 0; i < sheets.Count; i++)
        {
            text.Append(Text($"<sheet name=\"{Escape(sheets[i].Name)}\" sheetId=\"{i + 1}\" r:id=\"rId{i + 1}\"/>"));
        }

        return text.Append(Text($"<sheet name=\"{ListSheet}\" sheetId=\"{sheets.Count + 1}\" state=\"hidden\" r:id=\"rId{sheets.Count + 1}\"/></sheets></workbook>")).ToString();
    }

    // Formats in the order of SheetCell follow the plain and the header's: text, strip, count, number, moisture, date.
    private const string Styles = Head + "<styleSheet xmlns=\"" + Main + "\"><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"yyyy\\-mm\\-dd\\ hh:mm\"/></numFmts>"
        + "<fonts count=\"2\"><font><sz val=\"12\"/><name val=\"Calibri\"/></font><font><b/><sz val=\"12\"/><name val=\"Calibri\"/></font></fonts>"
        + "<fills count=\"3\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill><fill><patternFill patternType=\"solid\"><fgColor rgb=\"FFE4E6E8\"/></patternFill></fill></fills>"
        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
        + "<cellXfs count=\"8\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/><xf numFmtId=\"49\" fontId=\"1\" fillId=\"2\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\" applyFill=\"1\"/>"
        + "<xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/><xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>"
        + "<xf numFmtId=\"1\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
        + "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/><xf numFmtId=\"164\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/></cellXfs>"
        + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles></styleSheet>";

    private static int Style(SheetCell kind) => HeaderStyle + 1 + (int)kind;

    private static string Sheet(WorkbookSheet sheet, int strips)
    {
        var text = new StringBuilder(Head).Append(Text($"<worksheet xmlns=\"{Main}\" xmlns:r=\"{Relations}\"><sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews><cols>"));
        for (var i = 0; i < sheet.Columns.Count; i++)
        {
            text.Append(Text($"<col min=\"{i + 1}\" max=\"{i + 1}\" width=\"{sheet.Columns[i].Width + 2}\" style=\"{Style(sheet.Columns[i].Kind)}\" customWidth=\"1\"/>"));
        }

        text.Append("</cols><sheetData><row r=\"1\">");
        for (var i = 0; i < sheet.Columns.Count; i++)
        {
            text.Append(Inline(i, 1, HeaderStyle, sheet.Columns[i].Header));
        }

        text.Append("</row>");
        for (var row = 0; row < sheet.Rows.Count; row++)
        {
            text.Append(Text($"<row r=\"{row + 2}\">"));
            for (var i = 0; i < sheet.Columns.Count; i++)
            {
                text.Append(Cell(i, row + 2, Style(sheet.Columns[i].Kind), sheet.Rows[row][i]));
            }

            text.Append("</row>");
        }

        return text.Append("</sheetData>").Append(Validations(sheet, strips)).Append("<legacyDrawing r:id=\"rId2\"/></worksheet>").ToString();
    }

    private static string Validations(WorkbookSheet sheet, int strips)
    {
        var rules = sheet.Columns.Select((column, i) => (Range: Text($"{Letter(i)}2:{Letter(i)}{LastRow}"), column.Kind)).Where(rule => rule.Kind != SheetCell.Text).ToArray();
        return Text($"<dataValidations count=\"{rules.Length}\">") + string.Concat(rules.Select(rule => rule.Kind switch
        {
            SheetCell.Strip => Rule("type=\"list\"", "A strip of this trial was expected; choose one from the list.", rule.Range, Text($"<formula1>{ListSheet}!$A$1:$A${strips}</formula1>")),
            SheetCell.Count => Rule("type=\"whole\" operator=\"between\"", "A whole number of 0 or more was expected.", rule.Range, "<formula1>0</formula1><formula2>1000000</formula2>"),
            SheetCell.Number => Rule("type=\"decimal\" operator=\"greaterThanOrEqual\"", "A number of 0 or more was expected.", rule.Range, "<formula1>0</formula1>"),
            SheetCell.Moisture => Rule("type=\"decimal\" operator=\"between\"", "A moisture from 0 to 60 % was expected.", rule.Range, "<formula1>0</formula1><formula2>60</formula2>"),
            _ => Rule("type=\"date\" operator=\"greaterThanOrEqual\"", "A date was expected, such as 2026-05-10 17:30.", rule.Range, "<formula1>36526</formula1>"),
        })) + "</dataValidations>";

        static string Rule(string kind, string message, string range, string formulas) =>
            $"<dataValidation {kind} allowBlank=\"1\" showErrorMessage=\"1\" errorTitle=\"Not taken\" error=\"{message}\" sqref=\"{range}\">{formulas}</dataValidation>";
    }

    private static string Cell(int column, int row, int style, object? value) => value switch
    {
        null => Text($"<c r=\"{Letter(column)}{row}\" s=\"{style}\"/>"),
        string text => Inline(column, row, style, text),
        int number => Text($"<c r=\"{Letter(column)}{row}\" s=\"{style}\"><v>{number}</v></c>"),
        double number => Text($"<c r=\"{Letter(column)}{row}\" s=\"{style}\"><v>{number:R}</v></c>"),
        DateTime moment => Text($"<c r=\"{Letter(column)}{row}\" s=\"{style}\"><v>{moment.ToOADate():R}</v></c>"),
        _ => throw new ArgumentException($"A cell holds a {value.GetType().Name}; text, a number or a date was expected.", nameof(value)),
    };

    private static string Inline(int column, int row, int style, string text) =>
        Text($"<c r=\"{Letter(column)}{row}\" s=\"{style}\" t=\"inlineStr\"><is><t xml:space=\"preserve\">{Escape(text)}</t></is></c>");

    private static string Notes(WorkbookSheet sheet) =>
        Head + Text($"<comments xmlns=\"{Main}\"><authors><author>TrialKit</author></authors><commentList>")
        + string.Concat(sheet.Columns.Select((column, i) => Text($"<comment ref=\"{Letter(i)}1\" authorId=\"0\"><text><r><t xml:space=\"preserve\">{Escape(column.Note)}</t></r></text></comment>")))
        + "</commentList></comments>";

    // Spreadsheets show a note only when a shape in this older language says where.
    private static string NoteShapes(WorkbookSheet sheet) =>
        "<xml xmlns:v=\"urn:schemas-microsoft-com:vml\" xmlns:o=\"urn:schemas-microsoft-com:office:office\" xmlns:x=\"urn:schemas-microsoft-com:office:excel\"><v:shapetype id=\"note\" coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>"
        + string.Concat(sheet.Columns.Select((_, i) => Text($"<v:shape id=\"note{i}\" type=\"#note\" style=\"position:absolute;visibility:hidden\" fillcolor=\"#ffffe1\" o:insetmode=\"auto\"><v:fill color2=\"#ffffe1\"/><v:path o:connecttype=\"none\"/><v:textbox/><x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>{i + 1}, 12, 1, 4, {i + 3}, 40, 5, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>0</x:Row><x:Column>{i}</x:Column></x:ClientData></v:shape>")))
        + "</xml>";

    private static string List(IReadOnlyList<string> names) =>
        Head + Text($"<worksheet xmlns=\"{Main}\"><sheetData>")
        + string.Concat(names.Select((name, i) => Text($"<row r=\"{i + 1}\">{Inline(0, i + 1, Style(SheetCell.Text), name)}</row>")))
        + "</sheetData></worksheet>";

    private static char Letter(int column) => (char)('A' + column);

    private static string Escape(string text) =>
        string.Concat(text.Where(letter => XmlConvert.IsXmlChar(letter) || char.IsSurrogate(letter)))
            .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    // Not packed tighter: how a packer packs differs between versions of the runtime.
    private static void Add(ZipArchive zip, string name, string content)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = Stamp;
        using var part = entry.Open();
        part.Write(Encoding.UTF8.GetBytes(content));
    }
}
