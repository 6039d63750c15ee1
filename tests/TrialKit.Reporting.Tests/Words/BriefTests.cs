using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Tests.Words;

public class BriefTests
{
    [Theory]
    [InlineData("fits whole", 10, "fits whole")]
    [InlineData("cut at a word, not within", 16, "cut at a word…")]
    [InlineData("unbrokenunbroken", 8, "unbroke…")]
    [InlineData("", 5, "")]
    public void Of_Text_CutsAtAWordWhereItCan(string text, int most, string expected) => Assert.Equal(expected, Brief.Of(text, most));

    [Theory]
    [InlineData("One. Two. Three.", 20, "One. Two. Three.")]
    [InlineData("One. Two. Three and more.", 14, "One. Two. …")]
    [InlineData("One sentence that is long. Two.", 12, "One sentenc…")]
    public void Sentences_Text_KeepsWholeOnes(string text, int most, string expected) => Assert.Equal(expected, Brief.Sentences(text, most));

    [Fact]
    public void Of_PairOfSurrogates_IsNotSplit() => Assert.DoesNotContain('\uD83C', Brief.Of("abc\U0001F33Dabcdefgh", 5));
}
