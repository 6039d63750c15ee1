using System.IO.Compression;
using System.Text;

namespace TrialKit.Fuzz.Mutation;

/// <summary>Changes a workbook: its bytes, the tokens of a part, or its parts and their elements.</summary>
internal static class WorkbookDamage
{
    private static readonly string[] Places =
    [
        "r=\"1\"", "r=\"0\"", "r=\"-1\"", "r=\"1048576\"", "r=\"1048577\"", "r=\"2147483647\"", "r=\"99999999999\"", "r=\"A1\"", "r=\"XFD1\"", "r=\"XFE1\"", "r=\"ZZZZZZZ9\"", "r=\"A\"", "r=\"7\"", "r=\"\"",
        "t=\"s\"", "t=\"str\"", "t=\"b\"", "t=\"e\"", "t=\"d\"", "t=\"n\"", "t=\"inlineStr\"", "s=\"1\"", "s=\"2\"", "s=\"999\"", "s=\"-1\"", "numFmtId=\"14\"", "numFmtId=\"164\"", "count=\"999999999\"",
    ];

    private static readonly string[] Names =
        ["../../outside.xml", "/etc/passwd", "xl\\workbook.xml", "XL/WORKBOOK.XML", "xl/sharedStrings.xml", "xl/worksheets/sheet1.xml", "a:b", "part"];

    /// <summary>The workbook with a few damages of a kind.</summary>
    public static byte[] Apply(byte[] sound, MutationKind kind, Random random)
    {
        if (kind == MutationKind.Bytes)
        {
            return ByteDamage.Apply(sound, random);
        }

        var parts = Unpack(sound);
        for (var damages = Damages.Few(random); damages > 0 && parts.Count > 0; damages--)
        {
            var at = random.Next(parts.Count);
            if (kind == MutationKind.Tokens)
            {
                parts[at] = (parts[at].Name, TokenDamage.Apply(parts[at].Bytes, random));
            }
            else if (random.Next(4) == 0)
            {
                Parts(parts, at, random);
            }
            else
            {
                parts[at] = (parts[at].Name, Elements(parts[at].Bytes, random));
            }
        }

        return Pack(parts);
    }

    private static void Parts(List<(string Name, byte[] Bytes)> parts, int at, Random random)
    {
        switch (random.Next(5))
        {
            case 0:
                parts.RemoveAt(at);
                break;
            case 1:
                parts.Add(parts[at]);
                break;
            case 2:
                parts[at] = (parts[at].Name, parts[random.Next(parts.Count)].Bytes);
                break;
            case 3:
                parts[at] = (Names[random.Next(Names.Length)], parts[at].Bytes);
                break;
            default:
                parts[at] = (parts[at].Name, []);
                break;
        }
    }

    /// <summary>Elements of a part taken out, doubled, exchanged, nested, or with another place or type.</summary>
    private static byte[] Elements(byte[] part, Random random)
    {
        var pieces = Encoding.UTF8.GetString(part).Split('<').ToList();
        var at = random.Next(pieces.Count);
        switch (random.Next(7))
        {
            case 0:
                pieces.RemoveAt(at);
                break;
            case 1:
                pieces.Insert(at, pieces[random.Next(pieces.Count)]);
                break;
            case 2:
                var other = random.Next(pieces.Count);
                (pieces[at], pieces[other]) = (pieces[other], pieces[at]);
                break;
            case 3:
                pieces.InsertRange(at, Enumerable.Repeat(pieces[at], 1 + random.Next(300)));
                break;
            case 4:
                var length = random.Next(Math.Min(40, pieces.Count - at));
                pieces.InsertRange(random.Next(pieces.Count), pieces.GetRange(at, length));
                break;
            default:
                pieces[at] = Attribute(pieces[at], random);
                break;
        }

        return Encoding.UTF8.GetBytes(string.Join('<', pieces));
    }

    private static string Attribute(string element, Random random)
    {
        var place = Places[random.Next(Places.Length)];
        var name = place[..place.IndexOf('=', StringComparison.Ordinal)];
        var start = element.IndexOf(" " + name + "=\"", StringComparison.Ordinal);
        if (start >= 0)
        {
            var end = element.IndexOf('"', start + name.Length + 3);
            return end < 0 ? element : element[..(start + 1)] + place + element[(end + 1)..];
        }

        var tag = element.IndexOfAny([' ', '>', '/']);
        return tag > 0 ? element[..tag] + " " + place + element[tag..] : element;
    }

    private static List<(string Name, byte[] Bytes)> Unpack(byte[] workbook)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook));
        var parts = new List<(string, byte[])>();
        foreach (var entry in archive.Entries)
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            parts.Add((entry.FullName, bytes.ToArray()));
        }

        return parts;
    }

    private static byte[] Pack(List<(string Name, byte[] Bytes)> parts)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in parts)
            {
                using var entry = archive.CreateEntry(name, CompressionLevel.Fastest).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }
}
