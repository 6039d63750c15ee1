using System.Buffers;
using System.Text;
using System.Text.Unicode;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Tables;

/// <summary>A text file held as UTF-8 bytes, and the lines and columns of places in it.</summary>
internal sealed class Utf8Text
{
    private List<int>? _lineStarts;
    private (int Line, int Offset, int Column) _last = (-1, 0, 0);

    private Utf8Text(string file, byte[] bytes)
    {
        File = file;
        Bytes = bytes;
    }

    /// <summary>The file's path from the trial folder.</summary>
    public string File { get; }

    /// <summary>The whole file, a byte-order mark included.</summary>
    public byte[] Bytes { get; }

    /// <summary>Bytes before the text: 3 for a byte-order mark, else 0.</summary>
    public int MarkLength => Bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0;

    /// <summary>The text as a string, without the byte-order mark.</summary>
    public string Content => Encoding.UTF8.GetString(Bytes, MarkLength, Bytes.Length - MarkLength);

    /// <summary>Reads a file, or says why it cannot be read.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="file">The file's path from the folder.</param>
    /// <param name="problems">Takes a file that is too long, no plain file, not UTF-8 or not readable.</param>
    /// <param name="longest">The longest that is read, in bytes.</param>
    /// <returns>The text, or null with an error added.</returns>
    public static Utf8Text? Read(string folder, string file, ProblemList problems, long longest = TrialFile.Longest) =>
        TrialFile.Read(folder, file, problems, longest) is { } bytes ? FromBytes(file, bytes, problems) : null;

    /// <summary>Checks bytes to be UTF-8.</summary>
    /// <returns>The text, or null with the place of the first other byte added.</returns>
    public static Utf8Text? FromBytes(string file, byte[] bytes, ProblemList problems)
    {
        var text = new Utf8Text(file, bytes);
        if (Utf8.IsValid(bytes))
        {
            return text;
        }

        var offset = FirstInvalid(bytes);
        problems.Add(FileProblems.NotUtf8(text.Locate(offset), offset, bytes[offset]));
        return null;
    }

    /// <summary>The line and column of a byte: lines end with LF, CR or both, columns count characters.</summary>
    public ProblemLocation Locate(int offset)
    {
        _lineStarts ??= LineStarts();
        var line = _lineStarts.BinarySearch(offset);
        line = line < 0 ? Math.Max(0, ~line - 1) : line;
        // Places on one long line are mostly asked for one after the other: each is counted on from the one before.
        var (from, column) = _last.Line == line && _last.Offset <= offset ? (_last.Offset, _last.Column) : (_lineStarts[line], 1);
        for (var i = from; i < offset; i++)
        {
            // Every byte but the continuation bytes of UTF-8 begins a character.
            column += (Bytes[i] & 0xC0) == 0x80 ? 0 : 1;
        }

        _last = (line, offset, column);
        return new ProblemLocation(File, null, line + 1, column);
    }

    private List<int> LineStarts()
    {
        var starts = new List<int> { MarkLength };
        for (var i = MarkLength; i < Bytes.Length; i++)
        {
            if (Bytes[i] == '\n' || (Bytes[i] == '\r' && (i + 1 >= Bytes.Length || Bytes[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }

        return starts;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var offset = 0;
        while (Rune.DecodeFromUtf8(bytes[offset..], out _, out var consumed) == OperationStatus.Done)
        {
            offset += consumed;
        }

        return offset;
    }
}
