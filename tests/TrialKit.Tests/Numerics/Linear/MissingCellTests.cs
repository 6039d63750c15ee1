using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class MissingCellTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(23)]
    public void Of_AnyEmptyCell_GivesTheLeastSquaresTreatmentLine(int empty)
    {
        var trial = BlockCase.Load("rice_seeding_rcb");
        var y = Without(trial.Y, empty);
        var block = Without(trial.Block, empty);
        var treatment = Without(trial.Treatment, empty);

        var plug = MissingCell.Of(y, block, treatment);
        var analysis = BlockAnova.Of(y, block, treatment);

        Close.Relative(analysis.Treatments.SumOfSquares, plug.TreatmentSumOfSquares, Tolerances.ClosedForm, trial.Name);
        Assert.True(plug.Bias >= 0);
    }

    [Fact]
    public void Of_NoCellOrTwoCellsEmpty_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => MissingCell.Of([1, 2, 3, 4], [0, 0, 1, 1], [0, 1, 0, 1]));
        Assert.Throws<ArgumentException>(() => MissingCell.Of([1, 2, 3, 4], [0, 0, 1, 2], [0, 1, 0, 0]));
    }

    private static T[] Without<T>(T[] values, int index) => [.. values[..index], .. values[(index + 1)..]];
}
