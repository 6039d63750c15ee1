namespace TrialKit.Emergence;

/// <summary>Visits to a spot and the plants that were up by each: what they tell of how far plants lag behind each other.</summary>
/// <param name="Days">The visits, in days after planting, rising; one or more.</param>
/// <param name="Up">Plants up by each, never falling.</param>
internal sealed record UpAtVisits(double[] Days, int[] Up)
{
    /// <summary>The most days between visits that still tell lags of days: one, and a quarter for a visit made later in the day.</summary>
    public const double Daily = 1.25;

    /// <summary>Plants up in the end.</summary>
    public int Final => Up[^1];

    /// <summary>Whether plants were up at the first visit already, so that nothing tells when the first came.</summary>
    public bool BeganLate => Up[0] > 0;

    /// <summary>The visit that found the first plant; -1 when nothing came up.</summary>
    public int First => Array.FindIndex(Up, up => up > 0);

    /// <summary>Whether the first plant is known to have come up within a day before it was found.</summary>
    public bool TellsFirst => First > 0 && Days[First] - Days[First - 1] <= Daily;

    /// <summary>The widest gap between visits in which a plant came up, in days; 0 when all were up at the first visit.</summary>
    public double WidestRise
    {
        get
        {
            var widest = 0.0;
            for (var i = 1; i < Up.Length; i++)
            {
                widest = Up[i] > Up[i - 1] ? Math.Max(widest, Days[i] - Days[i - 1]) : widest;
            }

            return widest;
        }
    }

    /// <summary>Visits that found a plant more than the one before.</summary>
    public int Rises => Up.Where((up, i) => up > (i == 0 ? 0 : Up[i - 1])).Count();

    /// <summary>Plants that came up in a gap of more than a day between visits.</summary>
    public int FoundLong => Enumerable.Range(1, Up.Length - 1).Where(i => Days[i] - Days[i - 1] > Daily).Sum(i => Up[i] - Up[i - 1]);

    /// <summary>Of single dated plants: each is up at the first visit on or after the day it was found, so that a date without its time does not narrow the gap between visits.</summary>
    /// <param name="visits">Days of visits; one or more.</param>
    /// <param name="found">The day each plant was found; one or more. Those after the last visit are visits of their own.</param>
    public static UpAtVisits Of(IReadOnlyCollection<double> visits, IReadOnlyCollection<double> found)
    {
        var last = visits.Max();
        double[] days = [.. visits.Concat(found.Where(day => day > last)).Distinct().Order()];
        return new(days, Array.ConvertAll(days, day => found.Count(each => each <= day)));
    }
}
