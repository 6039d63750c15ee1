using SkiaSharp;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>Plants along the tape, spot under spot: where each stands, by its tone when it came up; a gap is a gap.</summary>
/// <param name="axisTitle">What runs across, with its unit.</param>
/// <param name="steps">What each tone means, the first to come up first; no more than the style has.</param>
/// <param name="rows">The spots.</param>
/// <param name="altText">The result in words.</param>
/// <param name="late">What the mark of a late plant means; null where no plant can be marked.</param>
public sealed class RowMapFigure(string axisTitle, IReadOnlyList<string> steps, IReadOnlyList<MappedRow> rows, string altText, string? late = null) : IFigure
{
    private const float TopRoom = 20;
    private const float BottomRoom = 32;
    private const float RowHeight = 11;
    private const float PlantHeight = 8;
    private const float PlantWidth = 2.6f;
    private const float FootWidth = 5.2f;
    private const float FootHeight = 2.8f;
    private const float Gap = 8;
    private const double PageWidth = 488;

    private readonly IReadOnlyList<MappedRow> rows = Check(rows, steps);

    /// <summary>The most tones a row map can tell apart.</summary>
    public static int MostSteps => FigureStyle.Steps.Count;

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => (TopRoom + BottomRoom + (rows.Count * RowHeight)) / PageWidth;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var nameRoom = Math.Min(area.Width * 0.3f, rows.Max(row => Pen.Width(row.Name)));
        var data = new SKRect(area.Left + nameRoom + Gap, area.Top + TopRoom, area.Right - 4, area.Bottom - BottomRoom);
        var longest = Math.Max(1, rows.Max(row => row.Plants.Max(plant => plant.Position)));
        using var chart = new Chart(area, data, (0, longest * 1.01), (0, rows.Count));
        var (ticks, decimals) = Ticks.Round(0, longest, Math.Max(2, (int)(data.Width / 60)));
        chart.TicksBottom(ticks.Select(value => (value, NumberText.Number(value, decimals))));
        chart.Render(canvas);
        DrawSteps(pen, area);
        for (var i = 0; i < rows.Count; i++)
        {
            var y = chart.Y(rows.Count - i - 0.5);
            pen.Text(Pen.Shorten(rows[i].Name, nameRoom), area.Left, y, FigureStyle.Quiet);
            pen.Line(data.Left, y, data.Right, y, FigureStyle.Grid, FigureStyle.HairStroke);
            foreach (var plant in rows[i].Plants)
            {
                DrawPlant(pen, chart.X(plant.Position), y, plant.Step, plant.IsLate);
            }
        }

        pen.Text(Pen.Shorten(axisTitle, data.Width), data.MidX, area.Bottom - 6, FigureStyle.Quiet, place: TextPlace.Middle);
    }

    // Few steps use the whole range of tones.
    private SKColor Tone(int step) => FigureStyle.Steps[steps.Count > 1 ? step * (FigureStyle.Steps.Count - 1) / (steps.Count - 1) : 0];

    private void DrawPlant(Pen pen, float x, float y, int? step, bool isLate)
    {
        if (step is { } tone)
        {
            pen.Box(SKRect.Create(x - (PlantWidth / 2), y - (PlantHeight / 2), PlantWidth, PlantHeight), Tone(tone));
            if (isLate)
            {
                pen.Box(SKRect.Create(x - (FootWidth / 2), y + (PlantHeight / 2) - FootHeight, FootWidth, FootHeight), FigureStyle.Late);
            }

            return;
        }

        pen.Ring(x, y, PlantWidth + 1.4f, FigureStyle.Axis);
    }

    private void DrawSteps(Pen pen, SKRect area)
    {
        var x = area.Left;
        for (var i = 0; i < steps.Count; i++)
        {
            DrawPlant(pen, x + 2, area.Top + 6, i, isLate: false);
            pen.Text(steps[i], x + 7, area.Top + 6, FigureStyle.Ink);
            x += Pen.Width(steps[i]) + 16;
        }

        if (late is not null)
        {
            DrawPlant(pen, x + 2, area.Top + 6, steps.Count - 1, isLate: true);
            pen.Text(Pen.Shorten(late, area.Right - x - 9), x + 9, area.Top + 6, FigureStyle.Ink);
        }
    }

    private static IReadOnlyList<MappedRow> Check(IReadOnlyList<MappedRow> rows, IReadOnlyList<string> steps)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(steps);
        if (rows.Count == 0 || rows.Any(row => row.Plants.Count == 0))
        {
            throw new ArgumentException("A row map has one row or more, each with a plant; found an empty one.", nameof(rows));
        }

        if (steps.Count > FigureStyle.Steps.Count)
        {
            throw new ArgumentException(FormattableString.Invariant($"Found {steps.Count} steps; a row map tells {FigureStyle.Steps.Count} apart."), nameof(steps));
        }

        return rows.SelectMany(row => row.Plants).FirstOrDefault(plant => !(plant.Position >= 0 && double.IsFinite(plant.Position)) || plant.Step < 0 || plant.Step >= steps.Count) is { } wrong
            ? throw new ArgumentException($"A plant stands at 0 or more and its step is one of those named; found {wrong}.", nameof(rows))
            : rows;
    }
}
