using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Tests.Document;

public class FileNameTextTests
{
    [Theory]
    [InlineData("emergence", "emergence")]
    [InlineData("own-seed_2", "own-seed_2")]
    [InlineData("../../etc/passwd", "------etc-passwd")]
    [InlineData("C:\\x", "C--x")]
    [InlineData("\u00E9t\u00E9", "-t-")]
    [InlineData("", "_")]
    [InlineData("CON", "CON_")]
    [InlineData("lpt1", "lpt1_")]
    [InlineData("console", "console")]
    public void Of_Text_IsANameOnAnySystem(string text, string expected) => Assert.Equal(expected, FileNameText.Of(text));

    [Fact]
    public void Of_LongText_IsCut() => Assert.Equal(new string('a', 80), FileNameText.Of(new string('a', 5000)));

    [Fact]
    public void Unused_NamesThatComeToTheSame_AreNumbered()
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);

        Assert.Equal(["a-b", "A-B-2", "a-b-3"], ((string[])["a b", "A-B", "a/b"]).Select(name => FileNameText.Unused(name, taken)));
    }
}
