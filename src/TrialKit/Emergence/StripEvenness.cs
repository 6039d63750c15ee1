using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>How evenly the plants of one strip came up, plant by plant.</summary>
/// <remarks>Figures of lag are there only where the visits tell them: a visit a day, from before the first plant of every spot until nine tenths of the trial's plants are up.</remarks>
public sealed record StripEvenness
{
    // Two visits hold all plants of a strip that came up within two days: its mean and SD would be those of the visits.
    private const int LeastVisits = 3;

    /// <summary>Sums a strip up.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="lags">Each plant, spot by spot; one or more.</param>
    /// <param name="spots">The visits to each spot and the plants up by then.</param>
    /// <param name="visitsTellLags">Whether they tell lags.</param>
    /// <param name="visitsTellSpread">Whether they tell how lags vary, where they tell lags.</param>
    /// <param name="findings">What a reader should know of it.</param>
    internal StripEvenness(Strip strip, ImmutableArray<PlantLag> lags, IReadOnlyCollection<UpAtVisits> spots, bool visitsTellLags, bool visitsTellSpread, ImmutableArray<Finding> findings)
    {
        (Strip, Lags, VisitsTellLags, Findings) = (strip, lags, visitsTellLags, findings);
        PercentWithin24HoursOfFirst = EarlyShare.Percent(spots, 1);
        PercentWithin48HoursOfFirst = EarlyShare.Percent(spots, 2);
        if (!VisitsTellLags)
        {
            return;
        }

        PercentWithin24HoursOfMedian = Percent(lag => Math.Abs(lag.BehindMedian) <= 1 + PlantEvenness.Slack);
        PercentWithin48HoursOfMedian = Percent(lag => Math.Abs(lag.BehindMedian) <= 2 + PlantEvenness.Slack);
        PercentLate = Percent(lag => lag.IsLate);
        if (spots.Max(spot => spot.Rises) >= LeastVisits)
        {
            double[] behind = [.. lags.Select(lag => lag.BehindFirst).Order()];
            MeanLag = Summary.Mean(behind);
            StandardDeviation = visitsTellSpread ? Summary.StandardDeviation(behind) : null;
        }
    }

    /// <summary>The strip; one that is left out of the analysis is summarised all the same.</summary>
    public Strip Strip { get; }

    /// <summary>Each plant, spot by spot; one or more.</summary>
    public ImmutableArray<PlantLag> Lags { get; }

    /// <summary>Whether the first plant of every spot, and nine tenths of all plants of the trial, are known to have come up within a day before they were found; else lags are known only to within the gap between visits, and no figure of them is given.</summary>
    public bool VisitsTellLags { get; }

    /// <summary>Mean days behind the first plant of the spot; null where the visits do not tell it, and where plants came up in fewer than three of them.</summary>
    public double? MeanLag { get; }

    /// <summary>Standard deviation of the days behind the first plant, n - 1; null where there is no mean, and where more than one plant in fifty of the trial came up between visits more than a day apart.</summary>
    public double? StandardDeviation { get; }

    /// <summary>Percent of plants within 24 h of the first of their spot; null where the visits do not tell it.</summary>
    public double? PercentWithin24HoursOfFirst { get; }

    /// <summary>Percent of plants within 48 h of the first of their spot; null where the visits do not tell it.</summary>
    public double? PercentWithin48HoursOfFirst { get; }

    /// <summary>Percent of plants up to 24 h before or after the median of their spot; null where the visits do not tell it.</summary>
    public double? PercentWithin24HoursOfMedian { get; }

    /// <summary>Percent of plants up to 48 h before or after the median of their spot; null where the visits do not tell it.</summary>
    public double? PercentWithin48HoursOfMedian { get; }

    /// <summary>Percent of plants that are late; null where the visits do not tell it.</summary>
    public double? PercentLate { get; }

    /// <summary>What a reader should know of it.</summary>
    public ImmutableArray<Finding> Findings { get; }

    private double Percent(Func<PlantLag, bool> counted) => 100.0 * Lags.Count(counted) / Lags.Length;
}
