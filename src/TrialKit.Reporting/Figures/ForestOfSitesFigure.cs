using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>The difference at each site on one scale around zero, the pooled difference below, and where another site would lie.</summary>
/// <param name="axisTitle">What is drawn, with its unit.</param>
/// <param name="sites">The sites, one or more, in the order of the record.</param>
/// <param name="pooled">The pooled difference; its weight is not drawn.</param>
/// <param name="prediction">Where the difference of another site like these would lie.</param>
/// <param name="altText">The result in words.</param>
public sealed class ForestOfSitesFigure(
    string axisTitle,
    IReadOnlyList<SiteRow> sites,
    SiteRow pooled,
    FigureInterval prediction,
    string altText) : IFigure
{
    private const float TopRoom = 18;
    private const float BottomRoom = 20;
    private const float RowHeight = 22;
    private const float Gap = 12;
    private const float SmallestDot = 4;
    private const float DotRange = 8;
    private const string PredictionName = "another site";

    private readonly IReadOnlyList<SiteRow> sites = Check(sites);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => (TopRoom + BottomRoom + (Rows * RowHeight)) / 486.0;

    private int Rows => sites.Count + 2;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var all = sites.Append(pooled).ToArray();
        var nameRoom = Math.Min(area.Width * 0.28f, all.Max(row => Pen.Width(row.Name, FigureStyle.LabelSize, strong: true)));
        nameRoom = Math.Max(nameRoom, Pen.Width(PredictionName, FigureStyle.LabelSize));
        var textRoom = Math.Min(area.Width * 0.32f, all.Max(row => Pen.Width(row.Text)));
        var data = new SKRect(area.Left + nameRoom + Gap, area.Top + TopRoom, area.Right - textRoom - Gap, area.Bottom - BottomRoom);
        var (low, high) = AxisRange.Around(all.SelectMany(row => new[] { row.Interval.Low, row.Interval.High }).Concat([0, prediction.Low, prediction.High]));
        using var chart = new Chart(area, data, (low, high), (0, Rows));
        var (ticks, places) = Ticks.Round(low, high, Math.Max(2, (int)(data.Width / 62)));
        chart.TicksBottom(ticks.Select(value => (value, NumberText.Number(value, places))));
        chart.GridAcross();
        chart.Render(canvas);
        pen.Line(chart.X(0), data.Top - 4, chart.X(0), data.Bottom, FigureStyle.Axis, 1);
        pen.Text(Pen.Shorten(axisTitle, area.Width, FigureStyle.LabelSize), area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        for (var i = 0; i < sites.Count; i++)
        {
            DrawRow(pen, chart, sites[i], Rows - i - 0.5, (area, nameRoom, textRoom), strong: false);
        }

        DrawRow(pen, chart, pooled, 1.5, (area, nameRoom, textRoom), strong: true);
        var y = chart.Y(0.5);
        pen.Line(chart.X(prediction.Low), y, chart.X(prediction.High), y, FigureStyle.Treatments[0].WithAlpha(110), FigureStyle.StrongStroke * 2);
        pen.Text(PredictionName, area.Left, y, FigureStyle.Quiet, FigureStyle.LabelSize);
    }

    // The pooled dot has the size of a whole weight; a site's grows with the root of its share, as areas are compared.
    private static void DrawRow(Pen pen, Chart chart, SiteRow row, double place, (SKRect Area, float NameRoom, float TextRoom) room, bool strong)
    {
        var y = chart.Y(place);
        var tone = strong ? FigureStyle.Treatments[0] : FigureStyle.ControlText;
        pen.Line(chart.X(row.Interval.Low), y, chart.X(row.Interval.High), y, tone, strong ? FigureStyle.StrongStroke : 1.3f);
        pen.Dot(chart.X(row.Interval.Estimate), y, strong ? FigureStyle.EstimateDot : SmallestDot + (DotRange * (float)Math.Sqrt(row.Weight) / 2), tone);
        pen.Text(Pen.Shorten(row.Name, room.NameRoom, FigureStyle.LabelSize, strong), room.Area.Left, y, strong ? FigureStyle.Treatments[0] : FigureStyle.Ink, FigureStyle.LabelSize, strong: strong);
        pen.Text(Pen.Shorten(row.Text, room.TextRoom), room.Area.Right, y, FigureStyle.Quiet, place: TextPlace.End);
    }

    private static IReadOnlyList<SiteRow> Check(IReadOnlyList<SiteRow> sites)
    {
        ArgumentNullException.ThrowIfNull(sites);
        foreach (var site in sites.Where(site => site.Weight is not (>= 0 and <= 1)))
        {
            throw new ArgumentException(FormattableString.Invariant($"Site {site.Name} has the weight {site.Weight}; a share from 0 to 1 was expected."), nameof(sites));
        }

        return sites.Count > 0 ? sites : throw new ArgumentException("A forest has one site or more; found none.", nameof(sites));
    }
}
