using System.IO.Compression;
using System.Xml;

namespace TrialKit.Ingest.Workbooks;

/// <summary>The parts of a workbook's archive, found by name and by the relations between them.</summary>
/// <remarks>ECMA-376 part 2: names of parts do not depend on case, and no two parts have the same name.</remarks>
internal sealed class PackageParts : IDisposable
{
    private const string RelationsFolder = "_rels";
    private static readonly XmlReaderSettings Xml = new() { CloseInput = true, DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreProcessingInstructions = true };

    private readonly ZipArchive _archive;
    private readonly Dictionary<string, ZipArchiveEntry> _parts = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Opens an archive.</summary>
    /// <exception cref="InvalidDataException">It is no archive, or a part stands in it twice.</exception>
    public PackageParts(Stream stream)
    {
        _archive = new ZipArchive(stream, ZipArchiveMode.Read);
        foreach (var entry in _archive.Entries)
        {
            if (!_parts.TryAdd(entry.FullName, entry))
            {
                throw new InvalidDataException($"the part {entry.FullName} stands in it twice");
            }
        }
    }

    /// <summary>Whether the parts unpack to more than a limit: by the sizes the archive declares, then by unpacking, since a declared size may lie.</summary>
    /// <exception cref="InvalidDataException">A part is not what was packed: its size or its checksum differs.</exception>
    public bool UnpackBeyond(long limit)
    {
        if (_archive.Entries.Sum(entry => (decimal)entry.Length) > limit)
        {
            return true;
        }

        var buffer = new byte[81920];
        var total = 0L;
        foreach (var entry in _archive.Entries)
        {
            using var part = entry.Open();
            var (sum, length) = (Crc32.Start, 0L);
            for (var read = part.Read(buffer); read > 0; read = part.Read(buffer))
            {
                length += read;
                if (total + length > limit)
                {
                    return true;
                }

                sum = Crc32.Add(sum, buffer.AsSpan(0, read));
            }

            total += length;
            if (length != entry.Length || Crc32.Finish(sum) != entry.Crc32)
            {
                throw new InvalidDataException($"the part {entry.FullName} is damaged: its checksum differs");
            }
        }

        return false;
    }

    /// <summary>Whether there is a part of a name.</summary>
    public bool Has(string part) => _parts.ContainsKey(part);

    /// <summary>Opens a part as XML; a document type is refused.</summary>
    /// <exception cref="InvalidDataException">There is no such part.</exception>
    public XmlReader Open(string part) => _parts.TryGetValue(part, out var entry)
        ? XmlReader.Create(entry.Open(), Xml)
        : throw new InvalidDataException($"the part {part} is missing");

    /// <summary>The relations of a part: id, the last word of the type, and the part it points to.</summary>
    /// <param name="part">The part; empty for the package as a whole.</param>
    public IReadOnlyList<(string Id, string Type, string Target)> RelationsOf(string part)
    {
        var folder = part[..(part.LastIndexOf('/') + 1)];
        var relations = new List<(string, string, string)>();
        var file = $"{folder}{RelationsFolder}/{part[folder.Length..]}.rels";
        if (!Has(file))
        {
            return relations;
        }

        using var xml = Open(file);
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "Relationship" } && xml.GetAttribute("Id") is { } id && xml.GetAttribute("Type") is { } type && xml.GetAttribute("Target") is { } target)
            {
                relations.Add((id, type[(type.LastIndexOf('/') + 1)..], target.StartsWith('/') ? target[1..] : Resolve(folder, target)));
            }
        }

        return relations;
    }

    public void Dispose() => _archive.Dispose();

    private static string Resolve(string folder, string target)
    {
        var steps = folder.Split('/', StringSplitOptions.RemoveEmptyEntries).ToList();
        foreach (var step in target.Split('/'))
        {
            if (step != "..")
            {
                steps.Add(step);
            }
            else if (steps.Count > 0)
            {
                steps.RemoveAt(steps.Count - 1);
            }
        }

        return string.Join('/', steps.Where(step => step != "."));
    }
}
