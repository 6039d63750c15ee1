using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Randomisation test of treatments in blocks: responses rearranged within each block, the treatment sum of squares as statistic.</summary>
/// <param name="Hits">Arrangements whose statistic reaches the observed one, ties included.</param>
/// <param name="Arrangements">All arrangements when exact; arrangements drawn otherwise.</param>
/// <param name="Seed">Seed of the draw; null when exact.</param>
/// <remarks>
/// Fisher 1935, The Design of Experiments, section 21. Within blocks the order of the treatment sum of squares is that
/// of F. A draw gives p = (1 + hits) / (1 + draws) (Phipson and Smyth 2010), so that p is never 0.
/// </remarks>
internal sealed record BlockRandomization(long Hits, long Arrangements, ulong? Seed)
{
    /// <summary>Arrangements walked through one by one at most unless another limit is given; above, they are drawn.</summary>
    public const long LargestWalk = 2_000_000;

    private const int ChunkSize = 8192;

    /// <summary>Whether every arrangement was counted.</summary>
    public bool IsExact => Seed is null;

    /// <summary>Share of arrangements that reach the observed statistic.</summary>
    public double P => IsExact ? (double)Hits / Arrangements : (1.0 + Hits) / (1.0 + Arrangements);

    /// <summary>Tests treatments.</summary>
    /// <param name="responses">One finite value per observation.</param>
    /// <param name="block">Block of each observation.</param>
    /// <param name="treatment">Treatment of each observation; cells may be missing.</param>
    /// <param name="draws">Arrangements drawn when there are too many to walk through, 1 or more.</param>
    /// <param name="seed">Seed of the draw. The result depends on it and on nothing of the machine.</param>
    /// <param name="largestWalk">Arrangements walked through one by one at most.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentException">Data that <see cref="BlockAnova.Of"/> refuses, or fewer than two treatments.</exception>
    public static BlockRandomization Of(
        ReadOnlySpan<double> responses, ReadOnlySpan<int> block, ReadOnlySpan<int> treatment, int draws, ulong seed, long largestWalk = LargestWalk)
    {
        Checks.AtLeast(draws, 1);
        var design = BlockDesign.Of(block, treatment);
        if (design.Treatments < 2)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{design.Treatments} treatment was found; two at least were expected."), nameof(treatment));
        }

        var arranger = new Arranger(design, responses);
        return arranger.Walks <= largestWalk
            ? new BlockRandomization(arranger.Walk() * arranger.Copies, (long)arranger.Walks * arranger.Copies, Seed: null)
            : new BlockRandomization(Draw(arranger, draws, seed), draws, seed);
    }

    private static long Draw(Arranger arranger, int draws, ulong seed)
    {
        // Each chunk has a stream of its own, so that the hits do not depend on how many cores share the chunks.
        var chunks = (draws + ChunkSize - 1) / ChunkSize;
        var master = new RandomStream(seed);
        var seeds = new ulong[chunks];
        for (var c = 0; c < chunks; c++)
        {
            seeds[c] = master.NextBits();
        }

        var hits = 0L;
        Parallel.For(0, chunks, c =>
        {
            var size = Math.Min(ChunkSize, draws - (c * ChunkSize));
            Interlocked.Add(ref hits, arranger.Draw(new RandomStream(seeds[c]), size));
        });
        return hits;
    }
}
