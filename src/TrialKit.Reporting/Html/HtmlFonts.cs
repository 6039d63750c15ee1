using TrialKit.Reporting.Fonts;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Html;

/// <summary>The bundled faces cut down to the letters of a page, as rules of its style sheet.</summary>
internal static class HtmlFonts
{
    /// <summary>The rules for the upright faces, and for the italic where it is used.</summary>
    /// <param name="text">Every letter that may be shown.</param>
    /// <param name="italic">Whether any of it is italic.</param>
    public static string Faces(string text, bool italic)
    {
        int[] letters = [.. text.EnumerateRunes().Select(rune => rune.Value).Where(value => value >= ' ').Distinct().Order()];
        BundledFace[] faces = italic ? [BundledFace.Regular, BundledFace.SemiBold, BundledFace.Italic] : [BundledFace.Regular, BundledFace.SemiBold];
        return string.Concat(faces.Select(face => Rule(face, letters)));
    }

    private static string Rule(BundledFace face, int[] letters)
    {
        var typeface = BundledFonts.Typeface(face);
        var glyphs = letters.Select(letter => (int)typeface.GetGlyph(letter)).Where(glyph => glyph != 0);
        var font = Convert.ToBase64String(FontSubset.KeepForScreen(BundledFonts.Bytes(face), glyphs));
        var (weight, style) = (face == BundledFace.SemiBold ? 600 : 400, face == BundledFace.Italic ? "italic" : "normal");
        return FormattableString.Invariant($"@font-face{{font-family:\"{BundledFonts.Family}\";font-weight:{weight};font-style:{style};src:url(data:font/ttf;base64,{font}) format(\"truetype\")}}\n");
    }
}
