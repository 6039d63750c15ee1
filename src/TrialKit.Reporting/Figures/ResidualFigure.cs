using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>What is left when treatments and blocks are taken out, as dots around zero: a slope, a funnel or a dot apart is a reason to look.</summary>
/// <param name="axisTitle">What is left, with its unit.</param>
/// <param name="acrossTitle">What runs across.</param>
/// <param name="points">The residuals, two or more.</param>
/// <param name="altText">What there is to see.</param>
public sealed class ResidualFigure(string axisTitle, string acrossTitle, IReadOnlyList<ResidualPoint> points, string altText) : IFigure
{
    private const float TopRoom = 18;
    private const float BottomRoom = 32;

    private readonly IReadOnlyList<ResidualPoint> points = Check(points);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.5;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var (low, high) = AxisRange.Around(points.Select(point => point.Residual).Append(0));
        var across = AxisRange.Around(points.Select(point => point.At));
        var (ticks, decimals) = Ticks.Round(low, high, 4);
        var labels = ticks.Select(value => NumberText.Difference(value, decimals)).ToList();
        var data = new SKRect(area.Left + labels.Max(text => Pen.Width(text)) + 10, area.Top + TopRoom, area.Right - 4, area.Bottom - BottomRoom);
        using var chart = new Chart(area, data, across, (low, high));
        chart.TicksLeft(ticks.Zip(labels));
        var (below, places) = Ticks.Round(across.Low, across.High, Math.Max(2, (int)(data.Width / 56)));
        chart.TicksBottom(below.Select(value => (value, NumberText.Number(value, places))));
        foreach (var tone in points.GroupBy(point => point.Tone))
        {
            chart.Dots(tone.Select(point => (point.At, point.Residual)), FigureStyle.Tone(tone.Key), FigureStyle.StripDot);
        }

        chart.Render(canvas);
        pen.Line(data.Left, chart.Y(0), data.Right, chart.Y(0), FigureStyle.Axis, 1);
        pen.Text(Pen.Shorten(axisTitle, area.Width, FigureStyle.LabelSize), area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text(Pen.Shorten(acrossTitle, data.Width), data.MidX, area.Bottom - 7, FigureStyle.Quiet, place: TextPlace.Middle);
    }

    private static IReadOnlyList<ResidualPoint> Check(IReadOnlyList<ResidualPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        foreach (var point in points)
        {
            FigureStyle.CheckTone(point.Tone);
        }

        return points.Count > 1 && points.All(point => double.IsFinite(point.At) && double.IsFinite(point.Residual))
            ? points
            : throw new ArgumentException(FormattableString.Invariant($"Residuals are drawn from two finite points or more; found {points.Count}."), nameof(points));
    }
}
