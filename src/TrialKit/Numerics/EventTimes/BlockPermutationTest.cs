using System.Globalization;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Test of two treatments by exchanging labels of strips within their blocks, on one score per strip.</summary>
/// <remarks>
/// U = sum of x (score - its block's mean); over all exchanges its mean is 0 and its variance sum over blocks of S_ss S_xx / (n - 1).
/// Exact when there are few enough arrangements to list; the normal p is given always.
/// </remarks>
/// <param name="U">The statistic.</param>
/// <param name="Variance">Its permutation variance.</param>
/// <param name="Arrangements">Number of ways to label the strips; infinite if beyond counting.</param>
/// <param name="ExactP">Two-sided share of arrangements at least as far from 0; null if they are too many to list.</param>
internal sealed record BlockPermutationTest(double U, double Variance, double Arrangements, double? ExactP)
{
    private const double MostListed = 1 << 21;

    /// <summary>U over its standard deviation; null when no exchange changes it.</summary>
    public double? Z => Variance > 0.0 ? U / Math.Sqrt(Variance) : null;

    /// <summary>Two-sided normal p; null when no exchange changes the statistic.</summary>
    public double? NormalP => Z is { } z ? 2.0 * Normal.LowerTail(-Math.Abs(z)) : null;

    /// <summary>The smallest two-sided p these strips can give.</summary>
    public double SmallestP => 1.0 / Arrangements;

    /// <summary>Tests.</summary>
    /// <param name="score">One score per strip, such as the mean score of its seeds.</param>
    /// <param name="treated">Which strips have the treatment.</param>
    /// <param name="block">Block of each strip; labels are exchanged within blocks only.</param>
    /// <exception cref="ArgumentException">Lengths differ, nothing was given, or a score is not finite.</exception>
    public static BlockPermutationTest Of(ReadOnlySpan<double> score, ReadOnlySpan<bool> treated, ReadOnlySpan<int> block)
    {
        if (score.Length == 0 || treated.Length != score.Length || block.Length != score.Length)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {score.Length} scores, {treated.Length} labels and {block.Length} blocks; expected as many of each, at least one."), nameof(score));
        }

        var blocks = new SortedDictionary<int, (List<double> Scores, int Treated, double Sum)>();
        for (var i = 0; i < score.Length; i++)
        {
            if (!double.IsFinite(score[i]))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the score {score[i]} at strip {i + 1}; expected a finite number."), nameof(score));
            }

            var (scores, n, sum) = blocks.TryGetValue(block[i], out var found) ? found : ([], 0, 0.0);
            scores.Add(score[i]);
            blocks[block[i]] = (scores, n + (treated[i] ? 1 : 0), sum + (treated[i] ? score[i] : 0.0));
        }

        double u = 0, variance = 0, size = 0, ways = 1;
        foreach (var (scores, n, sum) in blocks.Values)
        {
            var mean = scores.Average();
            u += sum - (n * mean);
            var squares = scores.Sum(s => (s - mean) * (s - mean));
            size += scores.Sum(s => Math.Abs(s - mean));
            variance += scores.Count < 2 ? 0.0 : squares * n * (scores.Count - n) / (scores.Count * (scores.Count - 1.0));
            ways *= Math.Round(Choose(scores.Count, n));
        }

        double? exact = null;
        if (ways <= MostListed)
        {
            var sums = new List<double> { 0.0 };
            foreach (var (scores, n, _) in blocks.Values)
            {
                var mean = scores.Average();
                var own = new List<double>();
                List(scores, n, 0, -n * mean, own);
                sums = [.. sums.SelectMany(_ => own, (a, b) => a + b)];
            }

            // Arrangements that tie with the one seen must count as such whatever their order of summing.
            var least = Math.Abs(u) - (1e-12 * size);
            exact = sums.Count(s => Math.Abs(s) >= least) / ways;
        }

        return new BlockPermutationTest(u, variance, ways, exact);
    }

    private static void List(List<double> scores, int choose, int from, double sum, List<double> into)
    {
        if (choose == 0)
        {
            into.Add(sum);
            return;
        }

        for (var i = from; i <= scores.Count - choose; i++)
        {
            List(scores, choose - 1, i + 1, sum + scores[i], into);
        }
    }

    private static double Choose(int n, int k)
    {
        var ways = 1.0;
        for (var i = 1; i <= Math.Min(k, n - k); i++)
        {
            ways = ways * (n - Math.Min(k, n - k) + i) / i;
        }

        return ways;
    }
}
