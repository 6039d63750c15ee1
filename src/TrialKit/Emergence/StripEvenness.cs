using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>How evenly the plants of one strip came up, plant by plant.</summary>
/// <param name="Strip">The strip; one that is left out of the analysis is summarised all the same.</param>
/// <param name="Lags">Each plant, spot by spot; one or more.</param>
/// <param name="Findings">What a reader should know of it.</param>
public sealed record StripEvenness(Strip Strip, ImmutableArray<PlantLag> Lags, ImmutableArray<Finding> Findings)
{
    /// <summary>Mean days behind the first plant of the spot.</summary>
    public double MeanLag { get; } = Summary.Mean(Behind(Lags));

    /// <summary>Standard deviation of the days behind the first plant, n - 1; null with one plant.</summary>
    public double? StandardDeviation { get; } = Lags.Length > 1 ? Summary.StandardDeviation(Behind(Lags)) : null;

    /// <summary>Percent of plants within 24 h of the first of their spot.</summary>
    public double PercentWithin24HoursOfFirst => Percent(lag => lag.BehindFirst <= 1 + PlantEvenness.Slack);

    /// <summary>Percent of plants within 48 h of the first of their spot.</summary>
    public double PercentWithin48HoursOfFirst => Percent(lag => lag.BehindFirst <= 2 + PlantEvenness.Slack);

    /// <summary>Percent of plants up to 24 h before or after the median of their spot.</summary>
    public double PercentWithin24HoursOfMedian => Percent(lag => Math.Abs(lag.BehindMedian) <= 1 + PlantEvenness.Slack);

    /// <summary>Percent of plants up to 48 h before or after the median of their spot.</summary>
    public double PercentWithin48HoursOfMedian => Percent(lag => Math.Abs(lag.BehindMedian) <= 2 + PlantEvenness.Slack);

    /// <summary>Percent of plants that are late.</summary>
    public double PercentLate => Percent(lag => lag.IsLate);

    // In order, so that the order of spots leaves the sums as they are.
    private static double[] Behind(ImmutableArray<PlantLag> lags)
    {
        double[] behind = [.. lags.Select(lag => lag.BehindFirst)];
        Array.Sort(behind);
        return behind;
    }

    private double Percent(Func<PlantLag, bool> counted) => 100.0 * Lags.Count(counted) / Lags.Length;
}
