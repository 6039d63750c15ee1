using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>The differences of several measures around one zero line, each on a scale of its own.</summary>
/// <param name="leftOfZero">What left of zero means, such as <c>less with chains</c>.</param>
/// <param name="rightOfZero">What right of zero means, such as <c>more with chains</c>.</param>
/// <param name="rows">The measures, the most important first.</param>
/// <param name="altText">The result in words.</param>
/// <param name="tone">The treatment's tone, 1 and up.</param>
public sealed class ForestOfMeasuresFigure(
    string leftOfZero,
    string rightOfZero,
    IReadOnlyList<ForestRow> rows,
    string altText,
    int tone = 1) : IFigure
{
    private const float HeadRoom = 18;
    private const float RowHeight = 20;
    private const float Gap = 14;

    private readonly IReadOnlyList<ForestRow> rows = rows is { Count: > 0 }
        ? rows
        : throw new ArgumentException("A forest has one measure or more; found none.", nameof(rows));

    private readonly SKColor color = FigureStyle.Tone(tone);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => HeightAt(FigureFiles.DefaultWidth) / FigureFiles.DefaultWidth;

    /// <inheritdoc/>
    public double HeightAt(double width) => HeadRoom + (rows.Count * RowHeight);

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var nameRoom = Math.Min(area.Width * 0.32f, rows.Max(row => Pen.Width(row.Name, FigureStyle.LabelSize)));
        var textRoom = Math.Min(area.Width * 0.38f, rows.Max(row => Pen.Width(row.Text)));
        var marks = new SKRect(area.Left + nameRoom + Gap, area.Top + HeadRoom, area.Right - textRoom - Gap, area.Bottom);
        var rowHeight = marks.Height / rows.Count;
        pen.Line(marks.MidX, marks.Top - 4, marks.MidX, marks.Bottom - 1, FigureStyle.Axis, 1);
        pen.Text(Pen.Shorten(leftOfZero, (marks.Width / 2) - 6), marks.MidX - 6, area.Top + 6, FigureStyle.Quiet, place: TextPlace.End);
        pen.Text(Pen.Shorten(rightOfZero, (marks.Width / 2) - 6), marks.MidX + 6, area.Top + 6, FigureStyle.Quiet);
        for (var i = 0; i < rows.Count; i++)
        {
            var y = marks.Top + ((i + 0.5f) * rowHeight);
            var row = rows[i];
            var shown = row.Mark?.Tone == MarkTone.Shown;
            pen.Text(Pen.Shorten(row.Name, nameRoom, FigureStyle.LabelSize), area.Left, y, FigureStyle.Ink, FigureStyle.LabelSize);
            pen.Text(Pen.Shorten(row.Text, textRoom), area.Right - textRoom, y, shown ? FigureStyle.Ink : FigureStyle.Quiet);
            if (row.Mark is { } mark)
            {
                DrawMark(pen, marks, y, mark);
            }
        }
    }

    private void DrawMark(Pen pen, SKRect marks, float y, IntervalMark mark)
    {
        float At(double value) => marks.MidX + ((float)Math.Clamp(value / mark.Reach, -1, 1) * marks.Width / 2);
        var ink = mark.Tone == MarkTone.Shown ? color : FigureStyle.ControlText;
        DrawArrow(pen, mark.Low, At(mark.Low), y, ink, 1);
        DrawArrow(pen, mark.High, At(mark.High), y, ink, -1);
        if (mark.Tone == MarkTone.Shown)
        {
            pen.Line(At(mark.Low), y, At(mark.High), y, ink, FigureStyle.StrongStroke);
            pen.Dot(At(mark.Estimate), y, FigureStyle.EstimateDot, ink);
        }
        else
        {
            pen.Line(At(mark.Low), y, At(mark.High), y, ink, 1.3f);
            pen.Ring(At(mark.Estimate), y, FigureStyle.EstimateDot, ink);
        }
    }

    // An end that is open ends in an arrow.
    private static void DrawArrow(Pen pen, double end, float x, float y, SKColor tone, int inward)
    {
        if (double.IsInfinity(end))
        {
            pen.Line(x, y, x + (3 * inward), y - 3, tone, 1.3f);
            pen.Line(x, y, x + (3 * inward), y + 3, tone, 1.3f);
        }
    }
}
