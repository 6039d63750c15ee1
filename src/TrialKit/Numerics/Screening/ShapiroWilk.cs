using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Screening;

/// <summary>The Shapiro-Wilk test of normality by Royston's approximation (Royston 1995, Applied Statistics 44:547, AS R94), exact at n = 3.</summary>
internal static class ShapiroWilk
{
    private const int LargestSample = 5000;

    // Polynomials of the algorithm, constant first: the two outermost weights in 1/sqrt(n), and the mean and log standard
    // deviation of the transformed W in n (up to 11) or log n.
    private static readonly double[] OutermostWeight = [0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056];
    private static readonly double[] NextWeight = [0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633];
    private static readonly double[] SmallShift = [-2.273, 0.459];
    private static readonly double[] SmallMean = [0.544, -0.39978, 0.025054, -6.714e-4];
    private static readonly double[] SmallLogDeviation = [1.3822, -0.77857, 0.062767, -0.0020322];
    private static readonly double[] LargeMean = [-1.5861, -0.31082, -0.083751, 0.0038915];
    private static readonly double[] LargeLogDeviation = [-0.4803, -0.082676, 0.0030302];

    /// <summary>The test.</summary>
    /// <param name="values">3 to 5000 values, not all equal.</param>
    public static ShapiroWilkResult Test(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 3);
        if (values.Length > LargestSample)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{values.Length} values were found; {LargestSample} or fewer were expected."), nameof(values));
        }

        var sorted = values.ToArray();
        Array.Sort(sorted);
        if (sorted[^1] - sorted[0] <= Ties.Relative * Math.Max(Math.Abs(sorted[0]), Math.Abs(sorted[^1])))
        {
            throw new ArgumentException(
                FormattableString.Invariant($"All {values.Length} values equal {sorted[0]}; values that vary were expected."), nameof(values));
        }

        var shortfall = Shortfall(sorted, Weights(sorted.Length));
        return new ShapiroWilkResult(1 - shortfall, PValue(shortfall, sorted.Length));
    }

    // Weights of the differences between mirrored order statistics, outermost first.
    private static double[] Weights(int n)
    {
        if (n == 3)
        {
            return [Math.Sqrt(0.5)];
        }

        // Blom's scores of the upper half, outermost first.
        var scores = new double[n / 2];
        var squares = 0.0;
        for (var i = 0; i < scores.Length; i++)
        {
            scores[i] = -Normal.Quantile((i + 1 - 0.375) / (n + 0.25));
            squares += 2 * scores[i] * scores[i];
        }

        var rootInverse = 1 / Math.Sqrt(n);
        var weights = new double[scores.Length];
        weights[0] = Polynomial(OutermostWeight, rootInverse) + (scores[0] / Math.Sqrt(squares));
        var corrected = 1;
        if (n > 5)
        {
            weights[1] = Polynomial(NextWeight, rootInverse) + (scores[1] / Math.Sqrt(squares));
            corrected = 2;
        }

        double scoresLeft = squares, weightsLeft = 1;
        for (var i = 0; i < corrected; i++)
        {
            scoresLeft -= 2 * scores[i] * scores[i];
            weightsLeft -= 2 * weights[i] * weights[i];
        }

        for (var i = corrected; i < scores.Length; i++)
        {
            weights[i] = scores[i] / Math.Sqrt(scoresLeft / weightsLeft);
        }

        return weights;
    }

    // 1 - W as a product, which keeps its digits when W is near one.
    private static double Shortfall(double[] sorted, double[] weights)
    {
        // In units of the range the squares neither overflow nor vanish.
        var range = sorted[^1] - sorted[0];
        double[] scaled = [.. sorted.Select(value => (value - sorted[0]) / range)];
        double slope = 0, weightSquares = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            slope += weights[i] * (scaled[^(i + 1)] - scaled[i]);
            weightSquares += 2 * weights[i] * weights[i];
        }

        var root = Math.Sqrt(weightSquares * Summary.SumOfSquares(scaled));
        return Math.Max(0, (root - slope) * (root + slope) / (root * root));
    }

    private static double PValue(double shortfall, int n)
    {
        if (n == 3)
        {
            return Math.Max(0, 6 / Math.PI * (Math.Asin(Math.Sqrt(1 - shortfall)) - Math.Asin(Math.Sqrt(0.75))));
        }

        if (shortfall == 0)
        {
            return 1;
        }

        var y = Math.Log(shortfall);
        if (n > 11)
        {
            var logN = Math.Log(n);
            return Normal.UpperTail((y - Polynomial(LargeMean, logN)) / Math.Exp(Polynomial(LargeLogDeviation, logN)));
        }

        // A W below the smallest the approximation knows has no chance at all.
        var gap = Polynomial(SmallShift, n) - y;
        return gap <= 0
            ? 0
            : Normal.UpperTail((-Math.Log(gap) - Polynomial(SmallMean, n)) / Math.Exp(Polynomial(SmallLogDeviation, n)));
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        var value = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
        {
            value = (value * x) + coefficients[i];
        }

        return value;
    }
}
