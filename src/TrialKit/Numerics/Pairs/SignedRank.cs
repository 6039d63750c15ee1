using System.Collections.Concurrent;

namespace TrialKit.Numerics.Pairs;

/// <summary>
/// Wilcoxon's signed-rank test, exact given the ties: the distribution of the rank sum is built by convolution over the
/// doubled midranks, which are whole numbers.
/// </summary>
internal static class SignedRank
{
    private static readonly ConcurrentDictionary<int, double[]> Untied = new();

    /// <summary>The exact test of differences centred on zero.</summary>
    /// <param name="differences">One difference per pair, 1 or more.</param>
    /// <param name="zeros">What is done with pairs that did not differ.</param>
    public static SignedRankResult Exact(ReadOnlySpan<double> differences, ZeroTreatment zeros)
    {
        Checks.Sample(differences, 1);
        var sizes = new double[differences.Length];
        var order = new int[differences.Length];
        for (var i = 0; i < sizes.Length; i++)
        {
            sizes[i] = Math.Abs(differences[i]);
            order[i] = i;
        }

        Array.Sort(sizes, order);
        var tolerance = Ties.Relative * sizes[^1];
        var zeroCount = sizes.TakeWhile(size => size <= tolerance).Count();
        var doubled = DoubledMidranks(sizes.AsSpan(zeroCount), tolerance, zeros == ZeroTreatment.Pratt ? zeroCount : 0);

        var positive = 0;
        for (var i = 0; i < doubled.Length; i++)
        {
            if (differences[order[zeroCount + i]] > 0)
            {
                positive += doubled[i];
            }
        }

        var (chances, at) = IsUntied(doubled) ? (NullDistribution(doubled.Length), positive / 2) : (NullDistribution(doubled), positive);
        var less = Math.Min(1, Sum(chances.AsSpan(0, at + 1)));
        var greater = Math.Min(1, Sum(chances.AsSpan(at)));
        return new SignedRankResult(
            positive / 2.0, doubled.Length, zeroCount, Math.Min(1, 2 * Math.Min(less, greater)), greater, less);
    }

    /// <summary>The distribution for the ranks 1 to <paramref name="pairs"/>, made once for all measures of as many pairs; entry s is the chance of the sum s.</summary>
    public static double[] NullDistribution(int pairs) => Untied.GetOrAdd(pairs, static count => NullDistribution(Enumerable.Range(1, count).ToArray()));

    /// <summary>The chance of each sum of a random subset of <paramref name="ranks"/>; entry s is that of the sum s.</summary>
    public static double[] NullDistribution(ReadOnlySpan<int> ranks)
    {
        var reach = 0;
        foreach (var rank in ranks)
        {
            reach += rank;
        }

        var chances = new double[reach + 1];
        chances[0] = 1;
        var top = 0;
        foreach (var rank in ranks)
        {
            top += rank;
            for (var s = top; s >= 0; s--)
            {
                chances[s] = 0.5 * (chances[s] + (s >= rank ? chances[s - rank] : 0));
            }
        }

        return chances;
    }

    private static bool IsUntied(ReadOnlySpan<int> doubled)
    {
        for (var i = 0; i < doubled.Length; i++)
        {
            if (doubled[i] != 2 * (i + 1))
            {
                return false;
            }
        }

        return true;
    }

    // Twice the midranks of sorted sizes, so that halves become whole; ranks begin after those already taken.
    private static int[] DoubledMidranks(ReadOnlySpan<double> sorted, double tolerance, int taken)
    {
        var ranks = new int[sorted.Length];
        for (var start = 0; start < sorted.Length;)
        {
            var end = start + 1;
            while (end < sorted.Length && sorted[end] - sorted[start] <= tolerance)
            {
                end++;
            }

            // Ranks start + 1 to end, plus those taken; first plus last is twice their mean.
            Array.Fill(ranks, (2 * taken) + start + 1 + end, start, end - start);
            start = end;
        }

        return ranks;
    }

    private static double Sum(ReadOnlySpan<double> chances)
    {
        var sum = 0.0;
        foreach (var chance in chances)
        {
            sum += chance;
        }

        return sum;
    }
}
