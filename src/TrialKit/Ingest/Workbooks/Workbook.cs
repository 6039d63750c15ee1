using System.Xml;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Workbooks;

/// <summary>The workbook <c>trial.xlsx</c>, whose sheets stand in for the tables' files.</summary>
internal sealed class Workbook
{
    /// <summary>The workbook's file name.</summary>
    public const string FileName = "trial.xlsx";

    /// <summary>The largest size all parts of the workbook may have together when unpacked, in bytes.</summary>
    public const long LargestUnpacked = 256L << 20;

    private const string WorkbookPart = "xl/workbook.xml";

    private readonly byte[] _bytes;
    private readonly Dictionary<string, string> _parts;
    private readonly SheetRows _rows;

    private Workbook(byte[] bytes, List<(string Name, string Part)> sheets, SheetRows rows)
    {
        _bytes = bytes;
        _rows = rows;
        _parts = sheets.ToDictionary(sheet => sheet.Name, sheet => sheet.Part, StringComparer.Ordinal);
        Sheets = [.. sheets.Select(sheet => sheet.Name)];
    }

    /// <summary>The sheets' names, in their order.</summary>
    public IReadOnlyList<string> Sheets { get; }

    /// <summary>Opens the workbook when there is one.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="problems">Takes a file that is too large or is not a workbook.</param>
    /// <param name="largestUnpacked">The limit on its unpacked size in bytes.</param>
    /// <returns>Null when there is none, or none that can be read.</returns>
    public static Workbook? Open(string folder, ProblemList problems, long largestUnpacked = LargestUnpacked)
    {
        if (!TrialFile.Exists(folder, FileName) || TrialFile.Read(folder, FileName, problems) is not { } bytes)
        {
            return null;
        }

        return Guarded(problems, () =>
        {
            using var parts = new PackageParts(new MemoryStream(bytes));
            if (parts.UnpackBeyond(largestUnpacked))
            {
                problems.Add(FileProblems.Expands(FileName, largestUnpacked));
                return null;
            }

            return Open(bytes, parts);
        });
    }

    /// <summary>Reads one sheet.</summary>
    /// <returns>The table, or null with an error added.</returns>
    public SheetTable? Read(string sheet, string name, ProblemList problems) => Guarded(problems, () =>
    {
        using var parts = new PackageParts(new MemoryStream(_bytes));
        using var xml = parts.Open(_parts[sheet]);
        return SheetTable.Read(FileName, sheet, name, _rows.Read(xml), problems);
    });

    private static Workbook Open(byte[] bytes, PackageParts parts)
    {
        var part = parts.RelationsOf(string.Empty).FirstOrDefault(relation => relation.Type == "officeDocument").Target ?? WorkbookPart;
        var relations = parts.RelationsOf(part);
        var sheets = new List<(string Name, string Part)>();
        var since1904 = false;
        using var xml = parts.Open(part);
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "workbookPr" })
            {
                since1904 = xml.GetAttribute("date1904") is "1" or "true";
            }
            else if (xml is { NodeType: XmlNodeType.Element, LocalName: "sheet" })
            {
                AddSheet(xml, relations, sheets);
            }
        }

        return new Workbook(bytes, sheets, new SheetRows(
            SharedStrings.Read(parts, relations.FirstOrDefault(relation => relation.Type == "sharedStrings").Target),
            CellFormats.Read(parts, relations.FirstOrDefault(relation => relation.Type == "styles").Target),
            since1904));
    }

    /// <summary>Adds a sheet of cells; a sheet that is a chart has none.</summary>
    private static void AddSheet(XmlReader xml, IReadOnlyList<(string Id, string Type, string Target)> relations, List<(string Name, string Part)> sheets)
    {
        var name = xml.GetAttribute("name") ?? throw new InvalidDataException("a sheet has no name");
        string? id = null;
        while (xml.MoveToNextAttribute())
        {
            id = xml is { LocalName: "id", Prefix.Length: > 0 } ? xml.Value : id;
        }

        var relation = relations.FirstOrDefault(relation => relation.Id == id);
        if (relation.Target is null)
        {
            throw new InvalidDataException($"the sheet {Wording.Quote(name)} is missing");
        }

        if (relation.Type == "worksheet")
        {
            if (sheets.Exists(sheet => sheet.Name == name))
            {
                throw new InvalidDataException($"two sheets have the name {Wording.Quote(name)}");
            }

            sheets.Add((name, relation.Target));
        }
    }

    /// <summary>What a damaged archive or its XML throws, as a problem.</summary>
    private static T? Guarded<T>(ProblemList problems, Func<T?> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (Exception damage) when (damage is XmlException or InvalidDataException or IOException or ArgumentException or NotSupportedException or FormatException or InvalidOperationException or IndexOutOfRangeException or OverflowException or OutOfMemoryException)
        {
            problems.Add(FileProblems.NotWorkbook(FileName, damage.Message));
            return null;
        }
    }
}
