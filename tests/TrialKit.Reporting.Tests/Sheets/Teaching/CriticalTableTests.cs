using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>The printed tables against quantiles found by brute force.</summary>
public class CriticalTableTests
{
    [Fact]
    public void T_UpToTwentyDegrees_IsTheQuantileToThreeDecimals() => Assert.All(
        from df in Enumerable.Range(1, 20)
        from alpha in CriticalTable.TColumns
        select (df, alpha),
        cell => Assert.Equal(Math.Round(Textbook.T(cell.df, cell.alpha), 3, MidpointRounding.AwayFromZero), (double)CriticalTable.T(cell.df, cell.alpha).Written, 1e-9));

    [Theory]
    [InlineData(2, 6, 0.05, 5.143)]
    [InlineData(3, 9, 0.05, 3.863)]
    [InlineData(4, 12, 0.01, 5.412)]
    public void F_OfPublishedCells_IsAsPublished(int effect, int error, double alpha, double published)
    {
        Assert.Equal(published, (double)CriticalTable.F(effect, error, alpha).Written, 1e-9);
        Assert.Equal(published, Math.Round(Textbook.F(effect, error, alpha), 3), 1e-9);
    }
}
