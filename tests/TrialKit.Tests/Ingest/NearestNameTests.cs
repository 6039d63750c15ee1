using TrialKit.Ingest;

namespace TrialKit.Tests.Ingest;

public class NearestNameTests
{
    /// <summary>Textbook distances: kitten to sitting takes 3 edits, Saturday to Sunday 3.</summary>
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("Saturday", "Sunday", 3)]
    [InlineData("", "abc", 3)]
    [InlineData("Title", "title", 0)]
    public void Distance_TwoNames_IsTheNumberOfEdits(string first, string second, int expected)
    {
        Assert.Equal(expected, NearestName.Distance(first, second));
        Assert.Equal(expected, NearestName.Distance(second, first));
    }

    [Fact]
    public void Of_MistypedName_IsTheNearest() => Assert.Equal("germination", NearestName.Of("germinaton", ["date", "depth", "germination"]));
}
