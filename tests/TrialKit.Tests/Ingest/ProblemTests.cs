using TrialKit.Ingest;

namespace TrialKit.Tests.Ingest;

public class ProblemTests
{
    [Fact]
    public void ToString_TextFile_IsFileLineColumn()
    {
        var problem = new Problem("TK103", ProblemSeverity.Error, new ProblemLocation("stand-counts.csv", Sheet: null, 14, 23), "column 'plants' holds 'twelve'", "a whole number was expected, such as 29");

        Assert.Equal("stand-counts.csv:14:23: error TK103: column 'plants' holds 'twelve'; a whole number was expected, such as 29", problem.ToString());
    }

    [Theory]
    [InlineData(1, "A7")]
    [InlineData(3, "C7")]
    [InlineData(26, "Z7")]
    [InlineData(27, "AA7")]
    [InlineData(703, "AAA7")]
    public void ToString_SheetLocation_IsItsCell(int column, string cell) =>
        Assert.Equal($"trial.xlsx!stand-counts!{cell}", new ProblemLocation("trial.xlsx", "stand-counts", 7, column).ToString());
}
