namespace TrialKit.Numerics.EventTimes;

/// <summary>The covariance of a maximum-likelihood estimate that holds when observations within clusters are alike.</summary>
internal static class ClusterSandwich
{
    /// <summary>I^-1 (sum of s s') I^-1, without a small-sample factor (Liang and Zeger 1986, Biometrika 73:13-22).</summary>
    /// <param name="inverse">Inverse of the observed information, n x n.</param>
    /// <param name="n">Parameters.</param>
    /// <param name="scores">Each cluster's score at the estimate.</param>
    public static double[] Of(ReadOnlySpan<double> inverse, int n, IEnumerable<double[]> scores)
    {
        var sandwich = new double[n * n];
        var influence = new double[n];
        foreach (var score in scores)
        {
            for (var i = 0; i < n; i++)
            {
                influence[i] = 0.0;
                for (var j = 0; j < n; j++)
                {
                    influence[i] += inverse[(i * n) + j] * score[j];
                }
            }

            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++)
                {
                    sandwich[(i * n) + j] += influence[i] * influence[j];
                }
            }
        }

        return sandwich;
    }
}
