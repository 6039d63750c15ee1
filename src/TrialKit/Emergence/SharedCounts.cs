using System.Collections.Immutable;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Emergence;

/// <summary>Counts of several strips on one footing: of the seeds sown where they are known at all of them, else of the plants that came up.</summary>
internal static class SharedCounts
{
    /// <summary>The counts strip by strip, and whether they are of seeds sown.</summary>
    public static (ImmutableArray<IntervalCounts> Counts, bool Sown) Of(IEnumerable<StripEmergence> strips)
    {
        StripEmergence[] all = [.. strips];
        var sown = all.All(strip => strip.SeedsAreKnown);
        return ([.. all.Select(strip => sown ? strip.Fits[0].Counts : Emerged(strip.Fits[0].Counts))], sown);
    }

    /// <summary>The counts without the seeds that were not up.</summary>
    public static IntervalCounts Emerged(IntervalCounts counts)
    {
        var builder = new IntervalCounts.Builder(counts.Length);
        for (var i = 0; i < counts.Length; i++)
        {
            if (double.IsFinite(counts.Right[i]))
            {
                builder.Add(counts.Left[i], counts.Right[i], counts.Count[i]);
            }
        }

        return builder.Build();
    }
}
