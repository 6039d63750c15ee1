using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Screening;

/// <summary>Bartlett's test that groups have one variance (Bartlett 1937); for samples near the normal.</summary>
internal static class Bartlett
{
    /// <summary>The test.</summary>
    /// <param name="groups">2 groups or more, each of 2 values or more that vary.</param>
    public static BartlettResult Test(IReadOnlyList<double[]> groups)
    {
        Checks.AtLeast(groups.Count, 2);
        double pooled = 0, df = 0, weightedLogs = 0, inverses = 0;
        for (var i = 0; i < groups.Count; i++)
        {
            var variance = Summary.Variance(groups[i]);
            if (variance == 0)
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"All {groups[i].Length} values of group {i + 1} equal {groups[i][0]}; values that vary were expected."), nameof(groups));
            }

            var own = groups[i].Length - 1.0;
            df += own;
            pooled += own * variance;
            weightedLogs += own * Math.Log(variance);
            inverses += 1 / own;
        }

        var correction = 1 + ((inverses - (1 / df)) / (3.0 * (groups.Count - 1)));
        var statistic = Math.Max(0, ((df * Math.Log(pooled / df)) - weightedLogs) / correction);
        return new BartlettResult(statistic, groups.Count - 1, ChiSquare.UpperTail(statistic, groups.Count - 1));
    }
}
