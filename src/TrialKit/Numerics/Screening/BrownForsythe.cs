using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Screening;

/// <summary>The Brown-Forsythe test that groups have one spread: an analysis of variance of distances from the medians (Brown and Forsythe 1974).</summary>
internal static class BrownForsythe
{
    /// <summary>The test.</summary>
    /// <param name="groups">2 groups or more, more values than groups; the distances must vary within some group.</param>
    public static BrownForsytheResult Test(IReadOnlyList<double[]> groups)
    {
        Checks.AtLeast(groups.Count, 2);
        double[][] distances = [.. groups.Select(DistancesFromMedian)];
        double[] all = [.. distances.SelectMany(group => group)];
        var within = distances.Sum(group => Summary.SumOfSquares(group));
        var df1 = groups.Count - 1;
        var df2 = all.Length - groups.Count;
        Checks.AtLeast(df2, 1);
        if (within <= Ties.Relative * Ties.Relative * all.Sum(distance => distance * distance))
        {
            throw new ArgumentException("No distance from a group's median differs from the others of its group; values that vary were expected.", nameof(groups));
        }

        var centre = Summary.Mean(all);
        var between = distances.Sum(group => group.Length * Math.Pow(Summary.Mean(group) - centre, 2));
        var f = between / df1 / (within / df2);
        return new BrownForsytheResult(f, df1, df2, FisherF.UpperTail(f, df1, df2));
    }

    private static double[] DistancesFromMedian(double[] group)
    {
        var median = Summary.Median(group);
        return [.. group.Select(value => Math.Abs(value - median))];
    }
}
