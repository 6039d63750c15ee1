using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>The chance that a difference pays over a price or a cost, with the trial's own marked.</summary>
/// <param name="axisTitle">What runs across, with its unit.</param>
/// <param name="points">The chances in the order of the axis, two or more.</param>
/// <param name="now">The trial's own price or cost.</param>
/// <param name="marginLabel">The name of the lower curve.</param>
/// <param name="tone">The treatment's tone, 1 to 6.</param>
/// <param name="altText">The result in words.</param>
public sealed class ChanceCurveFigure(
    string axisTitle,
    IReadOnlyList<ChancePoint> points,
    double now,
    string marginLabel,
    int tone,
    string altText) : IFigure
{
    private const string PaysLabel = "pays";
    private const string NowLabel = "this trial";
    private const float TopRoom = 29;
    private const float BottomRoom = 34;
    private const float Gap = 8;
    private const float LineOfText = 11;
    private static readonly double[] Shares = [0, 0.25, 0.5, 0.75, 1];

    private readonly IReadOnlyList<ChancePoint> points = Check(points);
    private readonly int tone = FigureStyle.CheckTone(tone);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.3;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var labels = Shares.Select(share => NumberText.Percent(share)).ToList();
        var leftRoom = labels.Max(text => Pen.Width(text)) + Gap + 2;
        var rightRoom = Math.Min(area.Width * 0.3f, Math.Max(Pen.Width(PaysLabel), Pen.Width(marginLabel)) + Gap);
        var data = new SKRect(area.Left + leftRoom, area.Top + TopRoom, area.Right - rightRoom, area.Bottom - BottomRoom);
        var (low, high) = (points[0].At, points[^1].At);
        using var chart = new Chart(area, data, (low, high), (0, 1));
        chart.TicksLeft(Shares.Zip(labels));
        var (ticks, decimals) = Ticks.Round(low, high, Math.Max(2, (int)(data.Width / 62)));
        chart.TicksBottom(ticks.Select(value => (value, NumberText.Number(value, decimals))));
        chart.Line(points.Select(point => (point.At, point.Pays)), FigureStyle.Tone(tone), FigureStyle.StrongStroke);
        chart.Line(points.Select(point => (point.At, point.PaysWithMargin)), FigureStyle.Tone(tone).WithAlpha(150), FigureStyle.ThinStroke * 2);
        chart.Render(canvas);
        pen.Text("chance that it pays", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text(axisTitle, data.MidX, area.Bottom - 6, FigureStyle.Ink, FigureStyle.LabelSize, TextPlace.Middle);
        if (now >= low && now <= high)
        {
            pen.Line(chart.X(now), data.Top, chart.X(now), data.Bottom, FigureStyle.Axis, 1);

            // At an edge of the axis the words stay over the data, clear of the marks beside it.
            var half = Pen.Width(NowLabel) / 2;
            pen.Text(NowLabel, Math.Clamp(chart.X(now), data.Left + half, data.Right - half), data.Top - 6, FigureStyle.Quiet, place: TextPlace.Middle);
        }

        DrawNames(pen, chart, rightRoom - Gap);
    }

    // The two names keep a line of text apart where the curves end close together.
    private void DrawNames(Pen pen, Chart chart, float room)
    {
        var (pays, margin) = (chart.Y(points[^1].Pays), chart.Y(points[^1].PaysWithMargin));
        var apart = Math.Max(0, LineOfText - (margin - pays)) / 2;
        pen.Text(PaysLabel, chart.Data.Right + Gap, pays - apart, FigureStyle.TextTone(tone), strong: true);
        pen.Text(Pen.Shorten(marginLabel, room), chart.Data.Right + Gap, margin + apart, FigureStyle.TextTone(tone));
    }

    private static IReadOnlyList<ChancePoint> Check(IReadOnlyList<ChancePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return points.Count >= 2 && points[^1].At > points[0].At && points.All(point => point.Pays is >= 0 and <= 1 && point.PaysWithMargin is >= 0 and <= 1)
            ? points
            : throw new ArgumentException("A curve has two points or more that go up along its axis, with chances from 0 to 1.", nameof(points));
    }
}
