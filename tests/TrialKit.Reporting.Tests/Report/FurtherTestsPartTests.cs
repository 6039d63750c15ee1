using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>What stands beside the verdicts for a reviewer.</summary>
public class FurtherTestsPartTests
{
    [Fact]
    public void Of_PairThatLostAStrip_PrintsBothCountsAndTheModelOfAllStrips()
    {
        var (analysis, document) = AwkwardTrials.Named("a pair that lost a strip");
        var table = Table(document, "With the strips whose pair lost the other");
        var stand = analysis.Measures.Single(measure => measure.Measure.Id == "stand");

        Assert.Equal(["10", "11"], table.Rows[0].Cells.Skip(1).Take(2));
        Assert.Equal(11, stand.Pairs!.AllStrips!.Strips);
    }

    [Theory]
    [InlineData("closing-wheels", "Analysis of variance", "blocks", "treatments", "error")]
    [InlineData("closing-wheels", "Time to 50 % up: every pair by every procedure", "Spiked pair less Rubber pair", "Cast-iron pair less Notched disc pair")]
    [InlineData("drag-chains", "Against the margins set beforehand", "Stand, plants/ac")]
    public void Of_Example_PrintsTheWholeTable(string name, string caption, params string[] cells)
    {
        var printed = Table(TrialReportTests.Report(name).Document, caption).Rows.SelectMany(row => row.Cells).ToArray();

        Assert.All(cells, cell => Assert.Contains(cell, printed));
    }

    private static Table Table(ReportDocument document, string caption) => document.Blocks.OfType<Table>().Single(table => table.Caption == caption);
}
