using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Paired differences as dots in field order, joined; the mean with its interval at the right.</summary>
/// <param name="axisTitle">What is drawn, with its unit, such as <c>Days sooner with chains</c>.</param>
/// <param name="orderTitle">What the order across is, such as <c>pairs in field order</c>.</param>
/// <param name="pairs">The pairs in field order.</param>
/// <param name="mean">The mean difference and its interval, or null where it could not be judged.</param>
/// <param name="meanText">The mean in words, such as <c>mean 0.3 days</c>.</param>
/// <param name="intervalText">The interval in words, such as <c>90 % interval 0.2 to 0.5</c>.</param>
/// <param name="tone">The treatment's tone, 1 to 6.</param>
/// <param name="altText">The result in words.</param>
public sealed class PairedDifferencesFigure(
    string axisTitle,
    string orderTitle,
    IReadOnlyList<PairDifference> pairs,
    FigureInterval? mean,
    string meanText,
    string intervalText,
    int tone,
    string altText) : IFigure
{
    private const float TopRoom = 20;
    private const float BottomRoom = 32;
    private const float LabelGap = 10;
    private const float Narrow = 300;
    private const float MeanRow = 13;

    private readonly IReadOnlyList<PairDifference> pairs = Check(pairs);
    private readonly int tone = FigureStyle.CheckTone(tone);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.36;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var (low, high) = Range();
        var (ticks, decimals) = Ticks.Round(low, high, 5);
        var labels = ticks.Select(value => NumberText.Difference(value, decimals)).ToList();
        var leftRoom = labels.Max(text => Pen.Width(text)) + 10;
        var isNarrow = area.Width < Narrow;
        var rightRoom = mean is null || isNarrow
            ? LabelGap
            : Math.Min(area.Width * 0.32f, Math.Max(Pen.Width(meanText, FigureStyle.LabelSize, strong: true), Pen.Width(intervalText)) + LabelGap);
        var data = new SKRect(area.Left + leftRoom, area.Top + TopRoom + (isNarrow && mean is not null ? MeanRow : 0), area.Right - rightRoom, area.Bottom - BottomRoom);
        var meanAt = pairs.Count + 1.0;
        using var chart = new Chart(area, data, (0.5, mean is null ? pairs.Count + 0.5 : pairs.Count + 1.35), (low, high));
        chart.TicksLeft(ticks.Zip(labels));
        AddPairs(chart);
        chart.Render(canvas);

        pen.Line(data.Left, chart.Y(0), data.Right, chart.Y(0), FigureStyle.Axis, 1);
        DrawPairNames(pen, chart, area);
        pen.Text(Pen.Shorten(axisTitle, area.Width, FigureStyle.LabelSize), area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        if (mean is not null)
        {
            DrawMean(pen, chart, mean, meanAt);
            if (isNarrow)
            {
                // Beside the dots there is no room for words: they stand above.
                var said = Pen.Shorten(meanText, area.Width, strong: true);
                pen.Text(said, area.Left, area.Top + 6 + MeanRow, FigureStyle.Tone(tone), strong: true);
                var next = Pen.Width(said, strong: true) + 5;
                pen.Text(Pen.Shorten(intervalText, area.Width - next), area.Left + next, area.Top + 6 + MeanRow, FigureStyle.Quiet);
            }
            else
            {
                DrawMeanText(pen, chart, mean, area.Right - data.Right - LabelGap);
            }
        }
    }

    private void AddPairs(Chart chart)
    {
        var color = FigureStyle.Tone(tone);
        var run = new List<(double X, double Y)>();
        for (var i = 0; i <= pairs.Count; i++)
        {
            if (i < pairs.Count && pairs[i].Value is { } value)
            {
                run.Add((i + 1, value));
                continue;
            }

            // A pair that is missing breaks the line rather than being bridged.
            if (run.Count > 1)
            {
                chart.Line(run, color.WithAlpha(150), FigureStyle.ThinStroke);
            }

            if (run.Count > 0)
            {
                chart.Dots(run, color, FigureStyle.StripDot);
            }

            run = [];
        }
    }

    private void DrawPairNames(Pen pen, Chart chart, SKRect area)
    {
        var slot = chart.X(2) - chart.X(1);
        var every = Math.Max(1, (int)Math.Ceiling(26 / slot));
        for (var i = 0; i < pairs.Count; i += every)
        {
            var x = chart.X(i + 1);
            var name = Pen.Shorten(pairs[i].Name, (slot * every) - 4);
            pen.Text(name, x, chart.Data.Bottom + 9, FigureStyle.Quiet, place: TextPlace.Middle);
            if (pairs[i].Value is null)
            {
                pen.Text(NumberText.Dash, x, chart.Y(0) - 6, FigureStyle.Quiet, place: TextPlace.Middle);
            }
        }

        var middle = (chart.X(0.5) + chart.X(pairs.Count + 0.5)) / 2;
        pen.Text(Pen.Shorten(orderTitle, chart.Data.Width), middle, area.Bottom - 7, FigureStyle.Quiet, place: TextPlace.Middle);
    }

    private void DrawMean(Pen pen, Chart chart, FigureInterval interval, double at)
    {
        var x = chart.X(at);
        var color = FigureStyle.Tone(tone);
        pen.Line(x, chart.Y(interval.Low), x, chart.Y(interval.High), color, FigureStyle.StrongStroke);
        pen.Dot(x, chart.Y(interval.Estimate), FigureStyle.EstimateDot, color);
    }

    private void DrawMeanText(Pen pen, Chart chart, FigureInterval interval, float room)
    {
        var color = FigureStyle.Tone(tone);
        var places = LabelSpread.Places([chart.Y(interval.Estimate), chart.Y(interval.Estimate) + 13], 13, chart.Data.Top + 4, chart.Data.Bottom - 4);
        var labelX = chart.Data.Right + 2;
        pen.Text(Pen.Shorten(meanText, room, FigureStyle.LabelSize, strong: true), labelX, (float)places[0], color, FigureStyle.LabelSize, strong: true);
        pen.Text(Pen.Shorten(intervalText, room), labelX, (float)places[1], FigureStyle.Quiet);
    }

    private (double Low, double High) Range()
    {
        var values = pairs.Select(pair => pair.Value).OfType<double>().Append(0);
        if (mean is not null)
        {
            values = values.Append(mean.Low).Append(mean.High);
        }

        return AxisRange.Around(values);
    }

    private static IReadOnlyList<PairDifference> Check(IReadOnlyList<PairDifference> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (!pairs.Any(pair => pair.Value is not null) || pairs.Any(pair => pair.Value is { } value && !double.IsFinite(value)))
        {
            throw new ArgumentException("Differences are drawn from one pair or more with finite values.", nameof(pairs));
        }

        return pairs;
    }
}
