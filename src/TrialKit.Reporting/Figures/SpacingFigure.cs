using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>How plants are spaced in the row: the share of spacings in each bin as an outline for each treatment, with the limits of classes.</summary>
/// <param name="axisTitle">What runs across, with its unit, such as <c>Space between plants, inches</c>.</param>
/// <param name="edges">The edges of the bins in rising order, one more than bins.</param>
/// <param name="series">The treatments, control first.</param>
/// <param name="classes">The classes of spacings; empty for none.</param>
/// <param name="altText">The result in words.</param>
public sealed class SpacingFigure(
    string axisTitle,
    IReadOnlyList<double> edges,
    IReadOnlyList<SpacingSeries> series,
    IReadOnlyList<SpacingClass> classes,
    string altText) : IFigure
{
    private const float TopRoom = 34;
    private const float BottomRoom = 32;
    private const float LeftRoom = 26;
    private const float RowHeight = 46;
    private const int MostOverlaid = 2;

    private readonly IReadOnlyList<SpacingSeries> series = Check(edges, series);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => HeightAt(FigureFiles.DefaultWidth) / FigureFiles.DefaultWidth;

    /// <inheritdoc/>
    public double HeightAt(double width) => series.Count > MostOverlaid
        ? TopRoom + BottomRoom + (series.Count * RowHeight)
        : Math.Max(150, 0.42 * width);

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var data = new SKRect(area.Left + LeftRoom, area.Top + TopRoom, area.Right - 4, area.Bottom - BottomRoom);
        var highest = Math.Max(1, series.Max(each => each.Shares.Max()) * 100) * 1.05;
        if (series.Count > MostOverlaid)
        {
            DrawRows(canvas, area, data, highest);
            return;
        }

        using var chart = new Chart(area, data, (edges[0], edges[^1]), (0, highest));
        chart.TicksLeft(Ticks.Round(0, highest, 4) is var (values, decimals) ? values.Select(value => (value, NumberText.Number(value, decimals))) : []);
        var (across, places) = Ticks.Round(edges[0], edges[^1], Math.Max(2, (int)(data.Width / 50)));
        chart.TicksBottom(across.Select(value => (value, NumberText.Number(value, places))));
        foreach (var each in series)
        {
            AddOutline(chart, each);
        }

        chart.Render(canvas);
        DrawClasses(pen, chart, chart.Data.Bottom);
        pen.Text("Share of spacings, %", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text(Pen.Shorten(axisTitle, data.Width), data.MidX, area.Bottom - 6, FigureStyle.Quiet, place: TextPlace.Middle);
        DrawNames(pen, area);
    }

    // More than two outlines over each other cannot be told apart: each treatment has a row of its own, all on one scale.
    private void DrawRows(SKCanvas canvas, SKRect area, SKRect data, double highest)
    {
        var pen = new Pen(canvas);
        var height = data.Height / series.Count;
        for (var i = 0; i < series.Count; i++)
        {
            var row = new SKRect(data.Left, data.Top + (i * height) + 4, data.Right, data.Top + ((i + 1) * height));
            using var chart = new Chart(area, row, (edges[0], edges[^1]), (0, highest));
            var (values, decimals) = Ticks.Round(0, highest, 2);
            chart.TicksLeft(values.Where(value => value > 0).Select(value => (value, NumberText.Number(value, decimals))));
            AddOutline(chart, series[i]);
            if (i == series.Count - 1)
            {
                var (across, places) = Ticks.Round(edges[0], edges[^1], Math.Max(2, (int)(data.Width / 50)));
                chart.TicksBottom(across.Select(value => (value, NumberText.Number(value, places))));
            }

            chart.Render(canvas);
            pen.Line(row.Left, row.Bottom, row.Right, row.Bottom, FigureStyle.Axis, FigureStyle.HairStroke);
            if (i == 0)
            {
                DrawClasses(pen, chart, data.Bottom);
            }

            var name = Pen.Shorten(series[i].Name, data.Width * 0.45f, FigureStyle.LabelSize, strong: true);
            pen.Text(name, data.Right, row.Top + 8, FigureStyle.TextTone(series[i].Tone), FigureStyle.LabelSize, TextPlace.End, strong: true);
        }

        pen.Text("Share of spacings, %", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text(Pen.Shorten(axisTitle, data.Width), data.MidX, area.Bottom - 6, FigureStyle.Quiet, place: TextPlace.Middle);
    }

    private void AddOutline(Chart chart, SpacingSeries each)
    {
        var tone = FigureStyle.Tone(each.Tone);
        var outline = new List<(double X, double Y)> { (edges[0], 0) };
        for (var i = 0; i < each.Shares.Count; i++)
        {
            outline.Add((edges[i], 100 * each.Shares[i]));
            outline.Add((edges[i + 1], 100 * each.Shares[i]));
        }

        outline.Add((edges[^1], 0));
        chart.Area(outline, tone.WithAlpha(30));
        chart.Line(outline, tone, 1.5f, FigureStyle.Stroke(each.Tone));
    }

    private void DrawClasses(Pen pen, Chart chart, float bottom)
    {
        var row = chart.Data.Top - 7;
        foreach (var each in classes)
        {
            var left = chart.X(Math.Clamp(each.From, edges[0], edges[^1]));
            var right = chart.X(Math.Clamp(each.To, edges[0], edges[^1]));
            if (each.To < edges[^1])
            {
                pen.Line(right, row - 6, right, bottom, FigureStyle.Axis, FigureStyle.HairStroke);
            }

            pen.Text(Pen.Shorten(each.Name, right - left - 4), (left + right) / 2, row, FigureStyle.Quiet, place: TextPlace.Middle);
        }
    }

    // Outlines cross each other, so the names stand in a line above them, each behind a stroke of its tone.
    private void DrawNames(Pen pen, SKRect area)
    {
        const float stroke = 16;
        var room = (area.Width - 120) / series.Count;
        var x = area.Right;
        foreach (var each in series.Reverse())
        {
            var name = Pen.Shorten(each.Name, room - stroke - 18, FigureStyle.LabelSize, strong: true);
            x -= Pen.Width(name, FigureStyle.LabelSize, strong: true);
            pen.Text(name, x, area.Top + 6, FigureStyle.TextTone(each.Tone), FigureStyle.LabelSize, strong: true);
            pen.Line(x - stroke - 4, area.Top + 6, x - 4, area.Top + 6, FigureStyle.Tone(each.Tone), FigureStyle.StrongStroke);
            x -= stroke + 18;
        }
    }

    private static IReadOnlyList<SpacingSeries> Check(IReadOnlyList<double> edges, IReadOnlyList<SpacingSeries> series)
    {
        ArgumentNullException.ThrowIfNull(edges);
        ArgumentNullException.ThrowIfNull(series);
        if (edges.Count < 2 || edges.Zip(edges.Skip(1)).Any(pair => !(pair.First < pair.Second)))
        {
            throw new ArgumentException("The edges of bins are two or more numbers that rise.", nameof(edges));
        }

        foreach (var each in series)
        {
            FigureStyle.CheckTone(each.Tone);
            if (each.Shares.Count != edges.Count - 1 || each.Shares.Any(share => share is not (>= 0 and <= 1)))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Treatment {each.Name} has a share between 0 and 1 for each of {edges.Count - 1} bins; found {each.Shares.Count} values."),
                    nameof(series));
            }
        }

        return series.Count > 0 ? series : throw new ArgumentException("Spacings are drawn of one treatment or more; found none.", nameof(series));
    }
}
