using System.Collections.Immutable;
using TrialKit.Numerics.EventTimes;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>Two treatments compared on time in ways that check the comparison of strip values; for the reviewer.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with.</param>
/// <param name="Scores">Score tests by exchange of strips within blocks.</param>
/// <param name="Pooled">The pooled curve's ratio of times; null with fewer than two blocks, more than <see cref="MostBlocks"/>, or counts that do not tell it.</param>
public sealed record TimeTest(Treatment Treatment, Treatment Baseline, ImmutableArray<TimeScoreTest> Scores, PooledTimeRatio? Pooled)
{
    /// <summary>Blocks up to which the pooled curve is fitted, each with a time of its own.</summary>
    public const int MostBlocks = 50;

    /// <summary>The score test.</summary>
    public static Method ScoreMethod { get; } = new(
        "Log-rank score test of interval-censored times, strips exchanged within blocks",
        "Sun 1996, Stat. Med. 15:1387-1395; Fay & Shaw 2010, J. Stat. Softw. 36(2)",
        "docs/methods/emergence-comparison.md");

    /// <summary>The pooled fit.</summary>
    public static Method PooledMethod { get; } = new(
        "Pooled event-time curve with treatment and blocks, strips as clusters",
        "Liang & Zeger 1986, Biometrika 73:13-22",
        "docs/methods/emergence-comparison.md");

    /// <summary>Compares two treatments over the blocks that hold both.</summary>
    internal static TimeTest Of(Treatment treatment, Treatment baseline, IEnumerable<StripEmergence> strips)
    {
        var pairs = strips
            .Where(strip => strip.Strip.IsAnalysed)
            .GroupBy(strip => strip.Strip.Block, Identifier.Comparer)
            .Select(block => (Treated: Find(block, treatment), Control: Find(block, baseline)))
            .Where(pair => pair.Treated is not null && pair.Control is not null)
            .ToArray();
        StripEmergence[] all = [.. pairs.SelectMany(pair => new[] { pair.Treated!, pair.Control! })];
        var (counts, sown) = SharedCounts.Of(all);
        var emerged = counts.Select(SharedCounts.Emerged).ToImmutableArray();
        return new(treatment, baseline, [.. sown ? Score("seeds sown", counts) : [], .. Score("plants up", emerged)], Ratio(counts, sown, all));

        static StripEmergence? Find(IEnumerable<StripEmergence> block, Treatment wanted) =>
            block.FirstOrDefault(strip => Identifier.Same(strip.Strip.Treatment.Name, wanted.Name));
    }

    // Strips stand in pairs, the treated one first. A block with nothing to score in one of its strips leaves the test.
    private static IEnumerable<TimeScoreTest> Score(string of, ImmutableArray<IntervalCounts> counts)
    {
        IntervalCounts[] used = [.. counts.Chunk(2).Where(pair => pair.All(strip => strip.Total > 0)).SelectMany(pair => pair)];
        if (used.Length == 0)
        {
            yield break;
        }

        var pooled = Turnbull.Fit(
            [.. used.SelectMany(strip => strip.Left.ToArray())],
            [.. used.SelectMany(strip => strip.Right.ToArray())],
            [.. used.SelectMany(strip => strip.Count.ToArray())]);
        var scores = IntervalScores.Of(pooled, IntervalScore.LogRankSun);
        var means = new double[used.Length];
        for (int i = 0, at = 0; i < used.Length; at += used[i].Length, i++)
        {
            for (var j = 0; j < used[i].Length; j++)
            {
                means[i] += scores[at + j] * used[i].Count[j] / used[i].Total;
            }
        }

        var test = BlockPermutationTest.Of(means, [.. used.Select((_, i) => i % 2 == 0)], [.. used.Select((_, i) => i / 2)]);
        var p = test.Variance > 0 ? test.ExactP ?? test.NormalP : null;
        yield return new(of, used.Length / 2, test.U, p is { } value ? Probability.Of(value) : null, test.ExactP is not null, Probability.Of(Math.Min(1, 2 * test.SmallestP)));
    }

    private static PooledTimeRatio? Ratio(ImmutableArray<IntervalCounts> counts, bool sown, StripEmergence[] strips)
    {
        var blocks = counts.Length / 2;
        if (blocks is < 2 or > MostBlocks)
        {
            return null;
        }

        var clusters = counts.Select((strip, i) =>
        {
            var covariates = new double[blocks];
            covariates[0] = i % 2 == 0 ? 1 : 0;
            if (i / 2 > 0)
            {
                covariates[i / 2] = 1;
            }

            return new EventTimeCluster(strip, covariates);
        }).ToArray();
        var fit = PooledEventTimeFit.Fit(clusters, strips[0].Fit.Shape, PooledEffects.Location, shareFixed: !sown);
        if (!fit.Converged || fit.EffectOn(PooledEffects.Location, 0) is not { StripStandardError: > 0 and var error } effect)
        {
            return null;
        }

        // Each block takes a time of its own, so strips less blocks less one remain; the sandwich alone would be too narrow by their ratio.
        double remaining = blocks - 1;
        return new(new(effect.Value, error * Math.Sqrt(counts.Length / remaining), remaining, blocks, Unit.None, PooledMethod), effect.SeedStandardError);
    }
}
