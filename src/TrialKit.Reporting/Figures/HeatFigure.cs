using SkiaSharp;
using TrialKit.Heat;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Heat by day: the sum since planting above, each day's heat as a bar below, on one calendar. The sum is dashed from the first day on that was not observed.</summary>
/// <param name="unit">The heat unit, such as <c>F-days</c>.</param>
/// <param name="days">The days in order, without gaps.</param>
/// <param name="events">What happened when, such as planting and half of the seeds up.</param>
/// <param name="altText">The result in words.</param>
public sealed class HeatFigure(
    string unit,
    IReadOnlyList<HeatDay> days,
    IReadOnlyList<HeatEvent> events,
    string altText) : IFigure
{
    private const float TitleRoom = 18;
    private const float BottomRoom = 18;

    private readonly IReadOnlyList<HeatDay> days = Check(days);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.5;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var sums = Sums();
        var highest = Math.Max(1, days.Max(day => day.Heat ?? 0)) * 1.1;
        var total = Math.Max(1, sums[^1].Sum) * 1.08;
        var endText = (days.Any(day => day.Heat is null) ? "at least " : "") + NumberText.Number(sums[^1].Sum, 0);
        var leftRoom = new[] { total, highest }.Max(value => Pen.Width(NumberText.Number(value, 0))) + 10;
        var rightRoom = Pen.Width(endText, FigureStyle.LabelSize, strong: true) + 12;
        var split = area.Top + ((area.Height - BottomRoom) * 0.66f);

        var above = new SKRect(area.Left + leftRoom, area.Top + TitleRoom, area.Right - rightRoom, split - 10);
        var below = new SKRect(above.Left, split + TitleRoom, above.Right, area.Bottom - BottomRoom);
        using var sum = new Chart(area, above, (-0.7, days.Count - 0.3), (0, total));
        sum.TicksLeft(Whole(total, 4));
        var sure = days.TakeWhile(day => day is { Heat: not null, Kind: DayKind.Observed }).Count();
        AddSum(sum, sums, 0, sure, LineStroke.Whole);
        AddSum(sum, sums, Math.Max(0, sure - 1), sums.Count, LineStroke.Dashed);
        sum.Render(canvas);
        using var daily = new Chart(area, below, (-0.7, days.Count - 0.3), (0, highest));
        daily.TicksLeft(Whole(highest, 2));
        daily.TicksBottom(CalendarTicks(below.Width));
        daily.Render(canvas);
        DrawBars(pen, daily);

        var title = $"Heat since {NumberText.ShortDate(days[0].Date)}, {unit}";
        pen.Text(title, area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        if (sure < days.Count)
        {
            pen.Text("dashed from the first day that was not observed", area.Left + Pen.Width(title, FigureStyle.LabelSize) + 16, area.Top + 6, FigureStyle.Quiet);
        }

        var caption = $"Heat of each day, {unit}";
        pen.Text(caption, area.Left, split + 4, FigureStyle.Ink, FigureStyle.LabelSize);
        if (days.Any(day => day.Kind != DayKind.Observed))
        {
            DayKindMark.Key(pen, days.Select(day => day.Kind), area.Left + Pen.Width(caption, FigureStyle.LabelSize) + 16, split + 4);
        }

        pen.Text(endText, sum.X(days.Count - 1) + 6, sum.Y(sums[^1].Sum), FigureStyle.Treatments[0], FigureStyle.LabelSize, strong: true);
        DrawEvents(pen, sum, sums);
        DrawMissing(pen, daily);
    }

    private static void AddSum(Chart chart, List<(HeatDay Day, double Sum)> sums, int from, int to, LineStroke stroke)
    {
        if (to - from > 1)
        {
            chart.Line(Enumerable.Range(from, to - from).Select(i => ((double)i, sums[i].Sum)), FigureStyle.Treatments[0], FigureStyle.StrongStroke, stroke);
        }
    }

    private void DrawBars(Pen pen, Chart chart)
    {
        for (var i = 0; i < days.Count; i++)
        {
            if (days[i].Heat is { } heat)
            {
                DayKindMark.Box(pen, new SKRect(chart.X(i - 0.36), chart.Y(heat), chart.X(i + 0.36), chart.Y(0)), days[i].Kind);
            }
        }
    }

    private void DrawMissing(Pen pen, Chart chart)
    {
        for (var i = 0; i < days.Count; i++)
        {
            if (days[i].Heat is null)
            {
                pen.Text(NumberText.Dash, chart.X(i), chart.Data.Bottom - 6, FigureStyle.Quiet, place: TextPlace.Middle);
            }
        }
    }

    // Event names stand where the curve leaves room, each on a line of its own: hung from the top while the curve is low, stacked on the floor once it is high.
    private void DrawEvents(Pen pen, Chart chart, List<(HeatDay Day, double Sum)> sums)
    {
        var (hung, stacked) = (0, 0);
        foreach (var each in events.OrderBy(each => each.Date))
        {
            var i = each.Date.DayNumber - days[0].Date.DayNumber;
            if (i < 0 || i >= days.Count)
            {
                continue;
            }

            var x = chart.X(i);
            var isHigh = chart.Y(sums[i].Sum) < chart.Data.MidY;
            var y = isHigh ? chart.Data.Bottom - 9 - (stacked++ * 13) : chart.Data.Top + 12 + (hung++ * 13);
            pen.Line(x, isHigh ? chart.Y(sums[i].Sum) : y + 6, x, chart.Data.Bottom, FigureStyle.Axis, FigureStyle.HairStroke);
            pen.Dot(x, chart.Y(sums[i].Sum), FigureStyle.StripDot, FigureStyle.Treatments[0]);
            var text = Pen.Shorten(each.Text, chart.Data.Width);
            var width = Pen.Width(text);
            var start = Math.Clamp(isHigh ? x - width - 5 : x - (width / 2), chart.Data.Left + 2, Math.Max(chart.Data.Left + 2, chart.Data.Right - width));
            pen.Box(SKRect.Create(start - 2, y - 6, width + 4, 12), SKColors.White);
            pen.Text(text, start, y, FigureStyle.Ink);
        }
    }

    private List<(HeatDay Day, double Sum)> Sums()
    {
        var sum = 0.0;
        return [.. days.Select(day => (day, sum += day.Heat ?? 0))];
    }

    private IEnumerable<(double, string)> CalendarTicks(float width)
    {
        var step = Ticks.DayStep(days.Count - 1, Math.Max(2, (int)(width / 46)));
        for (var i = 0; i < days.Count; i += step)
        {
            yield return (i, NumberText.ShortDate(days[i].Date));
        }
    }

    private static IEnumerable<(double, string)> Whole(double high, int parts) =>
        Ticks.Round(0, high, parts) is var (values, decimals) ? values.Select(value => (value, NumberText.Number(value, decimals))) : [];

    private static IReadOnlyList<HeatDay> Check(IReadOnlyList<HeatDay> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        for (var i = 1; i < days.Count; i++)
        {
            if (days[i].Date != days[i - 1].Date.AddDays(1))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Days follow each other; found {days[i].Date:yyyy-MM-dd} after {days[i - 1].Date:yyyy-MM-dd}."), nameof(days));
            }
        }

        foreach (var day in days.Where(day => day.Heat is { } heat && !(heat >= 0 && double.IsFinite(heat))))
        {
            throw new ArgumentException(FormattableString.Invariant($"A day's heat is 0 or more; found {day.Heat} on {day.Date:yyyy-MM-dd}."), nameof(days));
        }

        return days.Count > 1 ? days : throw new ArgumentException("Heat is drawn of two days or more.", nameof(days));
    }
}
