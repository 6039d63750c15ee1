using CsCheck;
using SkiaSharp;
using TrialKit.Reporting.Fonts;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class LineBreakerTests
{
    private static readonly Gen<List<Fragment>> Texts = Gen.Select(
            Gen.String[Gen.Char["aWi -é0/—."], 0, 60],
            Gen.Enum<BundledFace>(),
            (text, face) => new Fragment(text, face, SKColors.Black))
        .List[0, 5];

    [Fact]
    public void Break_AnyText_LosesNothing() =>
        Gen.Select(Texts, Gen.Double[1, 300]).Sample((text, width) =>
            string.Concat(LineBreaker.Break(text, 10, width).SelectMany(line => line).Select(each => each.Text))
            == string.Concat(text.Select(each => each.Text)));

    [Fact]
    public void Break_AnyText_FitsUnlessALineHoldsOneLetter() =>
        Gen.Select(Texts, Gen.Double[1, 300]).Sample((text, width) =>
            LineBreaker.Break(text, 10, width).All(line =>
                LineBreaker.Width(line, 10) <= width + 1e-6 || string.Concat(line.Select(each => each.Text)).Trim(' ').Length <= 1));

    [Theory]
    [InlineData("side-by-side", 30, "side-|by-|side")]
    [InlineData("4.2 gal/ac", 40, "4.2 |gal/ac")]
    [InlineData("before/after", 40, "before/|after")]
    [InlineData("−20 to 1,190", 400, "−20 to 1,190")]
    [InlineData("5-10 20", 26, "5-10 |20")]
    [InlineData("unbroken", 22, "unbr|oke|n")]
    public void Break_Word_BreaksWhereItMay(string text, double width, string expected)
    {
        var lines = LineBreaker.Break([new Fragment(text, BundledFace.Regular, SKColors.Black)], 10, width);

        Assert.Equal(expected, string.Join('|', lines.Select(line => string.Concat(line.Select(each => each.Text)))));
    }

    [Fact]
    public void Break_NoText_IsOneEmptyLine() => Assert.Empty(Assert.Single(LineBreaker.Break([], 10, 100)));
}
