using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace TrialKit.Reporting.Pdf;

/// <summary>Packs the many small objects of a tagged file into deflated streams, which takes a third off its size.</summary>
/// <remarks>
/// Object streams and the cross-reference stream that finds what is in them, after ISO 32000-1, 7.5.7 and 7.5.8. Streams stay
/// objects of their own; the file holds the same objects under the same numbers.
/// </remarks>
internal static partial class PackedObjects
{
    private const int PerStream = 200;
    private const int EntryLength = 7;

    /// <summary>The file with its objects packed.</summary>
    /// <param name="file">A file with one cross-reference table, unencrypted.</param>
    public static byte[] Of(byte[] file)
    {
        var text = Encoding.Latin1.GetString(file);
        var table = CrossReferenceTable.Of(text);
        var objects = table.Objects.Select(each => (each.Number, Body: Body(text[each.From..each.To]), each.From, each.To)).ToArray();
        using var output = new MemoryStream(file.Length);
        output.Write(file, 0, objects[0].From);

        // Kind 1 lies in the file at a place, kind 2 in an object stream at a rank (table 18 of the standard).
        var entries = new SortedDictionary<int, (byte Kind, int Place, int Rank)> { [0] = (0, 0, 0) };
        foreach (var each in objects.Where(each => IsStream(each.Body)))
        {
            entries[each.Number] = (1, (int)output.Length, 0);
            output.Write(file, each.From, each.To - each.From);
        }

        var next = table.Entries.Count;
        foreach (var chunk in objects.Where(each => !IsStream(each.Body)).Chunk(PerStream))
        {
            entries[next] = (1, (int)output.Length, 0);
            WriteChunk(output, next, [.. chunk.Select(each => (each.Number, each.Body))]);
            for (var rank = 0; rank < chunk.Length; rank++)
            {
                entries[chunk[rank].Number] = (2, next, rank);
            }

            next++;
        }

        WriteTable(output, next, entries, Keys().Match(table.Trailer).Groups["keys"].Value);
        return output.ToArray();
    }

    // From the line after "N 0 obj" to the one before "endobj".
    private static string Body(string text)
    {
        var begin = text.IndexOf("obj", StringComparison.Ordinal) + "obj".Length;
        return text[begin..text.LastIndexOf("endobj", StringComparison.Ordinal)].Trim('\n', '\r', ' ');
    }

    private static bool IsStream(string body) => body.EndsWith("endstream", StringComparison.Ordinal);

    private static void WriteChunk(MemoryStream output, int number, (int Number, string Body)[] chunk)
    {
        var index = new StringBuilder();
        var bodies = new StringBuilder();
        foreach (var (each, body) in chunk)
        {
            index.Append(CultureInfo.InvariantCulture, $"{each} {bodies.Length} ");
            bodies.Append(body).Append('\n');
        }

        WriteStream(
            output,
            number,
            string.Create(CultureInfo.InvariantCulture, $"/Type/ObjStm/N {chunk.Length}/First {index.Length}"),
            Encoding.Latin1.GetBytes(index.Append(bodies).ToString()));
    }

    private static void WriteTable(MemoryStream output, int number, SortedDictionary<int, (byte Kind, int Place, int Rank)> entries, string trailer)
    {
        var start = (int)output.Length;
        entries[number] = (1, start, 0);
        var packed = new byte[EntryLength * (number + 1)];
        foreach (var (each, (kind, place, rank)) in entries)
        {
            var at = packed.AsSpan(EntryLength * each, EntryLength);
            at[0] = kind;
            BinaryPrimitives.WriteInt32BigEndian(at[1..], place);
            BinaryPrimitives.WriteUInt16BigEndian(at[5..], (ushort)rank);
        }

        WriteStream(output, number, string.Create(CultureInfo.InvariantCulture, $"/Type/XRef/W[1 4 2]/Size {number + 1}{trailer}"), packed);
        output.Write(Encoding.Latin1.GetBytes(string.Create(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n")));
    }

    private static void WriteStream(MemoryStream output, int number, string keys, byte[] content)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            zlib.Write(content);
        }

        output.Write(Encoding.Latin1.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<<{keys}/Filter/FlateDecode/Length {packed.Length}>>\nstream\n")));
        output.Write(packed.GetBuffer(), 0, (int)packed.Length);
        output.Write("\nendstream\nendobj\n"u8);
    }

    // The trailer's keys but its size, which is another now.
    [GeneratedRegex(@"<<(?<keys>.*?)/Size \d+>>", RegexOptions.Singleline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Keys();
}
