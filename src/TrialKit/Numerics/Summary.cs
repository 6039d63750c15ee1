namespace TrialKit.Numerics;

/// <summary>
/// Mean, spread and median of a sample. Sums are compensated (Neumaier 1974) and squares are taken of the distances
/// from the mean, so a large common level costs no digits; equal values have a variance of exactly zero.
/// </summary>
internal static class Summary
{
    /// <summary>The sum, with Neumaier's compensation.</summary>
    public static double Sum(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 1);
        return ShiftedSum(values, 0);
    }

    /// <summary>The arithmetic mean of one value or more.</summary>
    public static double Mean(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 1);

        // The second pass removes the rounding of the first: equal values give back exactly that value.
        var first = ShiftedSum(values, 0) / values.Length;
        return first + (ShiftedSum(values, first) / values.Length);
    }

    /// <summary>The sum of squared distances from the mean, one value or more.</summary>
    public static double SumOfSquares(ReadOnlySpan<double> values)
    {
        var mean = Mean(values);
        double squares = 0, lost = 0, drift = 0;
        foreach (var value in values)
        {
            var distance = value - mean;
            drift += distance;
            Add(distance * distance, ref squares, ref lost);
        }

        return Math.Max(0, squares + lost - (drift * drift / values.Length));
    }

    /// <summary>The sample variance, divisor n - 1, of two values or more.</summary>
    public static double Variance(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 2);
        return SumOfSquares(values) / (values.Length - 1);
    }

    /// <summary>The sample standard deviation, divisor n - 1, of two values or more.</summary>
    public static double StandardDeviation(ReadOnlySpan<double> values) => Math.Sqrt(Variance(values));

    /// <summary>Standard deviation over mean, as a fraction; the mean must be above zero.</summary>
    public static double CoefficientOfVariation(ReadOnlySpan<double> values)
    {
        var deviation = StandardDeviation(values);
        var mean = Mean(values);
        Checks.Positive(mean);
        return deviation / mean;
    }

    /// <summary>The median: the middle value, or the mean of the two middle ones.</summary>
    public static double Median(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 1);
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return MedianOfSorted(sorted);
    }

    /// <summary>The median of values already in ascending order.</summary>
    public static double MedianOfSorted(ReadOnlySpan<double> sorted)
    {
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : sorted[middle - 1] + ((sorted[middle] - sorted[middle - 1]) / 2);
    }

    private static double ShiftedSum(ReadOnlySpan<double> values, double shift)
    {
        double sum = 0, lost = 0;
        foreach (var value in values)
        {
            Add(value - shift, ref sum, ref lost);
        }

        return sum + lost;
    }

    private static void Add(double term, ref double sum, ref double lost)
    {
        var next = sum + term;
        lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
        sum = next;
    }
}
