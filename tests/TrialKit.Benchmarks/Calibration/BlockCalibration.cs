using System.Globalization;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Linear;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>Trials in blocks: without a difference F, Dunnett and Tukey over the family, rearrangement within blocks, and spots taken for replicates; with true differences the intervals around them.</summary>
internal static class BlockCalibration
{
    private const int Spots = 4;
    private const int Arrangements = 999;
    private const ulong DifferingSeed = 1_000;

    // Strips vary as much as their spots, and blocks twice as much.
    private const double StripDeviation = 1;
    private const double SpotDeviation = 1;
    private const double BlockDeviation = 2;

    // The intervals are drawn around true differences, in trials of their own.
    private static readonly double[] Truth = [0, 1.7, -0.8, 0.4];

    public static IEnumerable<CheckedRate> Run(int treatments, int blocks, int trials, ulong seed)
    {
        double[] levels = [0.05, 0.10];
        string[] tests = ["F", "Dunnett, any of the family", "Tukey, any of the family", "rearranged within blocks", "F over spots"];
        var found = levels.ToDictionary(level => level, _ => tests.ToDictionary(test => test, _ => new Tally(), StringComparer.Ordinal));
        var all = levels.ToDictionary(level => level, _ => new Tally());
        var pairs = levels.ToDictionary(level => level, _ => new Tally());
        var one = levels.ToDictionary(level => level, _ => new Tally());
        var degrees = (treatments - 1) * (blocks - 1);
        var overSpots = degrees + (treatments * blocks * (Spots - 1));
        int[] others = [.. Enumerable.Repeat(blocks, treatments - 1)];
        var limits = levels.ToDictionary(level => level, level => (
            F: FisherF.UpperQuantile(level, treatments - 1, degrees),
            Dunnett: Dunnett.CriticalValueTwoSided(level, blocks, others, degrees),
            Tukey: StudentizedRange.UpperQuantile(level, treatments, degrees) / Math.Sqrt(2),
            T: StudentT.UpperQuantile(level / 2, degrees),
            Spots: FisherF.UpperQuantile(level, treatments - 1, overSpots)));
        var trial = new Simulated(new double[treatments], blocks, seed);
        var differing = new Simulated(Truth[..treatments], blocks, seed + DifferingSeed);
        for (var number = 0; number < trials; number++)
        {
            trial.Draw();
            var analysis = trial.Analyse();
            var anova = analysis.Strips;
            var error = anova.DifferenceStandardError(0, 1)!.Value;
            var againstControl = Enumerable.Range(1, treatments - 1).Max(other => Math.Abs(anova.Difference(other, 0))) / error;
            var anyPair = (anova.Means.Max() - anova.Means.Min()) / error;
            var rearranged = BlockRandomization.Of(trial.Means, trial.Block, trial.Treatment, Arrangements, seed + (ulong)number, largestWalk: 0).P;
            foreach (var level in levels)
            {
                found[level][tests[0]].Count(anova.Treatments.F > limits[level].F);
                found[level][tests[1]].Count(againstControl > limits[level].Dunnett);
                found[level][tests[2]].Count(anyPair > limits[level].Tukey);
                found[level][tests[3]].Count(rearranged <= level);
                found[level][tests[4]].Count(analysis.FOverSpots > limits[level].Spots);
            }

            differing.Draw();
            var around = differing.Analyse().Strips;
            double Off(int first, int second) => Math.Abs(around.Difference(first, second) - (Truth[first] - Truth[second])) / around.DifferenceStandardError(0, 1)!.Value;
            var furthest = Enumerable.Range(1, treatments - 1).Max(other => Off(other, 0));
            var furthestPair = Enumerable.Range(1, treatments - 1).SelectMany(first => Enumerable.Range(0, first).Select(second => Off(first, second))).Max();
            foreach (var level in levels)
            {
                all[level].Count(furthest <= limits[level].Dunnett);
                pairs[level].Count(furthestPair <= limits[level].Tukey);
                one[level].Count(Off(1, 0) <= limits[level].T);
            }
        }

        var layout = string.Create(CultureInfo.InvariantCulture, $"{treatments} x {blocks} blocks");
        foreach (var level in levels)
        {
            foreach (var test in tests[..3])
            {
                yield return CheckedRate.Level(layout, test, level, found[level][test]);
            }

            yield return CheckedRate.AtMost(layout, tests[3], level, found[level][tests[3]]);
            yield return CheckedRate.Coverage(layout, "Dunnett's intervals, all at once", 1 - level, all[level]);
            yield return CheckedRate.Coverage(layout, "Tukey's intervals, all at once", 1 - level, pairs[level]);
            yield return CheckedRate.Coverage(layout, "interval of one difference", 1 - level, one[level]);
            yield return CheckedRate.Wrong(layout, string.Create(CultureInfo.InvariantCulture, $"{tests[4]} ({Spots} a strip as replicates)"), level, found[level][tests[4]]);
        }
    }

    /// <summary>A trial in blocks with spots, with the true effect of each treatment.</summary>
    private sealed class Simulated(double[] effects, int blocks, ulong seed)
    {
        private readonly NormalDraws draws = new(seed);
        private readonly double[] spots = new double[effects.Length * blocks * Spots];
        private readonly int[] strip = [.. Enumerable.Range(0, effects.Length * blocks * Spots).Select(spot => spot / Spots)];

        public double[] Means { get; } = new double[effects.Length * blocks];

        public int[] Block { get; } = [.. Enumerable.Range(0, effects.Length * blocks).Select(number => number / effects.Length)];

        public int[] Treatment { get; } = [.. Enumerable.Range(0, effects.Length * blocks).Select(number => number % effects.Length)];

        public void Draw()
        {
            var level = 0.0;
            for (var number = 0; number < Means.Length; number++)
            {
                level = Treatment[number] == 0 ? BlockDeviation * draws.Next() : level;
                var own = level + effects[Treatment[number]] + (StripDeviation * draws.Next());
                Means[number] = 0;
                for (var spot = number * Spots; spot < (number + 1) * Spots; spot++)
                {
                    spots[spot] = own + (SpotDeviation * draws.Next());
                    Means[number] += spots[spot] / Spots;
                }
            }
        }

        public Subsampling Analyse() => Subsampling.Of(spots, strip, Block, Treatment);
    }
}
