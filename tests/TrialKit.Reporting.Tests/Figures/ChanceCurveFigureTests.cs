using System.Globalization;
using System.Text;
using System.Xml.Linq;
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
        var text = Encoding.UTF8.GetString(stream.ToArray());
        Assert.Contains("price", text, StringComparison.Ordinal);
        Assert.Contains("this trial", text, StringComparison.Ordinal);
    }

    /// <summary>The trial's own cost is often nothing, the left end of the axis.</summary>
    [Fact]
    public void WriteSvg_TrialsOwnAtTheEdge_StandsClearOfTheHeading()
    {
        using var stream = new MemoryStream();
        FigureFiles.WriteSvg(Of([new(0, 0.4, 0.4), new(4, 0.1, 0.1)], now: 0), stream);
        var svg = XDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
        var (head, now, top) = (Place("chance that it pays"), Place("this trial"), Place("100 %"));
        Assert.True(now.Y - head.Y >= FigureStyle.SmallSize, $"'this trial' at {now.Y}, the heading at {head.Y}");
        Assert.True(now.X > top.X + Pen.Width("100 %"), $"'this trial' at {now.X}, the mark at {top.X}");

        (double X, double Y) Place(string words)
        {
            var text = svg.Descendants().Single(element => element.Name.LocalName == "text" && element.Value.Replace('\u00A0', ' ').Trim() == words);
            return (Number(text, "x"), Number(text, "y"));
        }
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value.Split(',')[0], CultureInfo.InvariantCulture);

    private static ChanceCurveFigure Of(params ChancePoint[] points) => Of(points, now: 3);

    private static ChanceCurveFigure Of(ChancePoint[] points, double now) => new("price", points, now, "with 25 % to spare", tone: 1, "The chance goes up.");
}
