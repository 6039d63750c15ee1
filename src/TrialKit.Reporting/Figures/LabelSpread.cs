namespace TrialKit.Reporting.Figures;

/// <summary>Moves labels apart along one direction, each as little as can be, so that none lies over another.</summary>
internal static class LabelSpread
{
    /// <summary>Places for labels of one height, in the order of the wishes.</summary>
    /// <param name="wishes">Where the middle of each label would be if it were alone.</param>
    /// <param name="distance">The least distance between two middles.</param>
    /// <param name="low">The least a middle may be.</param>
    /// <param name="high">The most a middle may be.</param>
    /// <returns>The middles; where there is not room for all they share the room evenly.</returns>
    public static IReadOnlyList<double> Places(IReadOnlyList<double> wishes, double distance, double low, double high)
    {
        if (wishes.Count == 0)
        {
            return [];
        }

        distance = wishes.Count > 1 ? Math.Min(distance, (high - low) / (wishes.Count - 1)) : distance;
        var order = Enumerable.Range(0, wishes.Count).OrderBy(i => wishes[i]).ThenBy(i => i).ToArray();

        // Least squares with ordered gaps: subtract the gaps, pool what is out of order, put the gaps back.
        var pools = new List<(double Sum, int Count)>();
        for (var rank = 0; rank < order.Length; rank++)
        {
            pools.Add((wishes[order[rank]] - (rank * distance), 1));
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Count > pools[^1].Sum / pools[^1].Count)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }

        var places = new double[wishes.Count];
        var next = 0;
        var reach = high - ((order.Length - 1) * distance);
        foreach (var (sum, count) in pools)
        {
            for (var i = 0; i < count; i++, next++)
            {
                places[order[next]] = Math.Clamp(sum / count, low, reach) + (next * distance);
            }
        }

        return places;
    }
}
