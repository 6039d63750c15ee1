using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>For each planting day of a window the range of emergence days: planting days down the side, the calendar across.</summary>
/// <param name="rows">The planting days in order.</param>
/// <param name="altText">The result in words.</param>
public sealed class PlantingWindowFigure(IReadOnlyList<WindowRow> rows, string altText) : IFigure
{
    private const float TitleRoom = 20;
    private const float BottomRoom = 18;
    private const float RowHeight = 13;
    private const float MostRows = 40;
    private const float BarHeight = 5;
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
        var last = rows.SelectMany(row => new DateOnly?[] { row.Planted.AddDays(1), row.Low, row.Mid, row.High }).Max()!.Value;
        var span = last.DayNumber - first.DayNumber;
        var leftRoom = Pen.Width("planted " + NumberText.ShortDate(first)) + 12;
        var data = new SKRect(area.Left + leftRoom, area.Top + TitleRoom, area.Right - 24, area.Bottom - BottomRoom);
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
    }

    private static void DrawRow(Pen pen, Chart chart, WindowRow row, DateOnly first, float y, bool isNamed)
    {
        if (isNamed)
        {
            pen.Text(NumberText.ShortDate(row.Planted), chart.Data.Left - 8, y, FigureStyle.Quiet, place: TextPlace.End);
        }

        float X(DateOnly date) => chart.X(date.DayNumber - first.DayNumber);
        pen.Ring(X(row.Planted), y, 4, FigureStyle.Control);
        if (row.Low is { } low)
        {
            // A range whose end is not reached runs out of the picture.
            var right = row.High is { } high ? X(high) : chart.Data.Right;
            pen.Box(new SKRect(X(low) - 1, y - (BarHeight / 2), right + 1, y + (BarHeight / 2)), FigureStyle.Control);
        }

        if (row.Mid is { } mid)
        {
            pen.Dot(X(mid), y, BarHeight + 1, FigureStyle.Treatments[0]);
        }
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
