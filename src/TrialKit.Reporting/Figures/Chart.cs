using ScottPlot;
using ScottPlot.TickGenerators;
using SkiaSharp;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Figures;

/// <summary>A plot in the style of the house: light horizontal grid, no frame, ticks outside, room beside it for direct labels.</summary>
/// <remarks>Lines and dots are given in the data's own units; labels are drawn over the plot at places that <see cref="X"/> and <see cref="Y"/> give.</remarks>
internal sealed class Chart : IDisposable
{
    private const float TickLength = 4;
    private const float TickGap = 6;
    private const float BottomTickRow = 11;

    private readonly Plot plot = new();
    private readonly SKRect area;
    private readonly SKRect data;
    private readonly double left;
    private readonly double right;
    private readonly double bottom;
    private readonly double top;
    private readonly List<(SKPoint[] Points, SKColor Color, float Diameter)> dots = [];
    private IReadOnlyList<(double Value, string Text)> leftTicks = [];
    private IReadOnlyList<(double Value, string Text)> bottomTicks = [];

    /// <summary>A plot of a range of data in a part of an area.</summary>
    /// <param name="area">The whole area of the figure.</param>
    /// <param name="data">The part of it where the data are drawn.</param>
    /// <param name="x">The range of the horizontal axis.</param>
    /// <param name="y">The range of the vertical axis.</param>
    public Chart(SKRect area, SKRect data, (double Low, double High) x, (double Low, double High) y)
    {
        BundledFonts.Register();
        this.area = area;
        this.data = data;
        (left, right) = x;
        (bottom, top) = y;
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        plot.FigureBackground.Color = ScottPlot.Colors.Transparent;
        plot.DataBackground.Color = ScottPlot.Colors.Transparent;
        plot.Axes.SetLimits(left, right, bottom, top);
        plot.Axes.Frame(enable: false);
        plot.Layout.Fixed(new PixelPadding(data.Left - area.Left, area.Right - data.Right, area.Bottom - data.Bottom, data.Top - area.Top));
        plot.Grid.MajorLineColor = Tone(FigureStyle.Grid);
        plot.Grid.MajorLineWidth = FigureStyle.HairStroke;
        plot.Grid.XAxisStyle.IsVisible = false;
        Dress(plot.Axes.Bottom);
        Dress(plot.Axes.Left);
        Dress(plot.Axes.Top);
        Dress(plot.Axes.Right);
        plot.Axes.Bottom.MajorTickStyle.Length = TickLength;
    }

    /// <summary>Where the data are drawn.</summary>
    public SKRect Data => data;

    /// <summary>The place of a value across the paper.</summary>
    public float X(double value) => data.Left + (float)((value - left) / (right - left) * data.Width);

    /// <summary>The place of a value up the paper.</summary>
    public float Y(double value) => data.Bottom - (float)((value - bottom) / (top - bottom) * data.Height);

    /// <summary>Ticks of the vertical axis, with grid lines.</summary>
    public void TicksLeft(IEnumerable<(double Value, string Text)> ticks)
    {
        leftTicks = [.. ticks];
        plot.Axes.Left.TickGenerator = Unlabelled(leftTicks);
    }

    /// <summary>Ticks of the horizontal axis, with the axis line.</summary>
    public void TicksBottom(IEnumerable<(double Value, string Text)> ticks)
    {
        bottomTicks = [.. ticks];
        plot.Axes.Bottom.TickGenerator = Unlabelled(bottomTicks);
        plot.Axes.Bottom.FrameLineStyle.IsVisible = true;
        plot.Axes.Bottom.FrameLineStyle.Width = FigureStyle.HairStroke;
        plot.Axes.Bottom.FrameLineStyle.Color = Tone(FigureStyle.Axis);
    }

    /// <summary>Turns the grid from horizontal to vertical lines, for values that run across.</summary>
    public void GridAcross()
    {
        plot.Grid.XAxisStyle.IsVisible = true;
        plot.Grid.YAxisStyle.IsVisible = false;
    }

    /// <summary>A line through points, straight from one to the next.</summary>
    public void Line(IEnumerable<(double X, double Y)> points, SKColor color, float width, LineStroke stroke = LineStroke.Whole)
    {
        var line = plot.Add.ScatterLine(points.Select(point => new Coordinates(point.X, point.Y)).ToArray(), Tone(color));
        line.LineWidth = width;
        line.LinePattern = stroke switch
        {
            LineStroke.Whole => LinePattern.Solid,
            LineStroke.Dashed => LinePattern.Dashed,
            _ => LinePattern.Dotted,
        };
    }

    /// <summary>A filled outline.</summary>
    public void Area(IEnumerable<(double X, double Y)> outline, SKColor color)
    {
        var polygon = plot.Add.Polygon(outline.Select(point => new Coordinates(point.X, point.Y)).ToArray());
        polygon.FillColor = Tone(color);
        polygon.LineWidth = 0;
        polygon.MarkerSize = 0;
    }

    /// <summary>Dots, drawn above lines.</summary>
    public void Dots(IEnumerable<(double X, double Y)> points, SKColor color, float diameter) =>
        dots.Add(([.. points.Select(point => new SKPoint(X(point.X), Y(point.Y)))], color, diameter));

    /// <summary>A filled rectangle between values.</summary>
    public void Band((double Low, double High) x, (double Low, double High) y, SKColor color)
    {
        var box = plot.Add.Rectangle(x.Low, x.High, y.Low, y.High);
        box.FillColor = Tone(color);
        box.LineWidth = 0;
    }

    /// <summary>Draws the plot and the labels of its ticks; names are drawn after it.</summary>
    /// <remarks>The plot package draws each label of a tick twice, which thickens it and doubles it as text; so they are drawn here.</remarks>
    public void Render(SKCanvas canvas)
    {
        canvas.Save();
        plot.Render(canvas, new PixelRect(area.Left, area.Right, area.Bottom, area.Top));
        canvas.Restore();
        var pen = new Pen(canvas);
        foreach (var (points, color, diameter) in dots)
        {
            pen.Dots(points, diameter, color);
        }

        foreach (var (value, text) in leftTicks)
        {
            pen.Text(text, data.Left - TickGap, Y(value), FigureStyle.Quiet, place: TextPlace.End);
        }

        foreach (var (value, text) in bottomTicks)
        {
            pen.Text(text, X(value), data.Bottom + BottomTickRow, FigureStyle.Quiet, place: TextPlace.Middle);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => plot.Dispose();

    private static NumericManual Unlabelled(IReadOnlyList<(double Value, string Text)> ticks) =>
        new([.. ticks.Select(tick => tick.Value)], [.. ticks.Select(_ => string.Empty)]);

    private static void Dress(IAxis axis)
    {
        axis.TickGenerator = new NumericManual();
        axis.MajorTickStyle.Width = FigureStyle.HairStroke;
        axis.MajorTickStyle.Color = Tone(FigureStyle.Axis);
        axis.MajorTickStyle.Length = 0;
        axis.MinorTickStyle.Length = 0;
    }

    private static Color Tone(SKColor color) => new(color.Red, color.Green, color.Blue, color.Alpha);
}
