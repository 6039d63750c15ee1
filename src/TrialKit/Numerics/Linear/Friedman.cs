namespace TrialKit.Numerics.Linear;

/// <summary>Friedman's rank test of treatments in complete blocks, corrected for ties.</summary>
/// <param name="ChiSquare">The statistic; null when every block holds equal values only.</param>
/// <param name="DegreesOfFreedom">Treatments less one.</param>
/// <param name="RankSums">Sum of within-block midranks of each treatment.</param>
/// <remarks>Friedman 1937, JASA 32:675; ties as in Conover 1999, section 5.8.</remarks>
internal sealed record Friedman(double? ChiSquare, int DegreesOfFreedom, double[] RankSums)
{
    /// <summary>Chance of so large a statistic by its chi-square limit; null where the statistic is, or with one treatment.</summary>
    public double? P => ChiSquare is { } x && DegreesOfFreedom > 0 ? Distributions.ChiSquare.UpperTail(x, DegreesOfFreedom) : null;

    /// <summary>Tests treatments.</summary>
    /// <param name="responses">One finite value per observation.</param>
    /// <param name="block">Block of each observation.</param>
    /// <param name="treatment">Treatment of each observation.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentException">A cell is missing or a treatment stands twice in a block.</exception>
    public static Friedman Of(ReadOnlySpan<double> responses, ReadOnlySpan<int> block, ReadOnlySpan<int> treatment)
    {
        var design = BlockDesign.Of(block, treatment);
        if (!design.IsComplete || responses.Length != design.Observations)
        {
            throw new ArgumentException(
                $"{responses.Length} responses of {design.Observations} observations fill {design.Blocks} blocks by {design.Treatments} treatments; one in each cell was expected.",
                nameof(block));
        }

        Checks.Sample(responses, 1);
        var middle = (design.Treatments + 1) / 2.0;
        var sums = new double[design.Treatments];
        var spread = 0.0;
        for (var i = 0; i < responses.Length; i++)
        {
            // Midrank: values below, and half of the ties with itself among them.
            var rank = 0.5;
            for (var other = 0; other < responses.Length; other++)
            {
                if (block[other] == block[i])
                {
                    rank += responses[other] < responses[i] ? 1 : responses[other] == responses[i] ? 0.5 : 0;
                }
            }

            sums[treatment[i]] += rank;
            spread += (rank - middle) * (rank - middle);
        }

        var between = 0.0;
        foreach (var sum in sums)
        {
            between += (sum - (design.Blocks * middle)) * (sum - (design.Blocks * middle));
        }

        double? statistic = spread > 0 ? (design.Treatments - 1) * between / spread : null;
        return new Friedman(statistic, design.Treatments - 1, sums);
    }
}
