using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Share of seeds up by day: each strip as dots at its visits, joined by a thin line where they follow each other closely, each treatment as a strong curve; dates, days and heat below.</summary>
/// <param name="planted">The planting date, day 0.</param>
/// <param name="curves">The treatments, control first.</param>
/// <param name="heatTitle">Name and unit of the heat scale, such as <c>heat, F-days</c>.</param>
/// <param name="heat">Ticks of the heat scale; empty where the heat is not known.</param>
/// <param name="altText">The result in words.</param>
/// <param name="heatUnit">The unit alone, for where room is short; null for the whole title.</param>
/// <param name="shareTitle">What share it is, with its unit.</param>
public sealed class EmergenceCurvesFigure(
    DateOnly planted,
    IReadOnlyList<EmergenceCurve> curves,
    string heatTitle,
    IReadOnlyList<HeatTick> heat,
    string altText,
    string? heatUnit = null,
    string shareTitle = "Seeds up, %") : IFigure
{
    private const float TopRoom = 20;
    private const float AxisRow = 14;
    private const float LeftRoom = 30;
    private const float LabelGap = 7;
    private const float Narrow = 380;
    private const double Visible = 0.01;

    /// <summary>The most treatments whose strips are drawn as lines; with more, their lines would hide the curves and only their dots remain.</summary>
    public const int MostJoined = 3;

    /// <summary>The most days between two visits over which a rise is drawn as a line; over more it would say what nobody saw.</summary>
    public const double MostJoinedDays = 2.25;

    private readonly IReadOnlyList<EmergenceCurve> curves = Check(curves);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => 0.56;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var (dayTitle, heatName) = area.Width < Narrow ? ("days", heatUnit ?? heatTitle) : ("days after planting", heatTitle);
        var labelRoom = Math.Min(
            area.Width * 0.3f,
            curves.Select(curve => Pen.Width(curve.Name, FigureStyle.LabelSize, strong: true)).Append(Pen.Width(dayTitle)).Append(Pen.Width(heat.Count > 0 ? heatName : string.Empty)).Max()) + 2;
        var rows = heat.Count > 0 ? 3 : 2;
        var data = new SKRect(area.Left + LeftRoom, area.Top + TopRoom, area.Right - labelRoom - LabelGap, area.Bottom - (rows * AxisRow) - 7);
        var lastDay = AllPoints().Max(point => point.Day);
        var highest = Math.Max(1, AllPoints().Max(point => point.Share));
        var firstDay = FirstDayShown(lastDay);
        using var chart = new Chart(area, data, (firstDay, lastDay + (0.01 * (lastDay - firstDay))), (0, 100 * highest));

        chart.TicksLeft(Ticks.Round(0, 100 * highest, 4).Values.Select(value => (value, NumberText.Number(value, 0))));
        var days = DayTicks(data.Width, firstDay, lastDay);
        chart.TicksBottom(days.Select(day => ((double)day, NumberText.ShortDate(planted.AddDays(day)))));
        AddLines(chart, firstDay);
        chart.Render(canvas);

        pen.Text(shareTitle, area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        DrawScales(pen, chart, area, days, dayTitle, heatName);
        DrawNames(pen, chart, labelRoom);
    }

    private void AddLines(Chart chart, int firstDay)
    {
        var joinStrips = curves.Count <= MostJoined;
        foreach (var curve in curves)
        {
            var tone = FigureStyle.Tone(curve.Tone);
            foreach (var stretch in (curve.Undefined ?? []).Where(stretch => stretch.ToDay > firstDay))
            {
                chart.Band((Math.Max(stretch.FromDay, firstDay), stretch.ToDay), (100 * stretch.LowShare, 100 * stretch.HighShare), tone.WithAlpha(46));
            }

            foreach (var strip in curve.Strips.Where(strip => strip.Count > 0))
            {
                if (joinStrips)
                {
                    foreach (var run in Joined(strip).Where(run => run.Count > 1 && run[^1].Day > firstDay))
                    {
                        chart.Line(Percent(From(run, firstDay)), tone.WithAlpha(120), FigureStyle.ThinStroke);
                    }
                }

                chart.Dots(Percent(strip.Where(point => point.Day >= firstDay)), tone.WithAlpha(150), 2.4f);
            }
        }

        foreach (var curve in curves.Where(curve => curve.Curve.Count > 0))
        {
            chart.Line(Percent(From(curve.Curve, firstDay)), FigureStyle.Tone(curve.Tone), FigureStyle.StrongStroke, FigureStyle.Stroke(curve.Tone));
        }
    }

    private void DrawScales(Pen pen, Chart chart, SKRect area, List<int> days, string dayTitle, string heatName)
    {
        var data = chart.Data;
        var titleX = data.Right + LabelGap + 2;
        var titleRoom = area.Right - titleX;
        var dateRow = data.Bottom + 11;
        var dayRow = dateRow + AxisRow - 2;
        foreach (var day in days)
        {
            pen.Text(NumberText.Count(day), chart.X(day), dayRow, FigureStyle.Quiet, place: TextPlace.Middle);
        }

        pen.Text(Pen.Shorten(dayTitle, titleRoom), titleX, dayRow, FigureStyle.Quiet);
        if (heat.Count == 0)
        {
            return;
        }

        // The heat scale has its own line: its steps are even in heat and so uneven in days.
        var line = dayRow + 10;
        var heatRow = line + 9;
        pen.Line(data.Left, line, data.Right, line, FigureStyle.Axis, FigureStyle.HairStroke);
        var free = float.NegativeInfinity;
        foreach (var tick in heat.OrderBy(tick => tick.Day).Where(tick => chart.X(tick.Day) >= data.Left - 0.5f && chart.X(tick.Day) <= data.Right + 0.5f))
        {
            var x = chart.X(tick.Day);
            pen.Line(x, line, x, line + 3, FigureStyle.Axis, FigureStyle.HairStroke);
            var text = NumberText.Number(tick.Sum, 0);
            var half = Pen.Width(text) / 2;
            if (x - half > free)
            {
                pen.Text(text, x, heatRow, FigureStyle.Quiet, place: TextPlace.Middle);
                free = x + half + 6;
            }
        }

        pen.Text(Pen.Shorten(heatName, titleRoom), titleX, heatRow, FigureStyle.Quiet);
    }

    // Names stand where the lines end; those that would meet are moved apart and led back by a hair line.
    private void DrawNames(Pen pen, Chart chart, float room)
    {
        var ends = curves
            .Select(curve => curve.Curve.Count > 0 ? curve.Curve[^1] : curve.Strips.Where(strip => strip.Count > 0).Select(strip => strip[^1]).Last())
            .ToList();
        var wishes = ends.Select(end => (double)chart.Y(100 * end.Share)).ToList();
        var places = LabelSpread.Places(wishes, FigureStyle.LabelSize + 2.5, chart.Data.Top + 2, chart.Data.Bottom - 4);
        for (var i = 0; i < curves.Count; i++)
        {
            var x = chart.Data.Right + LabelGap;
            var y = (float)places[i];
            pen.Line(chart.X(ends[i].Day) + 1.5f, (float)wishes[i], x - 1, y, FigureStyle.Tone(curves[i].Tone), FigureStyle.HairStroke);
            var name = Pen.Shorten(curves[i].Name, room - 2, FigureStyle.LabelSize, strong: true);
            pen.Text(name, x + 2, y, FigureStyle.TextTone(curves[i].Tone), FigureStyle.LabelSize, strong: true);
        }
    }

    private static List<int> DayTicks(float width, int firstDay, double lastDay)
    {
        var step = Ticks.DayStep(lastDay - firstDay, Math.Max(2, (int)(width / 46)));
        var first = (firstDay + step - 1) / step * step;
        return first > lastDay ? [firstDay] : [.. Enumerable.Range(0, (int)((lastDay - first) / step) + 1).Select(i => first + (i * step))];
    }

    // The days before anything can be up are cut where they would take a sixth of the paper or more; one or two of them remain.
    private int FirstDayShown(double lastDay)
    {
        var up = AllPoints().Where(point => point.Share > Visible).Select(point => point.Day).DefaultIfEmpty(0).Min();
        var rise = curves.SelectMany(curve => curve.Undefined ?? []).Where(stretch => stretch.HighShare > Visible).Select(stretch => stretch.FromDay).DefaultIfEmpty(up).Min();
        var first = Math.Min((int)Math.Floor(up) - 2, (int)Math.Floor(rise) - 1);
        return first >= lastDay / 6 ? first : 0;
    }

    // A strip's visits in runs that a line may join; one alone makes no line.
    internal static IEnumerable<List<CurvePoint>> Joined(IReadOnlyList<CurvePoint> strip)
    {
        var run = new List<CurvePoint> { strip[0] };
        foreach (var (from, to) in strip.Zip(strip.Skip(1)))
        {
            if (to.Day - from.Day > MostJoinedDays && to.Share > from.Share)
            {
                yield return run;
                run = [];
            }

            run.Add(to);
        }

        yield return run;
    }

    // The points from a day on; the line is cut at that day where it crosses it.
    private static IEnumerable<CurvePoint> From(IReadOnlyList<CurvePoint> points, int day)
    {
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Day >= day)
            {
                yield return points[i];
            }
            else if (i + 1 < points.Count && points[i + 1].Day > day)
            {
                var part = (day - points[i].Day) / (points[i + 1].Day - points[i].Day);
                yield return new CurvePoint(day, points[i].Share + (part * (points[i + 1].Share - points[i].Share)));
            }
        }
    }

    private IEnumerable<CurvePoint> AllPoints() => curves.SelectMany(curve => curve.Curve.Concat(curve.Strips.SelectMany(strip => strip)));

    private static IEnumerable<(double X, double Y)> Percent(IEnumerable<CurvePoint> points) =>
        points.Select(point => (point.Day, 100 * point.Share));

    private static IReadOnlyList<EmergenceCurve> Check(IReadOnlyList<EmergenceCurve> curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        foreach (var curve in curves)
        {
            FigureStyle.CheckTone(curve.Tone);
            var points = curve.Curve.Concat(curve.Strips.SelectMany(strip => strip)).ToList();
            if (points.Count == 0)
            {
                throw new ArgumentException($"Treatment {curve.Name} has neither a curve nor a strip with a visit.", nameof(curves));
            }

            foreach (var point in points.Where(point => !(point.Day >= 0 && point.Day < 1000 && point.Share >= 0 && double.IsFinite(point.Share))))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Treatment {curve.Name}: a day of 0 or more and a share of 0 or more were expected; found day {point.Day}, share {point.Share}."),
                    nameof(curves));
            }
        }

        foreach (var (curve, stretch) in curves.SelectMany(curve => (curve.Undefined ?? []).Select(stretch => (curve, stretch))))
        {
            if (!(stretch.FromDay <= stretch.ToDay && stretch.LowShare <= stretch.HighShare
                && double.IsFinite(stretch.FromDay) && double.IsFinite(stretch.ToDay) && stretch.LowShare >= 0 && double.IsFinite(stretch.HighShare)))
            {
                throw new ArgumentException($"Treatment {curve.Name}: a stretch runs from less to more in days and shares; found {stretch}.", nameof(curves));
            }
        }

        if (curves.Count == 0 || !curves.SelectMany(curve => curve.Curve.Concat(curve.Strips.SelectMany(strip => strip))).Any(point => point.Day > 0))
        {
            throw new ArgumentException("Emergence is drawn from one treatment or more with a visit after planting day; found none.", nameof(curves));
        }

        return curves;
    }
}
