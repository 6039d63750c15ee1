using System.Collections.Immutable;

namespace TrialKit.Emergence;

/// <summary>Seeds that were not up at the last visit to each spot.</summary>
/// <remarks>
/// Where seeds were counted out they are seeds less plants, and none when plants are more. Where they are expected from the seeding rate they are an
/// average: a spot with more plants than expected is offset by those with fewer, so that the strip's share is not biased upward; together they are
/// never below zero.
/// </remarks>
internal static class SeedsNotUp
{
    /// <summary>The seeds not up, spot by spot; null when the seeds of any spot are unknown.</summary>
    public static double[]? Of(ImmutableArray<WatchedSpot> spots)
    {
        if (spots.Any(spot => spot.Seeds is null))
        {
            return null;
        }

        var missing = spots.Select(spot => Math.Max(0, spot.Seeds!.Value - spot.Final)).ToArray();
        double missed = 0, excess = 0;
        for (var i = 0; i < spots.Length; i++)
        {
            if (!spots[i].SeedsAreKnown)
            {
                missed += missing[i];
                excess += Math.Max(0, spots[i].Final - spots[i].Seeds!.Value);
            }
        }

        var kept = missed > 0 ? Math.Max(0, 1 - (excess / missed)) : 0;
        for (var i = 0; i < spots.Length; i++)
        {
            missing[i] *= spots[i].SeedsAreKnown ? 1 : kept;
        }

        return missing;
    }
}
