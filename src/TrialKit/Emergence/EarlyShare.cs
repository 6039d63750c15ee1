namespace TrialKit.Emergence;

/// <summary>The share of the plants up in the end that were up within some days of the first one seen at their spot.</summary>
/// <remarks>
/// Nothing is interpolated: the count is one made within 3 h of the moment, or one that stood unchanged from the visit before it to the visit after it.
/// The first plant seen counts from the visit that found it, which must have followed another by a day: else nothing tells when it came. Spots are pooled; one spot whose visits do not tell it leaves the strip without the figure, because the spots left would be another sample.
/// </remarks>
internal static class EarlyShare
{
    private const double Within = 3.0 / 24;

    // Moments are ticks turned into days; the limit itself counts as within.
    private const double Rounding = 1e-9;

    /// <summary>Percent up; null where the visits do not tell it or nothing came up.</summary>
    /// <param name="spots">The spots of a strip.</param>
    /// <param name="days">Days after the first plant seen, above 0.</param>
    public static double? Percent(IEnumerable<UpAtVisits> spots, double days)
    {
        int early = 0, all = 0;
        foreach (var spot in spots.Where(spot => spot.Final > 0))
        {
            if (!spot.TellsFirst || At(spot, spot.Days[spot.First] + days) is not { } up)
            {
                return null;
            }

            early += up;
            all += spot.Final;
        }

        return all > 0 ? 100.0 * early / all : null;
    }

    private static int? At(UpAtVisits spot, double moment)
    {
        var next = Array.FindIndex(spot.Days, day => day >= moment);
        var last = next < 0 ? spot.Days.Length - 1 : next - 1;
        var toNext = next < 0 ? double.PositiveInfinity : spot.Days[next] - moment;
        var toLast = last < 0 ? double.PositiveInfinity : moment - spot.Days[last];
        if (Math.Min(toNext, toLast) <= Within + Rounding)
        {
            return spot.Up[toNext <= toLast ? next : last];
        }

        return next > 0 && spot.Up[next] == spot.Up[last] ? spot.Up[last] : null;
    }
}
