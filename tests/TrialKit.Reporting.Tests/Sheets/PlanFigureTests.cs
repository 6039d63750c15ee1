using SkiaSharp;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Sheets;

namespace TrialKit.Reporting.Tests.Sheets;

public class PlanFigureTests
{
    [Fact]
    public void Map_SmallOrLarge_IsDrawnAndSaysThePlan()
    {
        using var planned = new PlannedTrial();
        var figure = FieldMap.Figure(planned.Trial, planned.Plan);

        Assert.Contains("S01 chains, S02 none", figure.AltText, StringComparison.Ordinal);
        foreach (var width in new[] { 150.0, 488 })
        {
            Assert.True(Inked(figure, width) > 0.2, FormattableString.Invariant($"width {width}"));
        }
    }

    [Fact]
    public void Map_WrongGeometry_IsRefused()
    {
        MapStrip strip = new("S01", "none", 0, 0, 20);

        Assert.Throws<ArgumentException>(() => new FieldMapFigure([], [], [], 20, 100, "ft", "x"));
        Assert.Throws<ArgumentException>(() => new FieldMapFigure([strip], [], [], double.NaN, 100, "ft", "x"));
        Assert.Throws<ArgumentException>(() => new FieldMapFigure([strip with { Right = 21 }], [], [], 20, 100, "ft", "x"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FieldMapFigure([strip with { Tone = -1 }], [], [], 20, 100, "ft", "x"));
    }

    [Fact]
    public void Power_LinesThatReachTheTargetOrDoNot_AreDrawn()
    {
        PowerLine few = new("3", [(0, 0.05), (5, 0.3), (10, 0.6)], IsStrong: false);
        PowerLine many = new("6", [(0, 0.05), (5, 0.6), (10, 0.95)], IsStrong: true);

        Assert.True(Inked(new PowerFigure([few, many], "pairs", 0.8, "x"), 488) > 0.005);
        Assert.Throws<ArgumentException>(() => new PowerFigure([], "pairs", 0.8, "x"));
        Assert.Throws<ArgumentException>(() => new PowerFigure([few with { Points = [(0, double.NaN), (1, 0.5)] }], "pairs", 0.8, "x"));
    }

    private static double Inked(IFigure figure, double width)
    {
        using var stream = new MemoryStream();
        FigureFiles.WritePng(figure, stream, width, pixelsPerPoint: 1);
        using var picture = SKBitmap.Decode(stream.ToArray());
        return picture.Pixels.Count(pixel => pixel != SKColors.White) / (double)picture.Pixels.Length;
    }
}
