using TrialKit.Teaching;

namespace TrialKit.Tests.Teaching;

public class InventedNumbersTests
{
    private const int Draws = 20_000;

    [Fact]
    public void SameSeed_GivesTheSameNumbers()
    {
        var (one, other) = (new InventedNumbers(42), new InventedNumbers(42));

        Assert.Equal(Enumerable.Range(0, 50).Select(_ => one.Normal(0, 1)), Enumerable.Range(0, 50).Select(_ => other.Normal(0, 1)));
        Assert.NotEqual(new InventedNumbers(1).Between(0, 1), new InventedNumbers(2).Between(0, 1));
    }

    [Fact]
    public void Draws_OfEachKind_HaveTheMeanOfTheirDistribution()
    {
        var data = new InventedNumbers(7);

        Check(() => data.Normal(3, 2), 3, 2);
        Check(() => data.Binomial(34, 0.85), 28.9, Math.Sqrt(34 * 0.85 * 0.15));
        Check(() => data.Whole(2, 9), 5.5, Math.Sqrt(63.0 / 12));
        Check(() => data.Between(-1, 3), 1, 4 / Math.Sqrt(12));
        Check(() => data.Coin() ? 1 : 0, 0.5, 0.5);
    }

    [Fact]
    public void Whole_BothEnds_AreReached()
    {
        var data = new InventedNumbers(3);
        var drawn = Enumerable.Range(0, 200).Select(_ => data.Whole(-1, 2)).Distinct().Order();

        Assert.Equal([-1, 0, 1, 2], drawn);
    }

    [Fact]
    public void Shuffled_KeepsEveryItem() =>
        Assert.Equal(Enumerable.Range(0, 20), new InventedNumbers(5).Shuffled(Enumerable.Range(0, 20)).Order());

    [Fact]
    public void ImpossibleArguments_AreRefused()
    {
        var data = new InventedNumbers(1);

        Assert.Throws<ArgumentOutOfRangeException>(() => data.Whole(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Between(double.NaN, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Between(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Normal(0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Normal(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Binomial(-1, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => data.Binomial(4, 1.01));
    }

    private static void Check(Func<double> draw, double mean, double deviation)
    {
        var found = Enumerable.Range(0, Draws).Average(_ => draw());
        Assert.InRange(found, mean - (Tolerances.SamplingErrors * deviation / Math.Sqrt(Draws)), mean + (Tolerances.SamplingErrors * deviation / Math.Sqrt(Draws)));
    }
}
