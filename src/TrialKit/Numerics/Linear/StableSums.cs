namespace TrialKit.Numerics.Linear;

/// <summary>Shifted, compensated, two-pass sums: they keep the digits that a plain sum of squares loses.</summary>
internal static class StableSums
{
    // A spread below this many roundings of the largest observation is the rounding of the data themselves.
    private const double RoundingSpread = 16 * MachineEpsilon;

    private const double MachineEpsilon = 2.220446049250313e-16;

    /// <summary>The values less the first one: exact or nearly so when they share leading digits.</summary>
    /// <param name="values">Observations, at least one.</param>
    /// <param name="shift">The value that was taken off.</param>
    /// <returns>One shifted value for each.</returns>
    public static double[] Shifted(ReadOnlySpan<double> values, out double shift)
    {
        shift = values[0];
        var shifted = new double[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            shifted[i] = values[i] - shift;
        }

        return shifted;
    }

    /// <summary>Mean of each level, in two passes: the second adds the mean of what the first left.</summary>
    /// <param name="values">Observations.</param>
    /// <param name="level">Level of each observation, 0..levels-1.</param>
    /// <param name="levels">Number of levels, each with one observation at least.</param>
    /// <returns>One mean per level.</returns>
    public static double[] LevelMeans(ReadOnlySpan<double> values, ReadOnlySpan<int> level, int levels)
    {
        var counts = new int[levels];
        foreach (var g in level)
        {
            counts[g]++;
        }

        var means = new double[levels];
        AddMeans(values, level, counts, means);
        AddMeans(values, level, counts, means);
        return means;
    }

    /// <summary>Mean of all values, in two passes.</summary>
    /// <param name="values">Observations, at least one.</param>
    /// <returns>The mean.</returns>
    public static double Mean(ReadOnlySpan<double> values) => LevelMeans(values, new int[values.Length], 1)[0];

    /// <summary>Sum of squares about zero.</summary>
    /// <param name="values">Deviations.</param>
    /// <returns>Sum of squares.</returns>
    public static double SumOfSquares(ReadOnlySpan<double> values)
    {
        double sum = 0, lost = 0;
        foreach (var value in values)
        {
            Add(value * value, ref sum, ref lost);
        }

        return sum + lost;
    }

    /// <summary>Whether a sum of squares is no more than the rounding of the observations behind it.</summary>
    /// <param name="sumOfSquares">Sum of squared deviations.</param>
    /// <param name="observations">The observations as they came, unshifted.</param>
    /// <returns>True when there is no spread to speak of.</returns>
    public static bool IsRounding(double sumOfSquares, ReadOnlySpan<double> observations)
    {
        var largest = 0.0;
        foreach (var value in observations)
        {
            largest = Math.Max(largest, Math.Abs(value));
        }

        return Math.Sqrt(sumOfSquares / observations.Length) <= RoundingSpread * largest;
    }

    private static void AddMeans(ReadOnlySpan<double> values, ReadOnlySpan<int> level, int[] counts, double[] means)
    {
        var sums = new double[means.Length];
        var lost = new double[means.Length];
        for (var i = 0; i < values.Length; i++)
        {
            Add(values[i] - means[level[i]], ref sums[level[i]], ref lost[level[i]]);
        }

        for (var g = 0; g < means.Length; g++)
        {
            means[g] += (sums[g] + lost[g]) / counts[g];
        }
    }

    // Neumaier 1974: what each addition rounds off is summed apart.
    private static void Add(double term, ref double sum, ref double lost)
    {
        var next = sum + term;
        lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
        sum = next;
    }
}
