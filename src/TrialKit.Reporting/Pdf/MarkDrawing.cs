using PdfSharp.Drawing;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Pdf;

/// <summary>Draws an interval mark: a bar from end to end, a dot at the estimate, an arrow where an end is open.</summary>
internal static class MarkDrawing
{
    private const double DotRadius = 3.1;
    private const double Arrow = 3;

    /// <summary>Draws the mark in its strip.</summary>
    public static void Draw(XGraphics graphics, PlacedMark item)
    {
        var box = item.Box;
        var mark = item.Mark;
        var shown = mark.Tone == MarkTone.Shown;
        var color = PdfColors.Of(shown ? FigureStyle.Treatments[0] : FigureStyle.ControlText);
        var middle = box.Y + (box.Height / 2);
        double At(double value) => box.X + (box.Width / 2) + (Math.Clamp(value / mark.Reach, -1, 1) * box.Width / 2);

        var pen = new XPen(color, shown ? 2.4 : 1.4) { LineCap = XLineCap.Flat };
        graphics.DrawLine(pen, At(mark.Low), middle, At(mark.High), middle);
        DrawArrow(graphics, pen, mark.Low, At(mark.Low), middle, 1);
        DrawArrow(graphics, pen, mark.High, At(mark.High), middle, -1);

        var dot = new XRect(At(mark.Estimate) - DotRadius, middle - DotRadius, 2 * DotRadius, 2 * DotRadius);
        if (shown)
        {
            graphics.DrawEllipse(new XSolidBrush(color), dot);
        }
        else
        {
            graphics.DrawEllipse(new XPen(color, 1.4), XBrushes.White, dot);
        }
    }

    private static void DrawArrow(XGraphics graphics, XPen pen, double end, double x, double y, int inward)
    {
        if (double.IsInfinity(end))
        {
            graphics.DrawLine(pen, x, y, x + (inward * Arrow), y - Arrow);
            graphics.DrawLine(pen, x, y, x + (inward * Arrow), y + Arrow);
        }
    }
}
