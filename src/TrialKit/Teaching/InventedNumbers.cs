using TrialKit.Numerics;
using TrialKit.Quantities;

namespace TrialKit.Teaching;

/// <summary>Numbers drawn for exercises whose truth is known: the same seed gives the same numbers on every machine.</summary>
/// <param name="seed">Any number.</param>
/// <remarks>The stream is xoshiro256** (Blackman and Vigna 2021, ACM Trans. Math. Softw. 47:36).</remarks>
public sealed class InventedNumbers(ulong seed)
{
    private const double SmallestUniform = 1.0 / (1UL << 53);

    private readonly RandomStream stream = new(seed);

    /// <summary>A whole number from <paramref name="low"/> to <paramref name="high"/>, both included, each equally likely.</summary>
    /// <exception cref="ArgumentOutOfRangeException">High lies below low.</exception>
    public int Whole(int low, int high)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(high, low);
        return low + stream.NextInt(checked(high - low + 1));
    }

    /// <summary>A number between two, each equally likely.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not finite, or high lies below low.</exception>
    public double Between(double low, double high)
    {
        Guard.Finite(low, "the lower limit");
        return low + ((Guard.Between(high, low, double.MaxValue, "the upper limit") - low) * stream.NextDouble());
    }

    /// <summary>A number of a normal distribution.</summary>
    /// <param name="mean">Its mean, finite.</param>
    /// <param name="deviation">Its standard deviation, 0 or more.</param>
    public double Normal(double mean, double deviation)
    {
        Guard.Finite(mean, "a mean");
        Guard.NotNegative(deviation, "a standard deviation");
        return mean + (deviation * Numerics.Distributions.Normal.Quantile(Math.Max(SmallestUniform, stream.NextDouble())));
    }

    /// <summary>How many of so many seeds come up when each does so with the same chance.</summary>
    /// <param name="count">Seeds, 0 or more.</param>
    /// <param name="chance">The chance of each, from 0 to 1.</param>
    public int Binomial(int count, double chance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        Guard.Between(chance, 0, 1, "a chance");
        var successes = 0;
        for (var i = 0; i < count; i++)
        {
            successes += stream.NextDouble() < chance ? 1 : 0;
        }

        return successes;
    }

    /// <summary>Heads or tails.</summary>
    public bool Coin() => stream.NextInt(2) == 0;

    /// <summary>The items in an order that is one of all orders with equal chance.</summary>
    public IReadOnlyList<T> Shuffled<T>(IEnumerable<T> items)
    {
        T[] shuffled = [.. items];
        stream.Shuffle<T>(shuffled);
        return shuffled;
    }
}
