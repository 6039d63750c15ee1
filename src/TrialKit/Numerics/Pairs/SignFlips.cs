namespace TrialKit.Numerics.Pairs;

/// <summary>
/// Fisher's randomisation test within pairs (Fisher 1935, The Design of Experiments, section 21): under no difference each
/// pair's sign could as well have been the other, so the observed sum is set among the sums of all 2^n sign flips.
/// </summary>
/// <remarks>
/// Exact by meeting in the middle: the sums of each half of the pairs are listed in order (Horowitz and Sahni 1974) and two
/// pointers count the combinations, 2^(n/2) steps instead of 2^n. A zero difference doubles hits and total alike.
/// </remarks>
internal static class SignFlips
{
    /// <summary>The most pairs that <see cref="Exact"/> takes: two lists of 2^20 sums.</summary>
    public const int MaxExactPairs = 40;

    private const int GroupSize = 8;

    /// <summary>Draws when the pairs are too many for every flip.</summary>
    public const int DefaultDraws = 99_999;

    /// <summary>Seed of the draws when none is given.</summary>
    public const ulong DefaultSeed = 20_240_501;

    /// <summary>The smallest two-sided p this many pairs can ever give: 2 of 2^n flips.</summary>
    public static double SmallestP(int pairs)
    {
        Checks.AtLeast(pairs, 1);
        return Math.ScaleB(1, 1 - pairs);
    }

    /// <summary>The smallest two-sided p these differences can give whatever their signs: a pair without a difference counts on both sides.</summary>
    public static double SmallestP(ReadOnlySpan<double> differences)
    {
        var differing = Differing(differences);
        return differing == 0 ? 1 : SmallestP(differing);
    }

    /// <summary>How many pairs differ, beyond the rounding of the largest difference.</summary>
    public static int Differing(ReadOnlySpan<double> differences)
    {
        Checks.Sample(differences, 1);
        double[] sizes = [.. differences.ToArray().Select(Math.Abs)];
        var rounding = Ties.Relative * sizes.Max();
        return sizes.Count(size => size > rounding);
    }

    /// <summary>Every flip where that is possible, random ones otherwise.</summary>
    /// <param name="differences">One difference per pair.</param>
    /// <param name="draws">Draws if there are more than <see cref="MaxExactPairs"/> pairs.</param>
    /// <param name="seed">Seed of those draws.</param>
    public static SignFlipResult Test(ReadOnlySpan<double> differences, int draws = DefaultDraws, ulong seed = DefaultSeed) =>
        differences.Length <= MaxExactPairs ? Exact(differences) : Sampled(differences, draws, seed);

    /// <summary>The exact two-sided test on the absolute sum.</summary>
    /// <param name="differences">One difference per pair, 1 to <see cref="MaxExactPairs"/> pairs, in any one unit.</param>
    public static SignFlipResult Exact(ReadOnlySpan<double> differences)
    {
        Checks.Sample(differences, 1);
        if (differences.Length > MaxExactPairs)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{differences.Length} pairs were found; {MaxExactPairs} or fewer were expected for an exact test."),
                nameof(differences));
        }

        var threshold = Threshold(differences);
        var half = differences.Length / 2;
        var first = SignedSums(differences[..half]);
        var second = SignedSums(differences[half..]);
        var total = Math.ScaleB(1, differences.Length);

        // Sums lie symmetrically about zero; when no sum is short of the threshold, every flip is a hit.
        var hits = threshold <= 0 ? (long)total : 2 * CountAtLeast(first, second, threshold);
        return new SignFlipResult(hits / total, hits, total, IsExact: true, Draws: null, Seed: null);
    }

    /// <summary>The test by random flips, p = (1 + hits) / (1 + draws) (Davison and Hinkley 1997, section 4.2.5).</summary>
    /// <param name="differences">One difference per pair.</param>
    /// <param name="draws">Random flips, 1 or more.</param>
    /// <param name="seed">Decides the flips; the same seed gives the same p.</param>
    public static SignFlipResult Sampled(ReadOnlySpan<double> differences, int draws, ulong seed)
    {
        Checks.Sample(differences, 1);
        Checks.AtLeast(draws, 1);
        var threshold = Threshold(differences);
        var stream = new RandomStream(seed);
        var groups = GroupSums(differences);
        var hits = 0;
        for (var draw = 0; draw < draws; draw++)
        {
            if (Math.Abs(RandomSum(groups, stream)) >= threshold)
            {
                hits++;
            }
        }

        return new SignFlipResult((1.0 + hits) / (1.0 + draws), hits, draws, IsExact: false, draws, seed);
    }

    // The observed |sum| less an allowance for rounding, so that ties with it count.
    private static double Threshold(ReadOnlySpan<double> differences)
    {
        var size = 0.0;
        foreach (var difference in differences)
        {
            size += Math.Abs(difference);
        }

        return Math.Abs(Summary.Sum(differences)) - (Ties.Relative * size);
    }

    // All sums with either sign of each value, in ascending order, by merging the two shifted copies of the list so far.
    private static double[] SignedSums(ReadOnlySpan<double> values)
    {
        double[] sums = [0];
        foreach (var value in values)
        {
            var shift = Math.Abs(value);
            var next = new double[2 * sums.Length];
            int low = 0, high = 0;
            for (var i = 0; i < next.Length; i++)
            {
                next[i] = low < sums.Length && sums[low] - shift <= sums[high] + shift
                    ? sums[low++] - shift
                    : sums[high++] + shift;
            }

            sums = next;
        }

        return sums;
    }

    private static long CountAtLeast(double[] first, double[] second, double threshold)
    {
        long count = 0;
        var from = second.Length;
        foreach (var sum in first)
        {
            while (from > 0 && sum + second[from - 1] >= threshold)
            {
                from--;
            }

            count += second.Length - from;
        }

        return count;
    }

    // For each group of eight pairs the sums under its 256 flips, so that a draw adds groups instead of pairs.
    private static double[][] GroupSums(ReadOnlySpan<double> differences)
    {
        var groups = new double[(differences.Length + GroupSize - 1) / GroupSize][];
        for (var group = 0; group < groups.Length; group++)
        {
            var members = differences[(group * GroupSize)..Math.Min((group + 1) * GroupSize, differences.Length)];
            groups[group] = new double[1 << GroupSize];
            for (var flips = 0; flips < groups[group].Length; flips++)
            {
                for (var i = 0; i < members.Length; i++)
                {
                    groups[group][flips] += (flips >> i & 1) == 0 ? members[i] : -members[i];
                }
            }
        }

        return groups;
    }

    private static double RandomSum(double[][] groups, RandomStream stream)
    {
        var sum = 0.0;
        ulong bits = 0;
        for (var group = 0; group < groups.Length; group++)
        {
            bits = group % GroupSize == 0 ? stream.NextBits() : bits >> GroupSize;
            sum += groups[group][(byte)bits];
        }

        return sum;
    }
}
