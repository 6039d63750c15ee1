using System.Collections.Immutable;
using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>One-way analysis of variance: groups without blocks, any number of observations in each.</summary>
/// <param name="Groups">Between groups.</param>
/// <param name="Error">Within groups.</param>
/// <param name="TotalSumOfSquares">About the grand mean.</param>
/// <param name="GrandMean">Mean of all observations.</param>
/// <param name="Means">Mean of each group.</param>
/// <param name="Counts">Observations in each group.</param>
/// <param name="Residuals">Observed less group mean.</param>
internal sealed record OneWayAnova(
    VarianceLine Groups,
    VarianceLine Error,
    double TotalSumOfSquares,
    double GrandMean,
    ImmutableArray<double> Means,
    ImmutableArray<int> Counts,
    ImmutableArray<double> Residuals)
{
    /// <summary>Analyses responses.</summary>
    /// <param name="responses">One finite value per observation.</param>
    /// <param name="group">Group of each observation, 0..g-1 without gaps.</param>
    /// <returns>The analysis. F is null where <see cref="VarianceLine.Status"/> says why.</returns>
    /// <exception cref="ArgumentException">No observation, lengths differ, a level is missing or a value is not finite.</exception>
    public static OneWayAnova Of(ReadOnlySpan<double> responses, ReadOnlySpan<int> group)
    {
        Checks.Sample(responses, 1);
        var groups = LevelChecks.Count(group, responses.Length, nameof(group));
        var shifted = StableSums.Shifted(responses, out var shift);
        var grand = StableSums.Mean(shifted);
        var means = StableSums.LevelMeans(shifted, group, groups);
        var counts = new int[groups];
        var residuals = new double[shifted.Length];
        for (var i = 0; i < shifted.Length; i++)
        {
            counts[group[i]]++;
            residuals[i] = shifted[i] - means[group[i]];
        }

        var between = 0.0;
        for (var g = 0; g < groups; g++)
        {
            between += counts[g] * (means[g] - grand) * (means[g] - grand);
        }

        var within = StableSums.SumOfSquares(residuals);
        var degrees = responses.Length - groups;
        var lines = VarianceLine.Table(
            [(VarianceSource.Treatments, between, groups - 1)],
            within,
            degrees,
            VarianceLine.Denominator(between + within, within, degrees, responses));
        return new OneWayAnova(
            lines[0], lines[1], between + within, shift + grand, [.. means.Select(mean => shift + mean)], [.. counts], [.. residuals]);
    }

    /// <summary>Standard error of the difference of two group means.</summary>
    /// <param name="first">Index of a group.</param>
    /// <param name="second">Index of another.</param>
    /// <returns>The standard error; null without error degrees of freedom.</returns>
    /// <exception cref="ArgumentException">The two are the same group.</exception>
    public double? DifferenceStandardError(int first, int second) =>
        first == second
            ? throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Group {first} was set against itself; two groups were expected."), nameof(second))
            : Error.MeanSquare is { } mse ? Math.Sqrt(mse * ((1.0 / Counts[first]) + (1.0 / Counts[second]))) : null;
}
