namespace TrialKit.Numerics.EventTimes;

/// <summary>Observations as runs of innermost intervals, first to last, with equal runs merged and their weights added.</summary>
internal sealed class ObservedRuns
{
    private ObservedRuns(int[] first, int[] last, double[] weight, double total) => (First, Last, Weight, Total) = (first, last, weight, total);

    /// <summary>First innermost interval of each run.</summary>
    public int[] First { get; }

    /// <summary>Last innermost interval of each run.</summary>
    public int[] Last { get; }

    /// <summary>Weight of each run, above 0.</summary>
    public double[] Weight { get; }

    /// <summary>All the weight.</summary>
    public double Total { get; }

    /// <summary>Groups observations by their runs.</summary>
    /// <param name="inner">The innermost intervals.</param>
    /// <param name="weight">Weights of the observations; empty weighs each 1.</param>
    public static ObservedRuns Group(InnermostIntervals inner, ReadOnlySpan<double> weight)
    {
        var keys = new long[inner.First.Length];
        var weights = new double[keys.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = ((long)inner.First[i] << 32) | (uint)inner.Last[i];
            weights[i] = weight.Length == 0 ? 1.0 : weight[i];
        }

        Array.Sort(keys, weights);
        var (distinct, total) = (0, 0.0);
        for (var i = 0; i < keys.Length; i++)
        {
            total += weights[i];
            if (distinct > 0 && keys[distinct - 1] == keys[i])
            {
                weights[distinct - 1] += weights[i];
                continue;
            }

            keys[distinct] = keys[i];
            weights[distinct++] = weights[i];
        }

        var (first, last) = (new int[distinct], new int[distinct]);
        for (var i = 0; i < distinct; i++)
        {
            first[i] = (int)(keys[i] >> 32);
            last[i] = (int)keys[i];
        }

        return new ObservedRuns(first, last, weights[..distinct], total);
    }
}
