using SkiaSharp;
using TrialKit.Heat;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Figures;

/// <summary>How days are told apart by what they rest on: observed ones are full, filled ones hollow, forecast ones dark blue, normal ones pale.</summary>
internal static class DayKindMark
{
    private const float Side = 6;
    private const float Outline = 1;

    /// <summary>Fills a box in the manner of a kind of day.</summary>
    public static void Box(Pen pen, SKRect box, DayKind kind)
    {
        pen.Box(box, Tone(kind));
        if (kind == DayKind.Filled && box.Width > 2 * Outline && box.Height > 2 * Outline)
        {
            pen.Box(new SKRect(box.Left + Outline, box.Top + Outline, box.Right - Outline, box.Bottom - Outline), SKColors.White);
        }
    }

    /// <summary>Draws the key of the kinds there are, from a point to the right.</summary>
    /// <returns>Where it ends.</returns>
    public static float Key(Pen pen, IEnumerable<DayKind> kinds, float x, float middle)
    {
        foreach (var kind in kinds.Distinct().Order())
        {
            Box(pen, SKRect.Create(x, middle - (Side / 2), Side, Side), kind);
            pen.Text(ForecastWords.Kind(kind), x + Side + 3, middle, FigureStyle.Quiet);
            x += Side + 3 + Pen.Width(ForecastWords.Kind(kind)) + 10;
        }

        return x;
    }

    private static SKColor Tone(DayKind kind) => kind switch
    {
        DayKind.Forecast => FigureStyle.Treatments[0],
        DayKind.Normal => FigureStyle.Steps[0],
        _ => FigureStyle.Control,
    };
}
