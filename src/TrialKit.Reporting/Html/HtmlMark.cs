using SkiaSharp;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Html;

/// <summary>An interval mark as a small drawing beside its sentence; the sentence says the same, so it is hidden from those who listen.</summary>
internal static class HtmlMark
{
    private const double Width = 124;
    private const double Height = 16;
    private const double DotRadius = 3.6;
    private const double Arrow = 3;

    /// <summary>The drawing.</summary>
    public static string Of(IntervalMark mark)
    {
        var shown = mark.Tone == MarkTone.Shown;
        var color = Hex(shown ? FigureStyle.Treatments[0] : FigureStyle.ControlText);
        var stroke = shown ? 2.4 : 1.4;
        double At(double value) => (Width / 2) + (Math.Clamp(value / mark.Reach, -1, 1) * ((Width / 2) - DotRadius));
        var middle = Height / 2;
        var (low, high, dot) = (At(mark.Low), At(mark.High), At(mark.Estimate));
        return $"<svg class=\"mark\" viewBox=\"0 0 {N(Width)} {N(Height)}\" aria-hidden=\"true\">"
            + Line(Width / 2, 0, Width / 2, Height, Hex(FigureStyle.Axis), 0.8)
            + Line(low, middle, high, middle, color, stroke)
            + Head(mark.Low, low, middle, 1, color, stroke)
            + Head(mark.High, high, middle, -1, color, stroke)
            + $"<circle cx=\"{N(dot)}\" cy=\"{N(middle)}\" r=\"{N(DotRadius)}\" fill=\"{(shown ? color : "#FFFFFF")}\" stroke=\"{color}\" stroke-width=\"1.4\"/></svg>";
    }

    /// <summary>A tone as a style sheet writes it.</summary>
    public static string Hex(SKColor color) => FormattableString.Invariant($"#{color.Red:X2}{color.Green:X2}{color.Blue:X2}");

    private static string Head(double end, double x, double y, int inward, string color, double stroke) => double.IsInfinity(end)
        ? Line(x, y, x + (inward * Arrow), y - Arrow, color, stroke) + Line(x, y, x + (inward * Arrow), y + Arrow, color, stroke)
        : "";

    private static string Line(double x1, double y1, double x2, double y2, string color, double width) =>
        $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" stroke=\"{color}\" stroke-width=\"{N(width)}\"/>";

    private static string N(double value) => HtmlText.Number(value);
}
