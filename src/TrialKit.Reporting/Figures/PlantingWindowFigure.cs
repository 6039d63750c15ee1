using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>For each planting day of a window the range of emergence days: planting days down the side, the calendar across.</summary>
/// <param name="rows">The planting days in order.</param>
/// <param name="altText">The result in words.</param>
public sealed class PlantingWindowFigure(IReadOnlyList<WindowRow> rows, string altText) : IFigure
{
    private const float TitleRoom = 34;
    private const float KeyRow = 21;
    private const float BottomRoom = 18;
    private const float RightRoom = 64;
    private const float RowHeight = 13;
    private const float MostRows = 40;
    private const float BarHeight = 6;
    private const float RingSize = 4;
    private const float DotSize = BarHeight + 1;
    private const double NominalWidth = 488;

    private readonly IReadOnlyList<WindowRow> rows = rows is { Count: > 0 } ? rows : throw new ArgumentException("A window has one planting day or more; found none.", nameof(rows));

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => (TitleRoom + BottomRoom + (RowHeight * Math.Min(MostRows, rows.Count + 1))) / NominalWidth;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var first = rows.Min(row => row.Planted);
        var last = rows.SelectMany(row => new DateOnly?[] { row.Planted.AddDays(1), row.Mid, row.Last }).Max()!.Value;
        var span = last.DayNumber - first.DayNumber;
        var leftRoom = Pen.Width("planted " + NumberText.ShortDate(first)) + 12;
        var rightRoom = rows.Any(row => row.Open is not null) ? RightRoom : RightRoom / 3;
        var data = new SKRect(area.Left + leftRoom, area.Top + TitleRoom, area.Right - rightRoom, area.Bottom - BottomRoom);
        using var chart = new Chart(area, data, (-0.5, span + 0.5), (-rows.Count, 0));
        chart.GridAcross();
        chart.TicksBottom(CalendarTicks(first, span, data.Width));
        chart.Render(canvas);
        var every = Math.Max(1, (int)Math.Ceiling(rows.Count * RowHeight / Math.Max(1, data.Height)));
        for (var i = 0; i < rows.Count; i++)
        {
            DrawRow(pen, chart, rows[i], first, chart.Y(-i - 0.5), i % every == 0);
        }

        pen.Text("Planted, and the days on which emergence is foretold", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        DrawKey(pen, area);
    }

    private static void DrawRow(Pen pen, Chart chart, WindowRow row, DateOnly first, float y, bool isNamed)
    {
        if (isNamed)
        {
            pen.Text(NumberText.ShortDate(row.Planted), chart.Data.Left - 8, y, FigureStyle.Quiet, place: TextPlace.End);
        }

        float X(double day) => chart.X(day - first.DayNumber);
        pen.Ring(X(row.Planted.DayNumber), y, RingSize, FigureStyle.Control);
        var end = X(row.Planted.DayNumber) + RingSize;
        for (var (i, next) = (0, 0); row.Low is { } low && i < row.Kinds.Count; i = next)
        {
            // Days of one kind are one box, half a day to either side of their noons.
            next = i + row.Kinds.Skip(i).TakeWhile(kind => kind == row.Kinds[i]).Count();
            end = X(low.DayNumber + next - 0.5);
            DayKindMark.Box(pen, new SKRect(X(low.DayNumber + i - 0.5), y - (BarHeight / 2), end, y + (BarHeight / 2)), row.Kinds[i]);
        }

        if (row.Mid is { } mid)
        {
            pen.Dot(X(mid.DayNumber), y, DotSize, FigureStyle.Treatments[1]);
        }

        if (row.Open is { } open)
        {
            if (row.Low is not null)
            {
                pen.Line(end + 2, y - 3, end + 6, y, FigureStyle.Ink, 1);
                pen.Line(end + 2, y + 3, end + 6, y, FigureStyle.Ink, 1);
            }

            if (isNamed)
            {
                pen.Text(open, end + 10, y, FigureStyle.Quiet);
            }
        }
    }

    private void DrawKey(Pen pen, SKRect area)
    {
        var (x, y) = (area.Left + 3, area.Top + KeyRow);
        pen.Ring(x, y, RingSize, FigureStyle.Control);
        x = Named(pen, "planted", x, y);
        if (rows.Any(row => row.Mid is not null))
        {
            pen.Dot(x, y, DotSize, FigureStyle.Treatments[1]);
            x = Named(pen, "middle", x, y);
        }

        if (rows.SelectMany(row => row.Kinds).ToArray() is { Length: > 0 } kinds)
        {
            const string Bar = "earliest to latest, by the days:";
            pen.Text(Bar, x, y, FigureStyle.Quiet);
            x = DayKindMark.Key(pen, kinds, x + Pen.Width(Bar) + 6, y);
        }

        if (rows.Any(row => row is { Open: not null, Low: not null }))
        {
            pen.Line(x, y - 3, x + 4, y, FigureStyle.Ink, 1);
            pen.Line(x, y + 3, x + 4, y, FigureStyle.Ink, 1);
            pen.Text("latest open", x + 9, y, FigureStyle.Quiet);
        }
    }

    private static float Named(Pen pen, string text, float x, float y)
    {
        pen.Text(text, x + 7, y, FigureStyle.Quiet);
        return x + 7 + Pen.Width(text) + 14;
    }

    private static IEnumerable<(double Value, string Text)> CalendarTicks(DateOnly first, int span, float width)
    {
        var step = Ticks.DayStep(Math.Max(1, span), Math.Max(2, (int)(width / 46)));
        for (var day = 0; day <= span; day += step)
        {
            yield return (day, NumberText.ShortDate(first.AddDays(day)));
        }
    }
}
