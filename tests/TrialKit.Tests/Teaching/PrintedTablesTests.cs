using TrialKit.Teaching;

namespace TrialKit.Tests.Teaching;

public class PrintedTablesTests
{
    [Theory]
    [InlineData(5, 0.10, 2.015)]
    [InlineData(10, 0.05, 2.228)]
    [InlineData(30, 0.01, 2.750)]
    public void T_OfTextbookCells_IsAsPrinted(int degrees, double alpha, double printed) =>
        Assert.Equal(printed, PrintedTables.T(degrees, alpha), Tolerances.PrintedToThreeDecimals);

    [Theory]
    [InlineData(2, 6, 0.05, 5.143)]
    [InlineData(4, 12, 0.01, 5.412)]
    public void F_OfTextbookCells_IsAsPrinted(int effect, int error, double alpha, double printed) =>
        Assert.Equal(printed, PrintedTables.F(effect, error, alpha), Tolerances.PrintedToThreeDecimals);

    [Theory]
    [InlineData(4)]
    [InlineData(15)]
    public void CriticalValuesAndTails_OfOneDistribution_AreInverse(int degrees)
    {
        const double alpha = 0.07;
        Assert.Equal(alpha, PrintedTables.PofT(PrintedTables.T(degrees, alpha), degrees).Value, Tolerances.QuantileRoundTrip);
        Assert.Equal(alpha, PrintedTables.PofT(-PrintedTables.T(degrees, alpha), degrees).Value, Tolerances.QuantileRoundTrip);
        Assert.Equal(alpha, PrintedTables.PofF(PrintedTables.F(3, degrees, alpha), 3, degrees).Value, Tolerances.QuantileRoundTrip);
        Assert.Equal(alpha, PrintedTables.PofZ(PrintedTables.Z(alpha)).Value, Tolerances.QuantileRoundTrip);
        Assert.Equal(alpha, PrintedTables.PofRange(PrintedTables.Range(3, degrees, alpha), 3, degrees).Value, Tolerances.RangeProbability);
        Assert.Equal(alpha, PrintedTables.PofDunnett(PrintedTables.Dunnett(4, [4, 4], degrees, alpha), 4, [4, 4], degrees).Value, Tolerances.DunnettProbability);
    }

    [Fact]
    public void Dunnett_OfOneTreatment_IsStudentsT() =>
        Assert.Equal(PrintedTables.T(8, 0.10), PrintedTables.Dunnett(5, [5], 8, 0.10), Tolerances.DunnettQuantile);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void T_OfAnImpossibleLevel_IsRefused(double alpha)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedTables.T(5, alpha));
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedTables.Z(alpha));
    }

    [Fact]
    public void PofT_OfNoNumber_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedTables.PofT(double.NaN, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedTables.T(0, 0.1));
    }
}
