using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Pairs;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>Null trials in pairs: t, sign flips and signed rank, and the intervals around a true difference.</summary>
internal static class PairCalibration
{
    // The intervals are drawn around a true difference, in trials of their own.
    private const double Truth = 1.7;

    public static IEnumerable<CheckedRate> Run(int pairs, int trials, ulong seed)
    {
        double[] levels = [0.05, 0.10];
        var t = levels.ToDictionary(level => level, _ => new Tally());
        var flips = levels.ToDictionary(level => level, _ => new Tally());
        var ranks = levels.ToDictionary(level => level, _ => new Tally());
        var covered = levels.ToDictionary(level => level, _ => new Tally());
        var draws = new NormalDraws(seed);
        var critical = levels.ToDictionary(level => level, level => StudentT.UpperQuantile(level / 2, pairs - 1));
        var differences = new double[pairs];
        for (var trial = 0; trial < trials; trial++)
        {
            Draw(differences, draws, truth: 0);
            var (mean, error) = MeanAndError(differences);
            var pFlips = SignFlips.Exact(differences).P;
            var pRanks = SignedRank.Exact(differences, ZeroTreatment.Drop).P;
            foreach (var level in levels)
            {
                t[level].Count(Math.Abs(mean / error) > critical[level]);
                flips[level].Count(pFlips <= level);
                ranks[level].Count(pRanks <= level);
            }

            Draw(differences, draws, Truth);
            var (estimate, itsError) = MeanAndError(differences);
            foreach (var level in levels)
            {
                covered[level].Count(Math.Abs(estimate - Truth) <= critical[level] * itsError);
            }
        }

        var layout = string.Create(CultureInfo.InvariantCulture, $"{pairs} pairs");
        foreach (var level in levels)
        {
            yield return CheckedRate.Level(layout, "paired t", level, t[level]);
            yield return CheckedRate.AtMost(layout, "sign flips", level, flips[level]);
            yield return CheckedRate.AtMost(layout, "signed rank", level, ranks[level]);
            yield return CheckedRate.Coverage(layout, "interval of the paired t", 1 - level, covered[level]);
        }
    }

    private static void Draw(double[] differences, NormalDraws draws, double truth)
    {
        for (var pair = 0; pair < differences.Length; pair++)
        {
            differences[pair] = truth + draws.Next() - draws.Next();
        }
    }

    private static (double Mean, double Error) MeanAndError(double[] differences) =>
        (Summary.Mean(differences), Summary.StandardDeviation(differences) / Math.Sqrt(differences.Length));
}
