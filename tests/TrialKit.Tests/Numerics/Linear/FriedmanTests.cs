using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class FriedmanTests
{
    [Fact]
    public void Of_EqualValuesInEachBlock_HasNoStatistic()
    {
        var test = Friedman.Of([1, 1, 2, 2], [0, 0, 1, 1], [0, 1, 0, 1]);

        Assert.Null(test.ChiSquare);
        Assert.Null(test.P);
    }

    [Fact]
    public void Of_MissingCell_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Friedman.Of([1, 2, 3], [0, 0, 1], [0, 1, 0]));

    [Fact]
    public void Of_MonotoneChangeOfUnit_ChangesNothing()
    {
        var trial = BlockCase.Load("soybean_seed_rcb");

        var plain = Friedman.Of(trial.Y, trial.Block, trial.Treatment);
        var logs = Friedman.Of([.. trial.Y.Select(v => Math.Log(v))], trial.Block, trial.Treatment);

        Assert.Equal(plain.ChiSquare, logs.ChiSquare);
    }
}
