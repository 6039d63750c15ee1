using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class BlockRandomizationTests
{
    [Fact]
    public void Of_ThreeTreatments_CountsEveryArrangement()
    {
        var trial = BlockCase.Load("perm_within_blocks_exact");

        var test = BlockRandomization.Of(trial.Y, trial.Block, trial.Treatment, draws: 1, seed: 1);

        Assert.True(test.IsExact);
        Assert.Equal((long)trial.Number("n"), test.Arrangements);
        Assert.Equal((long)trial.Number("count_ge"), test.Hits);
        Close.Relative(trial.Number("p"), test.P, Tolerances.ClosedForm, trial.Name);
    }

    [Fact]
    public void Of_TwoTreatments_IsTheSignFlipTest()
    {
        // Fisher 1935, Darwin's maize in eighths of an inch: 1726 of 32768 sign flips reach the sum (data from memory).
        double[] differences = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];
        var y = differences.SelectMany(d => new[] { d, 0 }).ToArray();
        int[] block = [.. Enumerable.Range(0, 30).Select(i => i / 2)];
        int[] treatment = [.. Enumerable.Range(0, 30).Select(i => i % 2)];

        var test = BlockRandomization.Of(y, block, treatment, draws: 1, seed: 1);

        Assert.Equal(32768, test.Arrangements);
        Assert.Equal(1726, test.Hits);
    }

    [Fact]
    public void Of_MissingCell_CountsAsByHand()
    {
        // Every arrangement analysed on its own.
        double[] y = [8, 2, 9, 10, 6, 12, 7, 5];
        int[] block = [0, 0, 0, 1, 1, 2, 2, 2];
        int[] treatment = [0, 1, 2, 0, 1, 0, 1, 2];
        var observed = BlockAnova.Of(y, block, treatment).Treatments.SumOfSquares;
        int[][] orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];
        var hits = 0;
        foreach (var first in orders)
        {
            foreach (var swap in new[] { 0, 1 })
            {
                foreach (var last in orders)
                {
                    double[] arranged = [y[first[0]], y[first[1]], y[first[2]], y[3 + swap], y[4 - swap], y[5 + last[0]], y[5 + last[1]], y[5 + last[2]]];
                    hits += BlockAnova.Of(arranged, block, treatment).Treatments.SumOfSquares >= observed * (1 - Tolerances.ClosedForm) ? 1 : 0;
                }
            }
        }

        var test = BlockRandomization.Of(y, block, treatment, draws: 1, seed: 1);

        Assert.Equal(72, test.Arrangements);
        Assert.Equal(hits, test.Hits);
    }

    [Fact]
    public void Of_ManyArrangements_DrawsTheSameForTheSameSeed()
    {
        var trial = BlockCase.Load("soybean_seed_rcb");

        var first = BlockRandomization.Of(trial.Y, trial.Block, trial.Treatment, draws: 40_000, seed: 11);
        var again = BlockRandomization.Of(trial.Y, trial.Block, trial.Treatment, draws: 40_000, seed: 11);
        var other = BlockRandomization.Of(trial.Y, trial.Block, trial.Treatment, draws: 40_000, seed: 12);

        Assert.False(first.IsExact);
        Assert.Equal(first, again);
        Assert.NotEqual(first.Hits, other.Hits);

        // 1.0e-3 is the standard error of p near .02 and .04 over 40 000 draws; the F test says .0219.
        Assert.InRange(first.P, 0.005, 0.045);
        Close.Absolute(first.P, other.P, 6e-3, "two seeds, six standard errors of a share near .02");
    }

    [Fact]
    public void Of_NoVariation_ReachesAlways()
    {
        var test = BlockRandomization.Of([5, 5, 5, 5], [0, 0, 1, 1], [0, 1, 0, 1], draws: 1, seed: 1);

        Assert.Equal(1, test.P);
    }

    [Fact]
    public void Of_OneTreatmentOrNoDraws_IsRefused()
    {
        Assert.ThrowsAny<ArgumentException>(() => BlockRandomization.Of([5, 6], [0, 1], [0, 0], draws: 1, seed: 1));
        Assert.ThrowsAny<ArgumentException>(() => BlockRandomization.Of([5, 6], [0, 0], [0, 1], draws: 0, seed: 1));
    }
}
