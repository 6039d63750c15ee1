namespace TrialKit.Numerics.EventTimes;

/// <summary>How to score an interval-censored time: which alternatives the test looks for.</summary>
internal enum IntervalScore
{
    /// <summary>Log-rank score of the discrete hazard, E(1 - cumulative hazard) (Sun 1996, Stat. Med. 15:1387-1395).</summary>
    LogRankSun,

    /// <summary>Log-rank score of grouped proportional hazards (Finkelstein 1986, Biometrics 42:845-854).</summary>
    LogRankFinkelstein,

    /// <summary>Rank-sum score of proportional odds (Peto and Peto 1972, J. R. Stat. Soc. A 135:185-207).</summary>
    RankSum,
}

/// <summary>Scores of interval-censored times under the estimate common to all groups; early times score high.</summary>
/// <remarks>Fay and Shaw 2010, J. Stat. Softw. 36(2).</remarks>
internal static class IntervalScores
{
    /// <summary>The score of each observation that the estimate was fitted to.</summary>
    public static double[] Of(Turnbull pooled, IntervalScore kind)
    {
        var intervals = pooled.Mass.Length;
        var scores = new double[pooled.FirstInside.Count];
        var weighted = kind == IntervalScore.LogRankSun ? SunSums(pooled) : [];
        for (var i = 0; i < scores.Length; i++)
        {
            var (first, last) = (pooled.FirstInside[i], pooled.LastInside[i]);
            var inside = pooled.MassBefore(last + 1) - pooled.MassBefore(first);
            var before = Math.Max(0.0, 1.0 - pooled.MassBefore(first));
            var after = last + 1 == intervals ? 0.0 : Math.Max(0.0, 1.0 - pooled.MassBefore(last + 1));
            scores[i] = kind switch
            {
                IntervalScore.LogRankSun => (weighted[last + 1] - weighted[first]) / inside,
                IntervalScore.LogRankFinkelstein => (TimesLog(before) - TimesLog(after)) / inside,
                IntervalScore.RankSum => before + after - 1.0,
                _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Found an unknown score."),
            };
        }

        return scores;
    }

    // Running sums of p_j (1 - Lambda_j), with Lambda the cumulative discrete hazard.
    private static double[] SunSums(Turnbull pooled)
    {
        var mass = pooled.Mass;
        var remaining = new double[mass.Length];
        var tail = 0.0;
        for (var j = mass.Length - 1; j >= 0; j--)
        {
            remaining[j] = tail += mass[j];
        }

        var sums = new double[mass.Length + 1];
        var hazard = 0.0;
        for (var j = 0; j < mass.Length; j++)
        {
            hazard += mass[j] == 0.0 ? 0.0 : mass[j] / remaining[j];
            sums[j + 1] = sums[j] + (mass[j] * (1.0 - hazard));
        }

        return sums;
    }

    private static double TimesLog(double x) => x <= 0.0 ? 0.0 : x * Math.Log(x);
}
