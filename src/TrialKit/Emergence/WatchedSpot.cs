using System.Collections.Immutable;
using TrialKit.Numerics.EventTimes;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>A flagged spot in numbers: days after planting, the running maximum of the counts, and the seeds.</summary>
internal sealed class WatchedSpot
{
    // Lengths converted between units leave a rounding error: a row that holds 34 seeds must not hold 33.999999999.
    private const double ConversionError = 1e-6;

    private WatchedSpot(EmergenceSpot spot, UpAtVisits visits, ImmutableArray<int> fell, double? seeds)
    {
        Spot = spot;
        Visits = visits;
        Fell = fell;
        Seeds = seeds;
    }

    /// <summary>The spot as recorded.</summary>
    public EmergenceSpot Spot { get; }

    /// <summary>Strip and spot, for findings.</summary>
    public string Place => $"{Spot.Strip.Name}, spot {Spot.Spot}";

    /// <summary>Its visits, and plants up by each: the highest count so far.</summary>
    public UpAtVisits Visits { get; }

    /// <summary>Visits in days after planting.</summary>
    public double[] Days => Visits.Days;

    /// <summary>Plants up by each visit.</summary>
    public int[] Up => Visits.Up;

    /// <summary>Plants up in the end.</summary>
    public int Final => Visits.Final;

    /// <summary>Indices of visits that counted fewer plants than one before.</summary>
    public ImmutableArray<int> Fell { get; }

    /// <summary>Whether the seeds were counted out, rather than expected from row length and seeding rate.</summary>
    public bool SeedsAreKnown => Spot.Seeds is not null;

    /// <summary>Seeds sown: as known, else the row length times the seeding rate, not rounded; null when neither is recorded.</summary>
    /// <remarks>A rate tells the average number of seeds, so rounding it at each spot would bias the share by up to half a seed a spot.</remarks>
    public double? Seeds { get; }

    /// <summary>A spot in numbers.</summary>
    public static WatchedSpot Of(EmergenceSpot spot, Planting planting)
    {
        var days = new double[spot.Visits.Length];
        var up = new int[spot.Visits.Length];
        var fell = ImmutableArray.CreateBuilder<int>();
        var highest = 0;
        for (var i = 0; i < days.Length; i++)
        {
            days[i] = spot.Strip.DaysAfterPlanting(spot.Visits[i].At);
            if (spot.Visits[i].Plants < highest)
            {
                fell.Add(i);
            }

            highest = Math.Max(highest, spot.Visits[i].Plants);
            up[i] = highest;
        }

        return new(spot, new UpAtVisits(days, up), fell.ToImmutable(), spot.Seeds ?? Expected(spot, planting));
    }

    /// <summary>What was new at each visit of a running total.</summary>
    public static double[] NewlyUp(ReadOnlySpan<double> up)
    {
        var newly = up.ToArray();
        for (var i = newly.Length - 1; i > 0; i--)
        {
            newly[i] -= newly[i - 1];
        }

        return newly;
    }

    /// <summary>The spot's counts as intervals between its visits.</summary>
    /// <param name="notUp">Seeds not up at the last visit; 0 when the seeds are unknown.</param>
    /// <remarks>A visit at the very midnight that begins the planting day opens no interval: what it found falls to the next one.</remarks>
    public IntervalCounts Intervals(double notUp)
    {
        var first = Days[0] > 0 ? 0 : 1;
        return IntervalCounts.FromVisits(Days.AsSpan(first), NewlyUp(Array.ConvertAll(Up[first..], count => (double)count)), notUp);
    }

    private static double? Expected(EmergenceSpot spot, Planting planting)
    {
        if (spot.Row is not { } row || planting.Seeds is not { } rate)
        {
            return null;
        }

        var seeds = rate.SeedsAlong(row, planting.RowSpacing);
        return Math.Abs(seeds - Math.Round(seeds)) < ConversionError ? Math.Round(seeds) : seeds;
    }
}
