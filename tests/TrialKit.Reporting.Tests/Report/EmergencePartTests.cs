using TrialKit.Emergence;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>What is said of emergence where counts tell less than usual.</summary>
public class EmergencePartTests
{
    [Fact]
    public void ShareWords_SeedsKnown_SpeakOfSeeds() =>
        Assert.Equal("Seeds up, %", EmergencePart.ShareWords(AwkwardTrials.Named("2 treatments, 3 pairs").Analysis).Axis);

    [Theory]
    [InlineData(true, "Plants up, %")]
    [InlineData(false, "Up, %")]
    public void ShareWords_SeedsUnknown_DoNotSpeakOfSeeds(bool everywhere, string axis)
    {
        var words = EmergencePart.ShareWords(AwkwardTrials.SeedsUnknown(everywhere));

        Assert.Equal(axis, words.Axis);
        Assert.Contains("of the plants seen", words.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain("Seeds up", words.Panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.2, 0.03, "sooner")]
    [InlineData(-0.2, 0.03, "later")]
    [InlineData(0, 1.0, "neither")]
    [InlineData(1e-17, 1.0, "neither")]
    [InlineData(0, null, NumberText.Dash)]
    public void Direction_OfAScoreTest_IsSaidOnlyWhereThereIsOne(double statistic, double? p, string said) =>
        Assert.Equal(said, EmergenceReviewPart.Direction(new TimeScoreTest("plants up", 4, statistic, p is { } value ? Probability.Of(value) : null, IsExact: true, Probability.Of(0.125))));

    [Fact]
    public void Of_Example_ListsEveryIndexButTheHeatToShares()
    {
        var (analysis, document) = TrialReportTests.Report("drag-chains");
        var listed = document.Blocks.OfType<Table>().Single(table => table.Caption == "Timing indices, mean of strips").Rows.Count;

        var all = analysis.Strips.Emergence.SelectMany(strip => strip.Indices).Select(index => index.Id).Distinct(StringComparer.Ordinal).ToArray();

        // 10, 16, 25, 50, 75, 84, 90 % and T90 - T10, of seeds sown and of plants up.
        Assert.Contains("heat-variance-of-time", all, StringComparer.Ordinal);
        Assert.Equal(all.Length - 16, listed);
    }
}
