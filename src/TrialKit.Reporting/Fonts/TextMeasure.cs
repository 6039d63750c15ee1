using System.Collections.Concurrent;
using SkiaSharp;

namespace TrialKit.Reporting.Fonts;

/// <summary>Widths and heights of text in the bundled faces, in points: the sum of the glyphs' advances, without kerning.</summary>
internal static class TextMeasure
{
    /// <summary>Height of a capital, as a share of the size.</summary>
    public const double CapHeight = 0.698;

    /// <summary>From the top of a line's letters with accents to the baseline, as a share of the size.</summary>
    public const double Ascent = 0.93;

    /// <summary>From the baseline to the foot of the deepest letter, as a share of the size.</summary>
    public const double Descent = 0.24;

    // Widths are measured once per character at a large size, where no rounding to a pixel grid shows.
    private const float MeasuredAt = 1000;

    private static readonly ConcurrentDictionary<(BundledFace, int), double> Advances = new();

    /// <summary>The width of one line of text.</summary>
    /// <param name="text">The text, on one line.</param>
    /// <param name="face">The face it is set in.</param>
    /// <param name="size">The size in points.</param>
    public static double Width(string text, BundledFace face, double size)
    {
        var sum = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            sum += Advances.GetOrAdd((face, rune.Value), Measure);
        }

        return sum * size;
    }

    /// <summary>The text, or as much of its beginning as fits with an ellipsis behind it.</summary>
    public static string Shorten(string text, BundledFace face, double size, double width)
    {
        if (Width(text, face, size) <= width)
        {
            return text;
        }

        var length = text.Length;
        while (length > 0 && Width(text[..length].TrimEnd() + "…", face, size) > width)
        {
            length -= length > 1 && char.IsLowSurrogate(text[length - 1]) ? 2 : 1;
        }

        return text[..length].TrimEnd() + "…";
    }

    private static double Measure((BundledFace Face, int CodePoint) key)
    {
        using var font = new SKFont(BundledFonts.Typeface(key.Face), MeasuredAt)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };
        return font.MeasureText(char.ConvertFromUtf32(key.CodePoint)) / MeasuredAt;
    }
}
