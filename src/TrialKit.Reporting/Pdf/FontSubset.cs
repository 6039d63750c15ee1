using System.Buffers.Binary;
using System.Text;

namespace TrialKit.Reporting.Pdf;

/// <summary>Cuts a TrueType font down to the glyphs a page draws; glyph numbers stay as they are.</summary>
/// <remarks>Tables and checksums after the OpenType specification, chapters "The OpenType font file", glyf, loca and head.</remarks>
internal static class FontSubset
{
    // What a CIDFontType2 needs (ISO 32000-1, 9.9): outlines, their places, metrics and hinting.
    private static readonly string[] KeptTables = ["cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "prep"];

    // In the order of their tags, as the directory lists them.
    private static readonly string[] ScreenTables = ["OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post", "prep"];

    private const int CompositeArgumentsAreWords = 0x0001;
    private const int CompositeHasScale = 0x0008;
    private const int CompositeMore = 0x0020;
    private const int CompositeHasTwoScales = 0x0040;
    private const int CompositeHasMatrix = 0x0080;

    /// <summary>The font with the outlines of these glyphs, of glyph 0 and of the parts they are composed of; all others are empty.</summary>
    /// <param name="font">A TrueType font file.</param>
    /// <param name="glyphs">The glyphs drawn.</param>
    public static byte[] Keep(byte[] font, IEnumerable<int> glyphs) => Keep(font, glyphs, KeptTables);

    /// <summary>The same with the tables that a browser asks for besides: characters, names and metrics (OpenType specification, "Required tables").</summary>
    /// <param name="font">A TrueType font file.</param>
    /// <param name="glyphs">The glyphs shown.</param>
    public static byte[] KeepForScreen(byte[] font, IEnumerable<int> glyphs) => Keep(font, glyphs, ScreenTables);

    private static byte[] Keep(byte[] font, IEnumerable<int> glyphs, string[] keptTables)
    {
        var tables = Tables(font);
        var longPlaces = U16(tables["head"].Span, 50) == 1;
        var places = Places(tables["loca"].Span, longPlaces);
        var outlines = tables["glyf"];
        var kept = Closure(glyphs.Append(0), places, outlines.Span);

        var glyf = new MemoryStream();
        var loca = new byte[tables["loca"].Length];
        for (var glyph = 0; glyph < places.Length; glyph++)
        {
            WritePlace(loca, glyph, (int)glyf.Length, longPlaces);
            if (glyph < places.Length - 1 && kept.Contains(glyph))
            {
                glyf.Write(outlines.Span[places[glyph]..places[glyph + 1]]);
                glyf.Write(new byte[(4 - (int)(glyf.Length % 4)) % 4]);
            }
        }

        tables["glyf"] = glyf.ToArray();
        tables["loca"] = loca;
        if (tables.TryGetValue("post", out var post))
        {
            tables["post"] = WithoutNames(post);
        }

        return Assemble(keptTables.Where(tables.ContainsKey).Select(tag => (tag, tables[tag])).ToList());
    }

    /// <summary>The tables of a font by their tag.</summary>
    internal static Dictionary<string, ReadOnlyMemory<byte>> Tables(byte[] font)
    {
        var tables = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        for (var i = 0; i < U16(font, 4); i++)
        {
            var entry = 12 + (16 * i);
            tables[Encoding.ASCII.GetString(font, entry, 4)] = font.AsMemory((int)U32(font, entry + 8), (int)U32(font, entry + 12));
        }

        return tables;
    }

    /// <summary>Where each glyph's outline begins, and where the last one ends.</summary>
    internal static int[] Places(ReadOnlySpan<byte> loca, bool longPlaces)
    {
        var places = new int[loca.Length / (longPlaces ? 4 : 2)];
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = longPlaces ? (int)U32(loca, 4 * i) : 2 * U16(loca, 2 * i);
        }

        return places;
    }

    // Version 3 of the table has its first 32 bytes only: glyphs have no names.
    private static byte[] WithoutNames(ReadOnlyMemory<byte> post)
    {
        var head = post[..32].ToArray();
        WriteU32(head, 0, 0x00030000);
        return head;
    }

    private static HashSet<int> Closure(IEnumerable<int> glyphs, int[] places, ReadOnlySpan<byte> outlines)
    {
        var kept = new HashSet<int>();
        var open = new Stack<int>(glyphs);
        while (open.TryPop(out var glyph))
        {
            if (glyph < 0 || glyph >= places.Length - 1 || !kept.Add(glyph))
            {
                continue;
            }

            foreach (var part in Parts(outlines[places[glyph]..places[glyph + 1]]))
            {
                open.Push(part);
            }
        }

        return kept;
    }

    private static List<int> Parts(ReadOnlySpan<byte> outline)
    {
        var parts = new List<int>();
        if (outline.Length == 0 || (short)U16(outline, 0) >= 0)
        {
            return parts;
        }

        var at = 10;
        int flags;
        do
        {
            flags = U16(outline, at);
            parts.Add(U16(outline, at + 2));
            at += 4 + ((flags & CompositeArgumentsAreWords) != 0 ? 4 : 2);
            at += (flags & CompositeHasScale) != 0 ? 2 : (flags & CompositeHasTwoScales) != 0 ? 4 : (flags & CompositeHasMatrix) != 0 ? 8 : 0;
        }
        while ((flags & CompositeMore) != 0);

        return parts;
    }

    private static byte[] Assemble(List<(string Tag, ReadOnlyMemory<byte> Data)> tables)
    {
        var log = (int)Math.Log2(tables.Count);
        var length = 12 + (16 * tables.Count) + tables.Sum(table => Padded(table.Data.Length));
        var font = new byte[length];
        WriteU32(font, 0, 0x00010000);
        WriteU16(font, 4, tables.Count);
        WriteU16(font, 6, 16 << log);
        WriteU16(font, 8, log);
        WriteU16(font, 10, (16 * tables.Count) - (16 << log));
        var at = 12 + (16 * tables.Count);
        var head = 0;
        for (var i = 0; i < tables.Count; i++)
        {
            var (tag, data) = tables[i];
            data.Span.CopyTo(font.AsSpan(at));
            if (tag == "head")
            {
                head = at;
                WriteU32(font, head + 8, 0);
            }

            var entry = 12 + (16 * i);
            Encoding.ASCII.GetBytes(tag, font.AsSpan(entry, 4));
            WriteU32(font, entry + 4, Checksum(font.AsSpan(at, Padded(data.Length))));
            WriteU32(font, entry + 8, (uint)at);
            WriteU32(font, entry + 12, (uint)data.Length);
            at += Padded(data.Length);
        }

        WriteU32(font, head + 8, 0xB1B0AFBA - Checksum(font));
        return font;
    }

    private static int Padded(int length) => (length + 3) / 4 * 4;

    private static uint Checksum(ReadOnlySpan<byte> data)
    {
        var sum = 0u;
        for (var i = 0; i < data.Length; i += 4)
        {
            sum += U32(data, i);
        }

        return sum;
    }

    private static void WritePlace(byte[] loca, int glyph, int place, bool longPlaces)
    {
        if (longPlaces)
        {
            WriteU32(loca, 4 * glyph, (uint)place);
        }
        else
        {
            WriteU16(loca, 2 * glyph, place / 2);
        }
    }

    private static int U16(ReadOnlySpan<byte> data, int at) => BinaryPrimitives.ReadUInt16BigEndian(data[at..]);

    private static uint U32(ReadOnlySpan<byte> data, int at) => BinaryPrimitives.ReadUInt32BigEndian(data[at..]);

    private static void WriteU16(byte[] data, int at, int value) => BinaryPrimitives.WriteUInt16BigEndian(data.AsSpan(at), (ushort)value);

    private static void WriteU32(byte[] data, int at, uint value) => BinaryPrimitives.WriteUInt32BigEndian(data.AsSpan(at), value);
}
