using SkiaSharp;
using TrialKit.Reporting.Fonts;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class FontSubsetTests
{
    private static readonly byte[] Font = BundledFonts.Bytes(BundledFace.Regular);

    [Fact]
    public void Keep_Glyphs_DrawAsInTheWholeFont()
    {
        // é and ½ are composed of other glyphs.
        var glyphs = BundledFonts.Typeface(BundledFace.Regular).GetGlyphs("Seéd½ ");
        var subset = FontSubset.Keep(Font, glyphs.Select(glyph => (int)glyph));

        Assert.All(glyphs, glyph => Assert.Equal(Outline(Font, glyph), Outline(subset, glyph)));
    }

    [Fact]
    public void Keep_OtherGlyphs_AreEmpty()
    {
        var typeface = BundledFonts.Typeface(BundledFace.Regular);
        var subset = FontSubset.Keep(Font, [typeface.GetGlyph('S')]);
        var tables = FontSubset.Tables(subset);
        var places = FontSubset.Places(tables["loca"].Span, tables["head"].Span[51] == 1);

        Assert.True(subset.Length < 20_000, $"{subset.Length} bytes");
        Assert.Equal(places[typeface.GetGlyph('W')], places[typeface.GetGlyph('W') + 1]);
        Assert.NotEqual(places[typeface.GetGlyph('S')], places[typeface.GetGlyph('S') + 1]);
        Assert.NotEqual(places[0], places[1]);
    }

    private static string Outline(byte[] font, ushort glyph)
    {
        using var data = SKData.CreateCopy(font);
        using var typeface = SKTypeface.FromData(data);
        using var skia = new SKFont(typeface, 1000);
        using var path = skia.GetGlyphPath(glyph);
        return path?.ToSvgPathData() ?? string.Empty;
    }
}
