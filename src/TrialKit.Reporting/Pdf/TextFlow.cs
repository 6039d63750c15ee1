using SkiaSharp;

namespace TrialKit.Reporting.Pdf;

/// <summary>Lines of text as slabs that keep the first two and the last two lines of a paragraph together.</summary>
internal static class TextFlow
{
    /// <summary>The slabs of a text.</summary>
    /// <param name="fragments">The text.</param>
    /// <param name="size">Its size.</param>
    /// <param name="x">Left edge of its lines.</param>
    /// <param name="width">Width of its lines.</param>
    /// <param name="tag">What it belongs to.</param>
    /// <param name="leading">Height of a line as a multiple of the size.</param>
    public static List<Slab> Slabs(
        IReadOnlyList<Fragment> fragments,
        double size,
        double x,
        double width,
        Tag? tag,
        double leading = PageStyle.Leading)
    {
        var lines = LineBreaker.Break(fragments, size, width);
        return
        [
            .. lines.Select((line, i) => new Slab(size * leading, Place(line, size, x, Baseline(size, leading), tag))
            {
                KeepWithNext = i < lines.Count - 1 && (i == 0 || i == lines.Count - 2),
            }),
        ];
    }

    /// <summary>A plain text in one face and tone.</summary>
    public static List<Slab> Slabs(string text, bool strong, SKColor color, double size, double x, double width, Tag? tag) =>
        Slabs(LineBreaker.Fragments(text, strong, color), size, x, width, tag);

    /// <summary>The baseline of a line within its height: the white space of the line is shared above and below.</summary>
    public static double Baseline(double size, double leading = PageStyle.Leading) =>
        (size * leading / 2) + (size * (Fonts.TextMeasure.Ascent - Fonts.TextMeasure.Descent) / 2);

    /// <summary>The fragments of a line, side by side.</summary>
    public static List<PlacedItem> Place(IReadOnlyList<Fragment> line, double size, double x, double baseline, Tag? tag)
    {
        var items = new List<PlacedItem>();
        foreach (var fragment in line.Where(fragment => fragment.Text.Length > 0))
        {
            items.Add(PlacedText.At(x, baseline, tag, fragment.Text, fragment.Face, size, fragment.Color));
            x += Fonts.TextMeasure.Width(fragment.Text, fragment.Face, size);
        }

        return items;
    }
}
