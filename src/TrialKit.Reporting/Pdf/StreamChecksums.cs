using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace TrialKit.Reporting.Pdf;

/// <summary>Completes compressed streams that were written without their checksum, so that strict readers do not complain.</summary>
/// <remarks>
/// A zlib stream ends with the Adler-32 sum of its content (RFC 1950, 2.2); the PDF package leaves it out. The file is written
/// anew object by object, with the cross-reference table to match (ISO 32000-1, 7.5).
/// </remarks>
internal static partial class StreamChecksums
{
    private const string StartOfStream = "\nstream\n";

    /// <summary>The file with every deflated stream complete.</summary>
    /// <param name="file">A file with one cross-reference table.</param>
    public static byte[] Complete(byte[] file)
    {
        // Latin-1 maps each byte to one character, so that places in the text are places in the file.
        var text = Encoding.Latin1.GetString(file);
        var table = CrossReferenceTable.Of(text);
        var objects = table.Objects.ToArray();
        using var output = new MemoryStream(file.Length + 1024);
        output.Write(file, 0, objects[0].From);
        var moved = new Dictionary<int, long>();
        foreach (var (_, from, to) in objects)
        {
            moved.Add(from, output.Length);
            WriteObject(output, text, file, from, to);
        }

        var start = output.Length;
        var tail = new StringBuilder();
        tail.Append(table.Head);
        foreach (var (place, state) in table.Entries)
        {
            tail.Append(CultureInfo.InvariantCulture, $"{(moved.TryGetValue(place, out var at) ? at : place):D10}{state}");
        }

        tail.Append(table.Trailer).Append(CultureInfo.InvariantCulture, $"{start}").Append(table.End);
        output.Write(Encoding.Latin1.GetBytes(tail.ToString()));
        return output.ToArray();
    }

    private static void WriteObject(MemoryStream output, string text, byte[] file, int from, int to)
    {
        var stream = text.IndexOf(StartOfStream, from, to - from, StringComparison.Ordinal);
        var dictionary = stream < 0 ? string.Empty : text[from..stream];
        var length = Length().Match(dictionary);
        if (!length.Success || !dictionary.Contains("/FlateDecode", StringComparison.Ordinal))
        {
            output.Write(file, from, to - from);
            return;
        }

        var begin = stream + StartOfStream.Length;
        var size = int.Parse(length.Groups["size"].Value, CultureInfo.InvariantCulture);
        var packed = file.AsSpan(begin, size);
        var sum = Adler32(Unpack(packed));
        var isComplete = size >= 6 && BinaryPrimitives.ReadUInt32BigEndian(packed[^4..]) == sum;
        var digits = length.Groups["size"];
        var newSize = (isComplete ? size : size + 4).ToString(CultureInfo.InvariantCulture);
        output.Write(Encoding.Latin1.GetBytes(string.Concat(dictionary.AsSpan(0, digits.Index), newSize, dictionary.AsSpan(digits.Index + digits.Length))));
        output.Write(file, stream, StartOfStream.Length + size);
        if (!isComplete)
        {
            Span<byte> bytes = stackalloc byte[4];
            BinaryPrimitives.WriteUInt32BigEndian(bytes, sum);
            output.Write(bytes);
        }

        output.Write(file, begin + size, to - begin - size);
    }

    private static byte[] Unpack(ReadOnlySpan<byte> zlib)
    {
        // Two bytes of header stand before the deflated data.
        using var packed = new MemoryStream(zlib[2..].ToArray());
        using var deflate = new DeflateStream(packed, CompressionMode.Decompress);
        using var content = new MemoryStream();
        deflate.CopyTo(content);
        return content.ToArray();
    }

    private static uint Adler32(ReadOnlySpan<byte> data)
    {
        const uint modulus = 65521;
        uint a = 1;
        uint b = 0;
        foreach (var value in data)
        {
            a = (a + value) % modulus;
            b = (b + a) % modulus;
        }

        return (b << 16) | a;
    }

    [GeneratedRegex(@"/Length (?<size>\d+)(?! \d+ R)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Length();
}
