using System.Xml.Linq;
using SkiaSharp;
using TrialKit.Heat;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests.Figures;

public class FigureTests
{
    public static TheoryData<int> All => [.. Enumerable.Range(0, Gallery.Figures().Count)];

    [Theory]
    [MemberData(nameof(All))]
    public void WriteSvg_Figure_IsTheSameEachTimeAndHoldsText(int index)
    {
        var svg = Svg(Gallery.Figures()[index]);

        Assert.Equal(svg, Svg(Gallery.Figures()[index]));
        Assert.Contains(XDocument.Parse(svg).Descendants(), element => element.Name.LocalName == "text");
        Assert.Contains("font-family=\"IBM Plex Sans, sans-serif", svg, StringComparison.Ordinal);

        // The plot package leaves an empty path for an axis without ticks; a touch of the round pen is never empty.
        Assert.DoesNotContain(XDocument.Parse(svg).Descendants(), element => (string?)element.Attribute("stroke-linecap") == "round" && (string?)element.Attribute("d") == "");
    }

    [Fact]
    public void WriteSvg_PairedDifferences_ShowsEveryPair()
    {
        var svg = Svg(new PairedDifferencesFigure("a", "b", [new("1", 1.5), new("2", -2), new("3", 0.25), new("4", null)], null, "", "", 1, "alt"));

        var touches = XDocument.Parse(svg).Descendants()
            .Where(element => (string?)element.Attribute("stroke-linecap") == "round")
            .Sum(element => ((string?)element.Attribute("d"))!.Count(letter => letter == 'M'));
        Assert.Equal(3, touches);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void WritePng_Figure_LeavesItsEdgesWhite(int index)
    {
        var figure = Gallery.Figures()[index];
        using var stream = new MemoryStream();
        FigureFiles.WritePng(figure, stream, pixelsPerPoint: 1);
        using var bitmap = SKBitmap.Decode(stream.ToArray());

        Assert.Equal(488, bitmap.Width);
        Assert.Equal((int)Math.Ceiling((float)(488 * figure.Aspect)), bitmap.Height);
        var dark = bitmap.Pixels.Count(pixel => pixel.Red < 128);
        Assert.InRange(dark, 50, bitmap.Pixels.Length / 3);
        Assert.All(
            Enumerable.Range(0, bitmap.Width).SelectMany(x => new[] { bitmap.GetPixel(x, 0), bitmap.GetPixel(x, bitmap.Height - 1) }),
            pixel => Assert.True(pixel.Red > 200, "something is drawn over the edge"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Draw_InASmallRoom_DoesNotFail(int index)
    {
        var figure = Gallery.Figures()[index];
        using var stream = new MemoryStream();
        FigureFiles.WritePng(figure, stream, width: 260, pixelsPerPoint: 1);

        Assert.True(stream.Length > 500);
        Assert.NotEmpty(figure.AltText);
        Assert.InRange(figure.Aspect, 0.05, 1.5);
    }

    [Fact]
    public void Curves_NaN_IsRefusedByName()
    {
        var error = Assert.Throws<ArgumentException>(() => new EmergenceCurvesFigure(
            Gallery.Planted, [new("chains", 1, [new(1, double.NaN)], [])], "heat", [], "alt"));

        Assert.Contains("chains", error.Message, StringComparison.Ordinal);
        Assert.Contains("NaN", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_NothingToDraw_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => new EmergenceCurvesFigure(Gallery.Planted, [], "heat", [], "alt"));
        Assert.Throws<ArgumentException>(() => new EmergenceCurvesFigure(Gallery.Planted, [new("a", 0, [], [])], "heat", [], "alt"));
        Assert.Throws<ArgumentException>(() => new EmergenceCurvesFigure(Gallery.Planted, [new("a", 0, [new(0, 0)], [])], "heat", [], "alt"));
    }

    [Theory]
    [InlineData(2, 1, 0, 1)]
    [InlineData(1, 2, 1, 0)]
    [InlineData(double.NaN, 2, 0, 1)]
    [InlineData(1, 2, 0, double.NaN)]
    public void Curves_ImpossibleStretch_IsRefused(double from, double to, double low, double high) =>
        Assert.Throws<ArgumentException>(() => new EmergenceCurvesFigure(
            Gallery.Planted, [new("chains", 1, [new(1, 0.5)], [], [new(from, to, low, high)])], "heat", [], "alt"));

    [Fact]
    public void Pairs_NoValueOrNaN_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => new PairedDifferencesFigure("a", "b", [new("1", null)], null, "", "", 1, "alt"));
        Assert.Throws<ArgumentException>(() => new PairedDifferencesFigure("a", "b", [new("1", double.NaN)], null, "", "", 1, "alt"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PairedDifferencesFigure("a", "b", [new("1", 1)], null, "", "", -1, "alt"));
    }

    [Theory]
    [InlineData(double.NaN, 0, 1)]
    [InlineData(0, double.NaN, 1)]
    [InlineData(double.NegativeInfinity, 0, 1)]
    [InlineData(1, 0, 2)]
    public void FigureInterval_Impossible_IsRefused(double low, double estimate, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FigureInterval(low, estimate, high));

    [Fact]
    public void Heat_DaysWithAGap_AreRefusedWithTheDate()
    {
        var error = Assert.Throws<ArgumentException>(() => new HeatFigure(
            "F-days", [new(Gallery.Planted, 1), new(Gallery.Planted.AddDays(2), 1)], [], "alt"));

        Assert.Contains("2026-04-29", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void Heat_ImpossibleHeat_IsRefused(double heat) =>
        Assert.Throws<ArgumentException>(() => new HeatFigure("F-days", [new(Gallery.Planted, heat), new(Gallery.Planted.AddDays(1), 1)], [], "alt"));

    [Fact]
    public void Heat_DaysOfSeveralKinds_AreKeyedAndDrawnApart()
    {
        string Of(DayKind kind) => Svg(new HeatFigure("F-days", [new(Gallery.Planted, 10), new(Gallery.Planted.AddDays(1), 12, kind), new(Gallery.Planted.AddDays(2), 8, kind)], [], "alt"));

        Assert.DoesNotContain("observed", Of(DayKind.Observed), StringComparison.Ordinal);
        Assert.Contains("dashed from the first day that was not observed", Of(DayKind.Filled), StringComparison.Ordinal);
        Assert.All([DayKind.Filled, DayKind.Forecast, DayKind.Normal], kind => Assert.Contains(kind.ToString(), Of(kind), StringComparison.OrdinalIgnoreCase));
        Assert.Equal(4, Enum.GetValues<DayKind>().Select(Of).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Heat_DayMissing_LabelsItsSumAsTheLeast() =>
        Assert.Contains("at least 18", Svg(new HeatFigure("F-days", [new(Gallery.Planted, 10), new(Gallery.Planted.AddDays(1), null), new(Gallery.Planted.AddDays(2), 8)], [], "alt")), StringComparison.Ordinal);

    [Fact]
    public void Window_OpenRange_IsNamedAndKeyed()
    {
        string Of(string? open) => Svg(new PlantingWindowFigure([new(Gallery.Planted, Gallery.Planted.AddDays(9), null, [DayKind.Forecast, DayKind.Normal], open)], "alt"));

        Assert.All(["not reached", "latest open", "planted", "forecast", "normal"], text => Assert.Contains(text, Of("not reached"), StringComparison.Ordinal));
        Assert.DoesNotContain("latest open", Of(null), StringComparison.Ordinal);
    }

    [Fact]
    public void Methods_OfTwoUnits_HaveAPanelEachAndTellTheirSums()
    {
        var svg = Svg(new HeatMethodsFigure(Gallery.Planted, [new("corn 86/50", "F-days", [10, 20], 1, "at least 20"), new("crop heat units", "CHU", [20, 40], 2, "40")], "1 of 2 days filled", "alt"));

        Assert.All([", F-days", ", CHU", "corn 86/50: at least 20", "crop heat units: 40", "1 of 2 days filled; thin after a missing day"], text => Assert.Contains(text, svg, StringComparison.Ordinal));
    }

    [Fact]
    public void Spacing_SharesOrEdgesThatDoNotFit_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new SpacingFigure("in", [0, 1, 2], [new("a", 0, [1])], [], "alt"));
        Assert.Throws<ArgumentException>(() => new SpacingFigure("in", [0, 0], [new("a", 0, [1])], [], "alt"));
        Assert.Throws<ArgumentException>(() => new SpacingFigure("in", [0, 1], [new("a", 0, [double.NaN])], [], "alt"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void WritePng_ImpossibleSize_IsRefused(double size)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FigureFiles.WritePng(Gallery.Forest(), Stream.Null, width: size));
        Assert.Throws<ArgumentOutOfRangeException>(() => FigureFiles.WritePng(Gallery.Forest(), Stream.Null, pixelsPerPoint: size));
    }

    private static string Svg(IFigure figure)
    {
        using var stream = new MemoryStream();
        FigureFiles.WriteSvg(figure, stream);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
