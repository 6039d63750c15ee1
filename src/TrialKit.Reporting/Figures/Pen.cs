using SkiaSharp;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Figures;

/// <summary>How a line of text stands to its point.</summary>
internal enum TextPlace
{
    /// <summary>It begins at the point.</summary>
    Start,

    /// <summary>The point is its middle.</summary>
    Middle,

    /// <summary>It ends at the point.</summary>
    End,
}

/// <summary>The few strokes figures are drawn with, in the style's fonts and sizes.</summary>
/// <param name="canvas">Where they are drawn; one unit is a point.</param>
internal sealed class Pen(SKCanvas canvas)
{
    // A text that was measured for its room must fit it in spite of single precision.
    private const float Rounding = 0.05f;

    private static readonly float[] DashPattern = [4, 2];
    private static readonly float[] DotPattern = [1, 2];

    /// <summary>A straight line.</summary>
    public void Line(float x1, float y1, float x2, float y2, SKColor color, float width, LineStroke stroke = LineStroke.Whole)
    {
        using var paint = Stroke(color, width);
        using var broken = stroke == LineStroke.Whole ? null : SKPathEffect.CreateDash(stroke == LineStroke.Dashed ? DashPattern : DotPattern, 0);
        paint.PathEffect = broken;
        canvas.DrawLine(x1, y1, x2, y2, paint);
    }

    /// <summary>A filled dot.</summary>
    public void Dot(float x, float y, float diameter, SKColor color)
    {
        using var paint = Fill(color);
        canvas.DrawCircle(x, y, diameter / 2, paint);
    }

    /// <summary>Filled dots as touches of a round pen, which take a fraction of the bytes of circles.</summary>
    /// <remarks>Each is a line too short to see: points and lines of no length are lost in SVG.</remarks>
    public void Dots(SKPoint[] points, float diameter, SKColor color)
    {
        const float touch = 0.02f;
        using var paint = Stroke(color, diameter);
        paint.StrokeCap = SKStrokeCap.Round;
        using var path = new SKPath();
        foreach (var point in points)
        {
            path.MoveTo(point.X - (touch / 2), point.Y);
            path.LineTo(point.X + (touch / 2), point.Y);
        }

        canvas.DrawPath(path, paint);
    }

    /// <summary>A dot with a light middle.</summary>
    public void Ring(float x, float y, float diameter, SKColor color)
    {
        using var fill = Fill(SKColors.White);
        canvas.DrawCircle(x, y, diameter / 2, fill);
        using var paint = Stroke(color, 1.3f);
        canvas.DrawCircle(x, y, (diameter - 1.3f) / 2, paint);
    }

    /// <summary>A filled rectangle.</summary>
    public void Box(SKRect box, SKColor color)
    {
        using var paint = Fill(color);
        canvas.DrawRect(box, paint);
    }

    /// <summary>A line of text.</summary>
    /// <param name="text">The text; what the font lacks is replaced.</param>
    /// <param name="x">The point it stands to.</param>
    /// <param name="middle">The height of the middle of its capitals.</param>
    /// <param name="color">The tone.</param>
    /// <param name="size">The size.</param>
    /// <param name="place">How it stands to the point.</param>
    /// <param name="strong">Whether it is heavier.</param>
    public void Text(
        string text,
        float x,
        float middle,
        SKColor color,
        float size = FigureStyle.SmallSize,
        TextPlace place = TextPlace.Start,
        bool strong = false)
    {
        var face = strong ? BundledFace.SemiBold : BundledFace.Regular;
        using var font = new SKFont(BundledFonts.Typeface(face), size)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };
        using var paint = Fill(color);
        text = PrintableText.Clean(text);
        var shift = place switch
        {
            TextPlace.Start => 0,
            TextPlace.Middle => Width(text, size, strong) / 2,
            _ => Width(text, size, strong),
        };
        canvas.DrawText(text, x - shift, middle + (float)(size * TextMeasure.CapHeight / 2), font, paint);
    }

    /// <summary>The width of a line of text.</summary>
    public static float Width(string text, float size = FigureStyle.SmallSize, bool strong = false) =>
        (float)TextMeasure.Width(PrintableText.Clean(text), strong ? BundledFace.SemiBold : BundledFace.Regular, size);

    /// <summary>The text, or as much of it as fits with an ellipsis behind it.</summary>
    public static string Shorten(string text, float width, float size = FigureStyle.SmallSize, bool strong = false) =>
        TextMeasure.Shorten(PrintableText.Clean(text), strong ? BundledFace.SemiBold : BundledFace.Regular, size, width + Rounding);

    private static SKPaint Stroke(SKColor color, float width) =>
        new() { Color = color, StrokeWidth = width, Style = SKPaintStyle.Stroke, IsAntialias = true, StrokeCap = SKStrokeCap.Butt };

    private static SKPaint Fill(SKColor color) => new() { Color = color, Style = SKPaintStyle.Fill, IsAntialias = true };
}
