using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>The chance to show a true difference, for several numbers of replicates.</summary>
/// <param name="lines">The lines, fewest replicates first.</param>
/// <param name="replicates">What a replicate is called: pairs or blocks.</param>
/// <param name="target">The power asked for, drawn across.</param>
/// <param name="altText">The result in words.</param>
public sealed class PowerFigure(IReadOnlyList<PowerLine> lines, string replicates, double target, string altText) : IFigure
{
    private const float TopRoom = 20;
    private const float BottomRoom = 34;
    private const float LeftRoom = 34;
    private const float RightRoom = 8;
    private const float LabelGap = 4;
    private const float LabelRise = 9;

    private readonly IReadOnlyList<PowerLine> lines = Check(lines);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.56;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var data = new SKRect(area.Left + LeftRoom, area.Top + TopRoom, area.Right - RightRoom, area.Bottom - BottomRoom);
        var last = lines.Max(line => line.Points[^1].Difference);
        using var chart = new Chart(area, data, (0, last), (0, 100));
        chart.TicksLeft(Ticks.Round(0, 100, 5).Values.Select(value => (value, NumberText.Number(value, 0))));
        var (ticks, decimals) = Ticks.Round(0, last, 8);
        chart.TicksBottom(ticks.Select(value => (value, NumberText.Number(value, decimals))));
        chart.Line([(0, 100 * target), (last, 100 * target)], FigureStyle.Axis, FigureStyle.HairStroke);
        foreach (var line in lines)
        {
            chart.Line(line.Points.Select(point => (point.Difference, 100 * point.Power)), FigureStyle.Tone(line.IsStrong ? 1 : 0), line.IsStrong ? FigureStyle.StrongStroke : FigureStyle.StrongStroke / 2);
        }

        chart.Render(canvas);
        pen.Text($"Chance to show it, %, by number of {replicates}", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        pen.Text("True difference, % of the mean", data.Left, area.Bottom - 7, FigureStyle.Ink, FigureStyle.LabelSize);
        foreach (var line in lines)
        {
            DrawName(pen, chart, line);
        }
    }

    // A number stands where its line crosses the power asked for; a line that does not reach it is named at its end.
    private void DrawName(Pen pen, Chart chart, PowerLine line)
    {
        var (x, y) = Crossing(line) is { } difference ? (chart.X(difference), chart.Y(100 * target)) : (chart.X(line.Points[^1].Difference), chart.Y(100 * line.Points[^1].Power));
        var text = line.IsStrong ? $"{line.Name} {replicates}" : line.Name;
        var width = Pen.Width(text, FigureStyle.LabelSize, strong: true);
        pen.Box(SKRect.Create(x - LabelGap - width - 1, y - LabelRise - 6, width + 2, 12), SKColors.White);
        pen.Dot(x, y, FigureStyle.StripDot, FigureStyle.Tone(line.IsStrong ? 1 : 0));
        pen.Text(text, x - LabelGap, y - LabelRise, FigureStyle.TextTone(line.IsStrong ? 1 : 0), FigureStyle.LabelSize, TextPlace.End, strong: true);
    }

    private double? Crossing(PowerLine line)
    {
        for (var i = 1; i < line.Points.Count; i++)
        {
            var (before, after) = (line.Points[i - 1], line.Points[i]);
            if (before.Power < target && after.Power >= target)
            {
                return before.Difference + ((target - before.Power) / (after.Power - before.Power) * (after.Difference - before.Difference));
            }
        }

        return null;
    }

    private static IReadOnlyList<PowerLine> Check(IReadOnlyList<PowerLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        foreach (var line in lines.Where(line => line.Points.Count < 2 || line.Points.Any(point => !(point.Difference >= 0 && double.IsFinite(point.Difference) && point.Power is >= 0 and <= 1))))
        {
            throw new ArgumentException($"{line.Name}: two points or more, with differences of 0 or more and a power from 0 to 1, were expected.", nameof(lines));
        }

        return lines.Count > 0 ? lines : throw new ArgumentException("Power is drawn for one number of replicates or more; found none.", nameof(lines));
    }
}
