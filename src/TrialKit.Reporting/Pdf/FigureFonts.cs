using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;

namespace TrialKit.Reporting.Pdf;

/// <summary>Cuts the fonts that came in with the figures down to the glyphs they draw; they come in whole.</summary>
internal static partial class FigureFonts
{
    /// <summary>Cuts every font of the document that has a font file and a list of its characters.</summary>
    public static void Shrink(PdfDocument pdf)
    {
        var fonts = pdf.Internals.GetAllObjects().OfType<PdfDictionary>().Where(each => each.Elements.GetName("/Subtype") == "/Type0");
        foreach (var font in fonts)
        {
            var file = font.Elements.GetArray("/DescendantFonts")?.Elements.GetDictionary(0)?
                .Elements.GetDictionary("/FontDescriptor")?.Elements.GetDictionary("/FontFile2");
            var characters = font.Elements.GetDictionary("/ToUnicode");
            if (file is not null && characters is not null)
            {
                Replace(file, FontSubset.Keep(file.Stream.UnfilteredValue, Glyphs(characters.Stream.UnfilteredValue)));
            }
        }
    }

    private static void Replace(PdfDictionary file, byte[] font)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            zlib.Write(font);
        }

        file.Stream.Value = packed.ToArray();
        file.Elements.SetName("/Filter", "/FlateDecode");
        file.Elements.SetInteger("/Length", (int)packed.Length);
        file.Elements.SetInteger("/Length1", font.Length);
    }

    // The map from glyphs to characters names every glyph drawn, one by one or as ranges (ISO 32000-1, 9.10.3).
    private static List<int> Glyphs(byte[] map)
    {
        var glyphs = new List<int>();
        foreach (Match section in Section().Matches(Encoding.Latin1.GetString(map)))
        {
            var isRange = section.Groups["range"].Success;
            foreach (Match row in (isRange ? RangeRow() : CharacterRow()).Matches(section.Groups["rows"].Value))
            {
                var first = Hex(row.Groups["first"].Value);
                var last = isRange ? Hex(row.Groups["last"].Value) : first;
                glyphs.AddRange(Enumerable.Range(first, last - first + 1));
            }
        }

        return glyphs;
    }

    private static int Hex(string digits) => int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"beginbf(?:(?<range>range)|char)(?<rows>.*?)endbf",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex Section();

    [GeneratedRegex(@"<(?<first>[0-9A-Fa-f]+)>\s*<[0-9A-Fa-f]+>", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex CharacterRow();

    [GeneratedRegex(
        @"<(?<first>[0-9A-Fa-f]+)>\s*<(?<last>[0-9A-Fa-f]+)>\s*<[0-9A-Fa-f]+>",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex RangeRow();
}
