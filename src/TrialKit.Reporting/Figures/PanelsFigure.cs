using SkiaSharp;

namespace TrialKit.Reporting.Figures;

/// <summary>Pictures side by side as one figure; where the paper is too narrow, one below the other.</summary>
/// <param name="panels">The pictures in reading order.</param>
/// <param name="altText">The result in words.</param>
public sealed class PanelsFigure(IReadOnlyList<FigurePanel> panels, string altText) : IFigure
{
    private const float TitleRow = 16;
    private const float Gap = 18;
    private const double Narrow = 400;

    private readonly IReadOnlyList<FigurePanel> panels = panels is { Count: > 0 }
        ? panels
        : throw new ArgumentException("A figure of panels has one panel or more; found none.", nameof(panels));

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => HeightAt(FigureFiles.DefaultWidth) / FigureFiles.DefaultWidth;

    /// <inheritdoc/>
    public double HeightAt(double width) => width < Narrow
        ? panels.Sum(panel => TitleRow + panel.Figure.HeightAt(width)) + (Gap * (panels.Count - 1))
        : TitleRow + panels.Max(panel => panel.Figure.HeightAt(width * 0.62));

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        if (area.Width < Narrow)
        {
            DrawBelowEachOther(canvas, area);
            return;
        }

        var room = area.Width - (Gap * (panels.Count - 1));
        var total = panels.Sum(panel => panel.Share);
        var x = area.Left;
        foreach (var panel in panels)
        {
            var width = (float)(room * panel.Share / total);
            Draw(canvas, panel, new SKRect(x, area.Top, x + width, area.Bottom));
            x += width + Gap;
        }
    }

    private void DrawBelowEachOther(SKCanvas canvas, SKRect area)
    {
        var scale = area.Height / (float)HeightAt(area.Width);
        var y = area.Top;
        foreach (var panel in panels)
        {
            var height = scale * (TitleRow + (float)panel.Figure.HeightAt(area.Width));
            Draw(canvas, panel, new SKRect(area.Left, y, area.Right, y + height));
            y += height + (scale * Gap);
        }
    }

    private static void Draw(SKCanvas canvas, FigurePanel panel, SKRect area)
    {
        var title = Pen.Shorten(panel.Title, area.Width, FigureStyle.LabelSize, strong: true);
        new Pen(canvas).Text(title, area.Left, area.Top + 5, FigureStyle.Ink, FigureStyle.LabelSize, strong: true);
        panel.Figure.Draw(canvas, new SKRect(area.Left, area.Top + TitleRow, area.Right, area.Bottom));
    }
}
