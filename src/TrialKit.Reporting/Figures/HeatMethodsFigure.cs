using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Sums of heat by several methods side by side, each named at its end; methods of one unit share a panel. From the first missing day on a line is thin: the sum is then the least it can be.</summary>
/// <param name="first">The first day.</param>
/// <param name="series">The methods, with sums of the same days.</param>
/// <param name="note">What is to be said of the days, such as how many are filled; null for nothing.</param>
/// <param name="altText">The result in words.</param>
public sealed class HeatMethodsFigure(DateOnly first, IReadOnlyList<HeatSeries> series, string? note, string altText) : IFigure
{
    private const float TitleRoom = 18;
    private const float BottomRoom = 18;
    private const float LabelHeight = 11.5f;
    private const float SwatchWidth = 18;
    private const float LineWidth = 1.5f;
    private const double PanelShare = 0.3;
    private const double LabelShare = 0.026;

    private readonly IReadOnlyList<HeatSeries> series = Check(series);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => Panels().Sum(panel => Share(panel.Length));

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var labels = series.Select(each => $"{each.Name}: {each.Total}").ToArray();
        var rightRoom = Math.Min(area.Width * 0.52f, labels.Max(label => Pen.Width(label)) + SwatchWidth + 14);
        var leftRoom = Panels().Max(panel => Pen.Width(NumberText.Number(Range(panel).High, 0))) + 10;
        var top = area.Top;
        foreach (var panel in Panels())
        {
            var height = area.Height * (float)(Share(panel.Length) / Aspect);
            DrawPanel(canvas, pen, panel, labels, new SKRect(area.Left, top, area.Right, top + height), leftRoom, rightRoom);
            top += height;
        }

        string?[] notes = [note, series.Any(each => each.Complete < each.Sums.Count) ? "thin after a missing day" : null];
        pen.Text(string.Join("; ", notes.OfType<string>()), area.Right, area.Top + 6, FigureStyle.Quiet, place: TextPlace.End);
    }

    private void DrawPanel(SKCanvas canvas, Pen pen, int[] members, string[] labels, SKRect area, float leftRoom, float rightRoom)
    {
        var days = series[0].Sums.Count;
        var (lowest, highest) = Range(members);
        var data = new SKRect(area.Left + leftRoom, area.Top + TitleRoom, area.Right - rightRoom, area.Bottom - BottomRoom);
        using var chart = new Chart(area, data, (0, days), (lowest, highest));
        var (values, decimals) = Ticks.Round(lowest, highest, members.Length > 2 ? 5 : 3);
        chart.TicksLeft(values.Select(value => (value, NumberText.Number(value, decimals))));
        var step = Ticks.DayStep(days, Math.Max(2, (int)(data.Width / 46)));
        chart.TicksBottom(Enumerable.Range(0, (days / step) + 1).Select(tick => ((double)(tick * step), NumberText.ShortDate(first.AddDays(tick * step)))));
        foreach (var member in members)
        {
            (double X, double Y)[] points = [(0, 0), .. series[member].Sums.Select((sum, day) => (day + 1.0, sum))];
            var (tone, stroke, complete) = (FigureStyle.Tone(member + 1), FigureStyle.Stroke(member + 1), series[member].Complete);
            chart.Line(points.Take(complete + 1), tone, LineWidth, stroke);
            chart.Line(points.Skip(complete), tone, FigureStyle.ThinStroke, stroke);
        }

        chart.Render(canvas);
        var places = LabelSpread.Places([.. members.Select(member => (double)chart.Y(series[member].Sums[^1]))], LabelHeight, data.Top, data.Bottom);
        for (var i = 0; i < members.Length; i++)
        {
            var (tone, y) = (FigureStyle.Tone(members[i] + 1), (float)places[i]);
            pen.Line(data.Right + 5, y, data.Right + 5 + SwatchWidth, y, tone, LineWidth, FigureStyle.Stroke(members[i] + 1));
            pen.Text(Pen.Shorten(labels[members[i]], rightRoom - SwatchWidth - 10), data.Right + SwatchWidth + 10, y, tone);
        }

        pen.Text($"Heat since {NumberText.ShortDate(first)}, {series[members[0]].Unit}", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
    }

    // Places in the list: a method keeps its tone and stroke whatever panel it stands in.
    private int[][] Panels() => [.. Enumerable.Range(0, series.Count).GroupBy(place => series[place].Unit, StringComparer.Ordinal).Select(panel => panel.ToArray())];

    private (double Low, double High) Range(int[] members)
    {
        var sums = members.SelectMany(member => series[member].Sums).ToArray();
        return (Math.Min(0, sums.Min()), Math.Max(1, sums.Max()) * 1.05);
    }

    private static double Share(int lines) => PanelShare + (LabelShare * lines);

    private static IReadOnlyList<HeatSeries> Check(IReadOnlyList<HeatSeries> series)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (series.Count == 0 || series[0].Sums.Count == 0 || series.Any(each => each.Sums.Count != series[0].Sums.Count || each.Complete < 0 || each.Complete > each.Sums.Count))
        {
            throw new ArgumentException("Methods are drawn of one day or more, each of the same days, with none to all of them complete.", nameof(series));
        }

        return series.FirstOrDefault(each => each.Sums.Any(sum => !double.IsFinite(sum))) is { } faulty
            ? throw new ArgumentException($"A sum of '{faulty.Name}' is not a finite number.", nameof(series))
            : series;
    }
}
