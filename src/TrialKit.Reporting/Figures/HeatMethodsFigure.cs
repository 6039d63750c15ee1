using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Sums of heat by several methods side by side, each named at its end. A line stops at the first missing day.</summary>
/// <param name="first">The first day.</param>
/// <param name="unit">The unit of the sums.</param>
/// <param name="series">The methods, with sums of the same days.</param>
/// <param name="altText">The result in words.</param>
public sealed class HeatMethodsFigure(DateOnly first, string unit, IReadOnlyList<HeatSeries> series, string altText) : IFigure
{
    private const float TitleRoom = 18;
    private const float BottomRoom = 18;
    private const float LabelHeight = 11;

    private readonly IReadOnlyList<HeatSeries> series = Check(series);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.55;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var days = series[0].Sums.Count;
        var highest = Math.Max(1, series.SelectMany(each => each.Sums).Max() ?? 1) * 1.05;
        var lowest = Math.Min(0, series.SelectMany(each => each.Sums).Min() ?? 0);
        var labels = series.Select(each => $"{each.Name} {(Last(each) is { } end ? NumberText.Number(end.Sum, 0) : NumberText.Dash)}").ToArray();
        var rightRoom = Math.Min(area.Width * 0.45f, labels.Max(label => Pen.Width(label)) + 12);
        var data = new SKRect(area.Left + Pen.Width(NumberText.Number(highest, 0)) + 10, area.Top + TitleRoom, area.Right - rightRoom, area.Bottom - BottomRoom);
        using var chart = new Chart(area, data, (0, days), (lowest, highest));
        var (values, decimals) = Ticks.Round(lowest, highest, 5);
        chart.TicksLeft(values.Select(value => (value, NumberText.Number(value, decimals))));
        var step = Ticks.DayStep(days, Math.Max(2, (int)(data.Width / 46)));
        chart.TicksBottom(Enumerable.Range(0, (days / step) + 1).Select(tick => ((double)(tick * step), NumberText.ShortDate(first.AddDays(tick * step)))));
        for (var i = 0; i < series.Count; i++)
        {
            chart.Line(Points(series[i]), Tone(i), FigureStyle.HairStroke * 2);
        }

        chart.Render(canvas);
        var places = LabelSpread.Places([.. series.Select(each => (double)chart.Y(Last(each)?.Sum ?? 0))], LabelHeight, data.Top, data.Bottom);
        for (var i = 0; i < series.Count; i++)
        {
            pen.Text(Pen.Shorten(labels[i], rightRoom - 8), data.Right + 6, (float)places[i], Tone(i));
        }

        pen.Text($"Heat since {NumberText.ShortDate(first)}, {unit}", area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
    }

    private static SKColor Tone(int index) => FigureStyle.Treatments[index % FigureStyle.Treatments.Count];

    private static IEnumerable<(double X, double Y)> Points(HeatSeries one) =>
        one.Sums.TakeWhile(sum => sum is not null).Select((sum, day) => (day + 1.0, sum!.Value)).Prepend((0.0, 0.0));

    private static (int Day, double Sum)? Last(HeatSeries one) =>
        one.Sums.TakeWhile(sum => sum is not null).Select((sum, day) => ((int Day, double Sum)?)(day, sum!.Value)).LastOrDefault();

    private static IReadOnlyList<HeatSeries> Check(IReadOnlyList<HeatSeries> series)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (series.Count == 0 || series[0].Sums.Count == 0 || series.Any(each => each.Sums.Count != series[0].Sums.Count))
        {
            throw new ArgumentException("Methods are drawn of one day or more, each of the same days.", nameof(series));
        }

        return series.FirstOrDefault(each => each.Sums.Any(sum => sum is { } value && !double.IsFinite(value))) is { } faulty
            ? throw new ArgumentException($"A sum of '{faulty.Name}' is not a finite number.", nameof(series))
            : series;
    }
}
