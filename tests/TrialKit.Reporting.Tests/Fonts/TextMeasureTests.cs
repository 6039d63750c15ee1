using PdfSharp.Drawing;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Tests.Fonts;

public class TextMeasureTests
{
    [Theory]
    [InlineData("Regular")]
    [InlineData("Italic")]
    [InlineData("SemiBold")]
    [InlineData("SemiBoldItalic")]
    public void Width_Text_IsWhatThePdfPackageDraws(string name)
    {
        const string text = "The stand came up 0.3 days sooner (−20 to 1,190) — ½ “AVATAR”";
        var face = Enum.Parse<BundledFace>(name);
        BundledFonts.Register();
        var style = (face is BundledFace.SemiBold or BundledFace.SemiBoldItalic ? XFontStyleEx.Bold : XFontStyleEx.Regular) | (face is BundledFace.Italic or BundledFace.SemiBoldItalic ? XFontStyleEx.Italic : XFontStyleEx.Regular);
        using var graphics = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);

        var drawn = graphics.MeasureString(text, new XFont(BundledFonts.Family, 10, style)).Width;

        Assert.Equal(drawn, TextMeasure.Width(text, face, 10), 0.05);
    }

    [Fact]
    public void Width_Digits_AreTabular()
    {
        var widths = "0123456789".Select(digit => TextMeasure.Width(digit.ToString(), BundledFace.Regular, 10)).Distinct();

        Assert.Single(widths);
    }

    [Theory]
    [InlineData("a name that is much too long for its room", 60)]
    [InlineData("\U0001F33D\U0001F33D\U0001F33D\U0001F33D\U0001F33D\U0001F33D\U0001F33D\U0001F33D", 30)]
    [InlineData("no room", 12)]
    public void Shorten_TooLong_EndsWithAnEllipsisAndFits(string text, double room)
    {
        var shortened = TextMeasure.Shorten(text, BundledFace.Regular, 9, room);

        Assert.EndsWith("…", shortened, StringComparison.Ordinal);
        Assert.True(TextMeasure.Width(shortened, BundledFace.Regular, 9) <= room, shortened);
        Assert.All(shortened.EnumerateRunes(), rune => Assert.NotEqual(0xFFFD, rune.Value));
    }

    [Fact]
    public void Shorten_Fits_StaysWhole() => Assert.Equal("chains", TextMeasure.Shorten("chains", BundledFace.Regular, 9, 100));
}
