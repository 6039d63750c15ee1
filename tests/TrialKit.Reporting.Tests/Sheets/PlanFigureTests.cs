using System.Globalization;
using System.Text;
using System.Xml.Linq;
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

    [Theory]
    [InlineData(6)]
    [InlineData(50)]
    public void Map_NamesOfStrips_DoNotLieOnEachOther(int pairs)
    {
        using var planned = new PlannedTrial(replicates: pairs);
        var strips = planned.Plan.Strips.Select(strip => strip.Strip.Name).ToHashSet(StringComparer.Ordinal);
        var names = Texts(planned).Where(text => strips.Contains(text.Text)).ToArray();

        Assert.True(names.Length >= Math.Min(strips.Count, 12), $"{names.Length} names");
        foreach (var row in names.GroupBy(name => name.Y))
        {
            Assert.All(row.OrderBy(name => name.X).Zip(row.OrderBy(name => name.X).Skip(1)), beside => Assert.True(beside.Second.X - beside.First.X >= Pen.Width(beside.First.Text, strong: true), $"{beside.First.Text} reaches into {beside.Second.Text}"));
        }
    }

    [Fact]
    public void Map_TreatmentsThatDifferInTheirLastWord_AreToldApart()
    {
        using var planned = new PlannedTrial(treatment: "In-furrow 10-34-0 starter at 5 gal/ac");
        var texts = Texts(planned).Select(text => text.Text).ToArray();

        Assert.Equal(6, texts.Count(text => text == "In-furrow 10-34-0 starter at 5 gal/ac"));
        Assert.DoesNotContain(texts, text => text.Contains('\u2026', StringComparison.Ordinal));
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

    private static IEnumerable<(string Text, double X, double Y)> Texts(PlannedTrial planned)
    {
        using var stream = new MemoryStream();
        FigureFiles.WriteSvg(FieldMap.Figure(planned.Trial, planned.Plan), stream);
        return
        [
            .. from text in XDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).Descendants()
               where text.Name.LocalName == "text"
               select (text.Value.Replace('\u00A0', ' ').Trim(), Number(text, "x"), Number(text, "y")),
        ];
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value.Split(',')[0], CultureInfo.InvariantCulture);

    private static double Inked(IFigure figure, double width)
    {
        using var stream = new MemoryStream();
        FigureFiles.WritePng(figure, stream, width, pixelsPerPoint: 1);
        using var picture = SKBitmap.Decode(stream.ToArray());
        return picture.Pixels.Count(pixel => pixel != SKColors.White) / (double)picture.Pixels.Length;
    }
}
