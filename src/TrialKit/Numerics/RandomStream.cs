using System.Numerics;

namespace TrialKit.Numerics;

/// <summary>
/// Random numbers that stay the same for the same seed on every machine and in every version of the runtime:
/// xoshiro256** (Blackman and Vigna 2021), its state filled from the seed by SplitMix64 (Steele, Lea and Flood 2014).
/// </summary>
internal sealed class RandomStream
{
    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;

    /// <summary>A stream that the seed alone decides; every seed is allowed.</summary>
    public RandomStream(ulong seed)
    {
        Seed = seed;
        var state = seed;
        s0 = SplitMix(ref state);
        s1 = SplitMix(ref state);
        s2 = SplitMix(ref state);
        s3 = SplitMix(ref state);
    }

    /// <summary>The seed the stream began from.</summary>
    public ulong Seed { get; }

    /// <summary>64 random bits.</summary>
    public ulong NextBits()
    {
        var result = BitOperations.RotateLeft(s1 * 5, 7) * 9;
        var shifted = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= shifted;
        s3 = BitOperations.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>A number from 0 up to but not including 1, in steps of 2^-53.</summary>
    public double NextDouble() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 up to but not including <paramref name="bound"/>, each equally likely (Lemire 2019).</summary>
    public int NextInt(int bound)
    {
        Checks.AtLeast(bound, 1);
        var range = (ulong)bound;
        var refuse = (0UL - range) % range;
        while (true)
        {
            var high = Math.BigMul(NextBits(), range, out var low);
            if (low >= refuse)
            {
                return (int)high;
            }
        }
    }

    /// <summary>Puts the items in an order that is one of all orders with equal chance (Fisher and Yates).</summary>
    public void Shuffle<T>(Span<T> items)
    {
        for (var last = items.Length - 1; last > 0; last--)
        {
            var other = NextInt(last + 1);
            (items[last], items[other]) = (items[other], items[last]);
        }
    }

    private static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
