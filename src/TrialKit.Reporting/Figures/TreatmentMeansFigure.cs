using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Means of several treatments with their intervals, and every strip as a dot above them.</summary>
/// <param name="axisTitle">What is drawn, with its unit.</param>
/// <param name="decimals">Decimals of the axis at least.</param>
/// <param name="treatments">The treatments, control first.</param>
/// <param name="altText">The result in words.</param>
/// <param name="aroundZero">Whether differences are drawn: zero is then on the axis, with a line.</param>
public sealed class TreatmentMeansFigure(
    string axisTitle,
    int decimals,
    IReadOnlyList<TreatmentMean> treatments,
    string altText,
    bool aroundZero = false) : IFigure
{
    private const float TopRoom = 18;
    private const float BottomRoom = 20;
    private const float RowHeight = 30;
    private const float Gap = 12;
    private const float Narrow = 300;
    private const float RowWithName = 21;

    private readonly IReadOnlyList<TreatmentMean> treatments = Check(treatments);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => HeightAt(FigureFiles.DefaultWidth) / FigureFiles.DefaultWidth;

    /// <inheritdoc/>
    public double HeightAt(double width) => TopRoom + BottomRoom + (treatments.Count * RowHeight);

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var namesAbove = area.Width < Narrow && (area.Height - TopRoom - BottomRoom) / treatments.Count >= RowWithName;
        var nameRoom = Math.Min(area.Width * 0.3f, treatments.Max(each => Pen.Width(each.Name, FigureStyle.LabelSize, strong: true)));
        var textRoom = Math.Min(area.Width * 0.25f, treatments.Max(each => Pen.Width(each.Text)));
        var data = namesAbove
            ? new SKRect(area.Left + 4, area.Top + TopRoom, area.Right - 4, area.Bottom - BottomRoom)
            : new SKRect(area.Left + nameRoom + Gap, area.Top + TopRoom, area.Right - textRoom - Gap, area.Bottom - BottomRoom);
        var values = treatments.SelectMany(each => each.Mean is { } mean ? each.Strips.Append(mean.Low).Append(mean.High) : each.Strips);
        var (low, high) = AxisRange.Around(aroundZero ? values.Append(0) : values);
        using var chart = new Chart(area, data, (low, high), (0, treatments.Count));
        var (ticks, places) = Ticks.Round(low, high, Math.Max(3, (int)(data.Width / 62)));
        chart.TicksBottom(ticks.Select(value => (value, aroundZero ? NumberText.Difference(value, Math.Max(places, decimals)) : NumberText.Number(value, Math.Max(places, decimals)))));
        chart.GridAcross();
        for (var i = 0; i < treatments.Count; i++)
        {
            AddRow(chart, treatments[i], treatments.Count - i - (namesAbove ? 0.72 : 0.5));
        }

        chart.Render(canvas);
        if (aroundZero)
        {
            pen.Line(chart.X(0), data.Top, chart.X(0), data.Bottom, FigureStyle.Axis, 1);
        }

        pen.Text(Pen.Shorten(axisTitle, area.Width, FigureStyle.LabelSize), area.Left, area.Top + 6, FigureStyle.Ink, FigureStyle.LabelSize);
        for (var i = 0; i < treatments.Count; i++)
        {
            var row = treatments.Count - i - (namesAbove ? 0.72 : 0.5);
            DrawMean(pen, chart, treatments[i], row);
            if (namesAbove)
            {
                DrawNames(pen, treatments[i], chart.Y(treatments.Count - i - 0.2), area, area.Width * 0.6f, area.Width * 0.36f);
            }
            else
            {
                DrawNames(pen, treatments[i], chart.Y(row), area, nameRoom, textRoom);
            }
        }
    }

    private static void AddRow(Chart chart, TreatmentMean treatment, double row) =>
        chart.Dots(treatment.Strips.Select(value => (value, row + 0.16)), FigureStyle.Tone(treatment.Tone).WithAlpha(170), FigureStyle.StripDot);

    private static void DrawMean(Pen pen, Chart chart, TreatmentMean treatment, double row)
    {
        var y = chart.Y(row - 0.14);
        var tone = FigureStyle.Tone(treatment.Tone);
        if (treatment.Mean is { } mean)
        {
            pen.Line(chart.X(mean.Low), y, chart.X(mean.High), y, tone, FigureStyle.StrongStroke);
            pen.Dot(chart.X(mean.Estimate), y, FigureStyle.EstimateDot, tone);
        }
    }

    private static void DrawNames(Pen pen, TreatmentMean treatment, float middle, SKRect area, float nameRoom, float textRoom)
    {
        var name = Pen.Shorten(treatment.Name, nameRoom, FigureStyle.LabelSize, strong: true);
        pen.Text(name, area.Left, middle, FigureStyle.TextTone(treatment.Tone), FigureStyle.LabelSize, strong: true);
        pen.Text(Pen.Shorten(treatment.Text, textRoom), area.Right, middle, FigureStyle.Quiet, place: TextPlace.End);
    }

    private static IReadOnlyList<TreatmentMean> Check(IReadOnlyList<TreatmentMean> treatments)
    {
        ArgumentNullException.ThrowIfNull(treatments);
        foreach (var treatment in treatments)
        {
            FigureStyle.CheckTone(treatment.Tone);
            if (treatment.Strips.Count == 0 || treatment.Strips.Any(value => !double.IsFinite(value)))
            {
                throw new ArgumentException($"Treatment {treatment.Name} has one strip or more, each with a finite value.", nameof(treatments));
            }
        }

        return treatments.Count > 0 ? treatments : throw new ArgumentException("Means are drawn of one treatment or more; found none.", nameof(treatments));
    }
}
