namespace TrialKit.Numerics.Pairs;

/// <summary>
/// The Hodges-Lehmann estimate: the median of the means of all pairs of differences, each with itself too (Hodges and
/// Lehmann 1963), with the interval of order statistics that inverts the signed-rank test (Tukey 1949).
/// </summary>
internal static class HodgesLehmann
{
    /// <summary>The estimate and an interval of at least <paramref name="level"/> where the pairs are enough for that.</summary>
    /// <param name="differences">One difference per pair, 1 or more; zeros count like any other value.</param>
    /// <param name="level">Confidence level asked, between 0 and 1.</param>
    public static HodgesLehmannResult Estimate(ReadOnlySpan<double> differences, double level)
    {
        Checks.Sample(differences, 1);
        Checks.OpenProbability(level);
        var walsh = WalshAverages(differences);
        var (order, achieved) = OrderStatistic(differences.Length, level);
        return new HodgesLehmannResult(
            Summary.MedianOfSorted(walsh), walsh[order - 1], walsh[^order], achieved, order, walsh.Length);
    }

    private static double[] WalshAverages(ReadOnlySpan<double> differences)
    {
        var averages = new double[differences.Length * (differences.Length + 1) / 2];
        var next = 0;
        for (var i = 0; i < differences.Length; i++)
        {
            for (var j = i; j < differences.Length; j++)
            {
                averages[next++] = (0.5 * differences[i]) + (0.5 * differences[j]);
            }
        }

        Array.Sort(averages);
        return averages;
    }

    // The largest k with 1 - 2 P(V <= k - 1) at or above the level, at least 1. V is the signed-rank sum without ties.
    private static (int Order, double Achieved) OrderStatistic(int pairs, double level)
    {
        var chances = SignedRank.NullDistribution(pairs);
        var order = 1;
        var tail = chances[0];

        // The middle of the distribution ends the search: no interval may cross itself.
        while (2 * order < chances.Length - 1 && 1 - (2 * (tail + chances[order])) >= level)
        {
            tail += chances[order];
            order++;
        }

        return (order, Math.Max(0, 1 - (2 * tail)));
    }
}
