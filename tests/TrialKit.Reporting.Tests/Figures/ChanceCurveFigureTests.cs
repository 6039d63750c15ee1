using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests.Figures;

public class ChanceCurveFigureTests
{
    [Fact]
    public void Constructor_UnsoundPoints_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Of(new ChancePoint(1, 0.5, 0.4)));
        Assert.Throws<ArgumentException>(() => Of(new ChancePoint(2, 0.5, 0.4), new ChancePoint(1, 0.5, 0.4)));
        Assert.Throws<ArgumentException>(() => Of(new ChancePoint(1, 0.5, 0.4), new ChancePoint(2, 1.5, 0.4)));
        Assert.Throws<ArgumentException>(() => Of(new ChancePoint(1, 0.5, 0.4), new ChancePoint(2, double.NaN, 0.4)));
    }

    [Fact]
    public void WriteSvg_OfACurve_NamesItsAxisAndTheTrialsOwn()
    {
        using var stream = new MemoryStream();
        FigureFiles.WriteSvg(Of(new ChancePoint(2, 0.4, 0.3), new ChancePoint(4, 0.8, 0.7)), stream);
        var text = System.Text.Encoding.UTF8.GetString(stream.ToArray());
        Assert.Contains("price", text, StringComparison.Ordinal);
        Assert.Contains("this trial", text, StringComparison.Ordinal);
    }

    private static ChanceCurveFigure Of(params ChancePoint[] points) => new("price", points, 3, "with 25 % to spare", tone: 1, "The chance goes up.");
}
