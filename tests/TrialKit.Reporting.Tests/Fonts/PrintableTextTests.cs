using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Tests.Fonts;

public class PrintableTextTests
{
    [Fact]
    public void Clean_EverythingReportsUse_StaysAsItIs()
    {
        const string used = "°±≤≥×µ²–—‘’“”…−·•→←½ÄÖÜäöüßéèçñøåŁłŽž АБВ αβΔ %&@#$€£";

        Assert.Equal(used, PrintableText.Clean(used));
    }

    [Theory]
    [InlineData("玉米", "\uFFFD\uFFFD")]
    [InlineData("a \U0001F33D b", "a \uFFFD b")]
    [InlineData("tab\tline\n", "tab line ")]
    [InlineData("", "")]
    public void Clean_CharactersWithoutGlyph_AreReplaced(string text, string expected) =>
        Assert.Equal(expected, PrintableText.Clean(text));

    [Fact]
    public void Missing_SeveralTexts_NamesEachCharacterOnceInOrder() =>
        Assert.Equal(["玉", "米", "\U0001F33D"], PrintableText.Missing(["米 chains\t", "玉米 \U0001F33D", "plain"]));
}
