namespace TrialKit.Numerics.Linear;

/// <summary>Rearranges responses within blocks and counts the arrangements whose treatment sum of squares reaches the observed one.</summary>
/// <remarks>
/// With q the treatments' totals of deviations from block means, the adjusted treatment sum of squares is q'Gq, G being
/// the design's generalised inverse: only q changes with the arrangement.
/// </remarks>
internal sealed class Arranger
{
    private readonly BlockDesign _design;
    private readonly double[][] _within;
    private readonly int[][] _treatment;
    private readonly double _reached;

    /// <summary>Prepares responses on a design.</summary>
    /// <param name="design">The design, two treatments at least.</param>
    /// <param name="responses">One finite value per observation.</param>
    public Arranger(BlockDesign design, ReadOnlySpan<double> responses)
    {
        _design = design;
        var deviations = design.Deviations(responses);
        _within = new double[design.Blocks][];
        _treatment = new int[design.Blocks][];
        for (var b = 0; b < design.Blocks; b++)
        {
            var cells = Enumerable.Range(0, deviations.Length).Where(i => design.Block[i] == b).ToArray();
            _within[b] = [.. cells.Select(i => deviations[i])];
            _treatment[b] = [.. cells.Select(i => design.Treatment[i])];
        }

        var totals = new double[design.Treatments];
        for (var b = 0; b < design.Blocks; b++)
        {
            Add(b, _within[b], totals);
        }

        _reached = Statistic(totals) - (Ties.Relative * StableSums.SumOfSquares(deviations));
    }

    /// <summary>Arrangements that <see cref="Walk"/> goes through: in a complete design the first block stays, as relabelling treatments changes nothing.</summary>
    public double Walks => Enumerable.Range(FirstMoving, _design.Blocks - FirstMoving).Aggregate(1.0, (product, b) => product * Factorial(_within[b].Length));

    /// <summary>Arrangements that each one walked through stands for.</summary>
    public long Copies => FirstMoving == 0 ? 1 : (long)Factorial(_design.Treatments);

    private int FirstMoving => _design.IsComplete && _design.Treatments <= 20 ? 1 : 0;

    /// <summary>Counts the hits among all arrangements.</summary>
    /// <returns>Hits, before <see cref="Copies"/>.</returns>
    public long Walk()
    {
        var totals = new double[_design.Treatments];
        for (var b = 0; b < FirstMoving; b++)
        {
            Add(b, _within[b], totals);
        }

        return WalkFrom(FirstMoving, totals);
    }

    /// <summary>Counts the hits among arrangements drawn.</summary>
    /// <param name="stream">Where the draws come from.</param>
    /// <param name="draws">How many.</param>
    /// <returns>Hits.</returns>
    public long Draw(RandomStream stream, int draws)
    {
        var order = _within.Select(block => (double[])block.Clone()).ToArray();
        var totals = new double[_design.Treatments];
        var hits = 0L;
        for (var draw = 0; draw < draws; draw++)
        {
            Array.Clear(totals);
            for (var b = 0; b < order.Length; b++)
            {
                stream.Shuffle<double>(order[b]);
                Add(b, order[b], totals);
            }

            hits += Statistic(totals) >= _reached ? 1 : 0;
        }

        return hits;
    }

    private static double Factorial(int n) => Enumerable.Range(1, n).Aggregate(1.0, (product, k) => product * k);

    private long WalkFrom(int block, double[] totals)
    {
        if (block == _within.Length)
        {
            return Statistic(totals) >= _reached ? 1 : 0;
        }

        var hits = 0L;
        var order = (double[])_within[block].Clone();
        var counters = new int[order.Length];
        hits += Placed(block, order, totals);

        // Heap's algorithm: each step swaps one pair.
        for (var i = 1; i < order.Length;)
        {
            if (counters[i] >= i)
            {
                counters[i] = 0;
                i++;
                continue;
            }

            var other = i % 2 == 0 ? 0 : counters[i];
            (order[i], order[other]) = (order[other], order[i]);
            hits += Placed(block, order, totals);
            counters[i]++;
            i = 1;
        }

        return hits;
    }

    private long Placed(int block, double[] order, double[] totals)
    {
        // A fresh copy per level: adding and taking off again would let rounding grow.
        var next = (double[])totals.Clone();
        Add(block, order, next);
        return WalkFrom(block + 1, next);
    }

    private void Add(int block, double[] order, double[] totals)
    {
        var treatment = _treatment[block];
        for (var i = 0; i < order.Length; i++)
        {
            totals[treatment[i]] += order[i];
        }
    }

    private double Statistic(double[] totals)
    {
        if (_design.IsComplete)
        {
            return StableSums.SumOfSquares(totals) / _design.Blocks;
        }

        var g = _design.UnscaledCovariance;
        var sum = 0.0;
        for (var i = 0; i < totals.Length; i++)
        {
            for (var j = 0; j < totals.Length; j++)
            {
                sum += totals[i] * g[i, j] * totals[j];
            }
        }

        return sum;
    }
}
