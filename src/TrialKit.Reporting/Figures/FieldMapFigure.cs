using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>The strips of a plan seen from above, with the spots and the sprayer's tracks; along and across have their own scales.</summary>
/// <param name="strips">The strips.</param>
/// <param name="spots">The spots: across and along.</param>
/// <param name="tracks">Left and right edge of each sprayer track.</param>
/// <param name="width">Room across the rows.</param>
/// <param name="length">Length of the strips.</param>
/// <param name="unit">The unit of all of them.</param>
/// <param name="altText">The plan in words.</param>
public sealed class FieldMapFigure(
    IReadOnlyList<MapStrip> strips,
    IReadOnlyList<(double Across, double Along)> spots,
    IReadOnlyList<(double Left, double Right)> tracks,
    double width,
    double length,
    string unit,
    string altText) : IFigure
{
    private const float TopRoom = 46;
    private const float BottomRoom = 34;
    private const float LeftRoom = 38;
    private const float RightRoom = 12;
    private const float NameRow = 12;
    private const int MostNameRows = 2;
    private const float NameGap = 3;
    private const float LabelRoom = 16;
    private const byte StripAlpha = 70;

    private readonly IReadOnlyList<MapStrip> strips = Check(strips, width, length);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.95;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var data = new SKRect(area.Left + LeftRoom, area.Top + TopRoom, area.Right - RightRoom, area.Bottom - BottomRoom);
        using var chart = new Chart(area, data, (0, width), (0, length));
        chart.TicksLeft(Ticks.Round(0, length, 6).Values.Select(value => (value, NumberText.Number(value, 0))));
        chart.TicksBottom(Ticks.Round(0, width, Math.Max(2, (int)(data.Width / 60))).Values.Select(value => (value, NumberText.Number(value, 0))));
        foreach (var strip in strips)
        {
            chart.Band((strip.Left, strip.Right), (0, length), FigureStyle.Tone(strip.Tone).WithAlpha(StripAlpha));
        }

        foreach (var (left, right) in tracks)
        {
            chart.Band((Math.Max(0, left), Math.Min(width, right)), (0, length), FigureStyle.Grid);
        }

        chart.Render(canvas);
        pen.Text($"Along the rows, {unit}", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text($"Across the rows from the corner, {unit}. Dots are the places for counting{(tracks.Count > 0 ? "; grey bands are sprayer tracks" : string.Empty)}.", data.Left, area.Bottom - 7, FigureStyle.Ink, FigureStyle.LabelSize);
        var narrowest = strips.Min(strip => chart.X(strip.Right) - chart.X(strip.Left));
        var needed = (int)Math.Ceiling((strips.Max(strip => Pen.Width(strip.Name)) + NameGap) / narrowest);
        var rows = Math.Min(needed, MostNameRows);

        // Where two rows do not hold all names, every second, third or so stands for those beside it.
        var step = (needed + rows - 1) / rows;
        for (var i = 0; i < strips.Count; i++)
        {
            DrawStrip(canvas, pen, chart, strips[i]);
            if (i % step == 0)
            {
                pen.Text(strips[i].Name, (chart.X(strips[i].Left) + chart.X(strips[i].Right)) / 2, data.Top - 7 - (i / step % rows * NameRow), FigureStyle.Ink, place: TextPlace.Middle, strong: true);
            }
        }

        foreach (var (across, along) in spots)
        {
            pen.Ring(chart.X(across), chart.Y(along), FigureStyle.StripDot, FigureStyle.Ink);
        }
    }

    private void DrawStrip(SKCanvas canvas, Pen pen, Chart chart, MapStrip strip)
    {
        var (left, right) = (chart.X(strip.Left), chart.X(strip.Right));
        pen.Line(left, chart.Data.Top, left, chart.Data.Bottom, SKColors.White, 1);
        pen.Line(right, chart.Data.Top, right, chart.Data.Bottom, SKColors.White, 1);

        // The treatment runs along its strip in the widest gap between its spots; where the strip is too narrow for letters the tone and the table must do.
        if (right - left < FigureStyle.SmallSize + 1)
        {
            return;
        }

        canvas.Save();
        float[] marks = [chart.Data.Top, .. spots.Where(spot => spot.Across > strip.Left && spot.Across < strip.Right).Select(spot => chart.Y(spot.Along)).Order(), chart.Data.Bottom];
        var (top, gap) = marks.Zip(marks.Skip(1), (from, to) => (from, to - from)).MaxBy(stretch => stretch.Item2);
        if (Pen.Width(strip.Treatment) > gap - LabelRoom)
        {
            // Rather under a dot than cut: two treatments may differ in their last word.
            (top, gap) = (chart.Data.Top, chart.Data.Height);
        }

        canvas.Translate((left + right) / 2, top + (LabelRoom / 2));
        canvas.RotateDegrees(90);
        pen.Text(Pen.Shorten(strip.Treatment, gap - LabelRoom), 0, 0, FigureStyle.Ink);
        canvas.Restore();
    }

    private static IReadOnlyList<MapStrip> Check(IReadOnlyList<MapStrip> strips, double width, double length)
    {
        ArgumentNullException.ThrowIfNull(strips);
        if (!(width > 0 && length > 0 && double.IsFinite(width) && double.IsFinite(length)))
        {
            throw new ArgumentException(FormattableString.Invariant($"A map has a width and a length above 0; found {width} and {length}."), nameof(width));
        }

        foreach (var strip in strips)
        {
            FigureStyle.CheckTone(strip.Tone);
            if (!(strip.Left >= 0 && strip.Left < strip.Right && strip.Right <= width * (1 + 1e-9)))
            {
                throw new ArgumentException(FormattableString.Invariant($"Strip {strip.Name} runs from {strip.Left} to {strip.Right}; edges from 0 to {width} were expected."), nameof(strips));
            }
        }

        return strips.Count > 0 ? strips : throw new ArgumentException("A map shows one strip or more; found none.", nameof(strips));
    }
}
