using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>The spots that emergence visits and stand counts name, by strip.</summary>
internal sealed class SpotIndex
{
    private readonly Dictionary<Strip, HashSet<string>> _spots = new(ReferenceEqualityComparer.Instance);

    private (Strip? Strip, string? Spot) _last;

    private SpotIndex()
    {
    }

    /// <summary>The spots of two tables; null when neither names any.</summary>
    public static SpotIndex? Of(IEnumerable<EmergenceSpot> spots, IEnumerable<StandCount> counts)
    {
        var index = new SpotIndex();
        foreach (var spot in spots)
        {
            index.Add(spot.Strip, spot.Spot);
        }

        foreach (var count in counts)
        {
            if (count.Spot is { } spot)
            {
                index.Add(count.Strip, spot);
            }
        }

        return index._spots.Count == 0 ? null : index;
    }

    /// <summary>Whether a strip has the spot.</summary>
    public bool Contains(Strip strip, string spot)
    {
        // Plants of one spot mostly follow each other.
        if (ReferenceEquals(_last.Strip, strip) && ReferenceEquals(_last.Spot, spot))
        {
            return true;
        }

        if (!_spots.TryGetValue(strip, out var spots) || !spots.Contains(spot))
        {
            return false;
        }

        _last = (strip, spot);
        return true;
    }

    private void Add(Strip strip, string spot)
    {
        if (!_spots.TryGetValue(strip, out var spots))
        {
            spots = new HashSet<string>(Identifier.Comparer);
            _spots.Add(strip, spots);
        }

        spots.Add(spot);
    }
}
