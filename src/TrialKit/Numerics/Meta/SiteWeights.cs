namespace TrialKit.Numerics.Meta;

/// <summary>Sums of a meta-analysis at a given variance between sites, and the estimates of that variance.</summary>
internal sealed class SiteWeights
{
    // A step this small beside tau2 plus the sites' own variances changes nothing that could be reported.
    private const double Settled = 1e-14;

    private readonly double[] _estimates;
    private readonly double[] _variances;

    /// <summary>Takes estimates and their variances.</summary>
    /// <param name="estimates">Effect at each site.</param>
    /// <param name="variances">Variance of each.</param>
    public SiteWeights(double[] estimates, double[] variances) => (_estimates, _variances) = (estimates, variances);

    private int Degrees => _estimates.Length - 1;

    /// <summary>Weighted sums.</summary>
    /// <param name="between">Variance between sites, 0 or more.</param>
    /// <returns>The sums.</returns>
    public WeightedSums At(double between)
    {
        var weights = Array.ConvertAll(_variances, v => 1 / (v + between));
        var sum = weights.Sum();
        var mean = weights.Zip(_estimates, (w, y) => w * y).Sum() / sum;
        double squares = 0, q = 0, weighted = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            var (w, deviation) = (weights[i], _estimates[i] - mean);
            squares += w * w;
            q += w * deviation * deviation;
            weighted += w * w * deviation * deviation;
        }

        return new WeightedSums(sum, squares, mean, q, weighted);
    }

    /// <summary>Estimates the variance between sites.</summary>
    /// <param name="method">By which method.</param>
    /// <returns>0 or more.</returns>
    public double BetweenVariance(Heterogeneity method) => method switch
    {
        Heterogeneity.Common => 0,
        Heterogeneity.DerSimonianLaird => ByMoments(),
        Heterogeneity.PauleMandel => Root(between => At(between).Q - Degrees, 0, Largest()),
        Heterogeneity.Reml => ByLikelihood(),
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "An unknown method was found; one of the enumeration was expected."),
    };

    private double ByMoments()
    {
        var sums = At(0);
        return Math.Max(0, (sums.Q - Degrees) / (sums.Sum - (sums.SumOfSquares / sums.Sum)));
    }

    private double ByLikelihood()
    {
        // The restricted likelihood may have a maximum at 0 and another above, so every fall of its slope through 0 is looked at.
        const int Steps = 64;
        var largest = Largest();
        var (best, bestLoss) = (0.0, Loss(0));
        var lower = 0.0;
        for (var step = Steps; step >= 0; step--)
        {
            var upper = largest * Math.Pow(2, -step);
            if (Slope(lower) > 0 && Slope(upper) <= 0)
            {
                var root = Root(Slope, lower, upper);
                if (Loss(root) < bestLoss)
                {
                    (best, bestLoss) = (root, Loss(root));
                }
            }

            lower = upper;
        }

        return best;
    }

    // Twice the derivative of the restricted log likelihood by tau2: y'PPy - tr P.
    private double Slope(double between)
    {
        var sums = At(between);
        return sums.WeightedQ - (sums.Sum - (sums.SumOfSquares / sums.Sum));
    }

    // -2 restricted log likelihood less a constant.
    private double Loss(double between)
    {
        var sums = At(between);
        return sums.Q + Math.Log(sums.Sum) + _variances.Sum(v => Math.Log(v + between));
    }

    // Beyond the whole spread of the estimates neither Q nor the slope can reach its target.
    private double Largest()
    {
        var spread = _estimates.Max() - _estimates.Min();
        return (4 * spread * spread * _estimates.Length) + _variances.Max();
    }

    // Root of a function that falls from lower to upper; lower when it is not above 0 there.
    private static double Root(Func<double, double> falling, double lower, double upper)
    {
        if (falling(lower) <= 0)
        {
            return lower;
        }

        while (upper - lower > Settled * (1 + upper))
        {
            var middle = lower + ((upper - lower) / 2);
            if (falling(middle) > 0)
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }

        return lower + ((upper - lower) / 2);
    }
}
