using System.Globalization;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Grouped interval-censored times: for each distinct (L, R] how many events are known only to lie in it; R is infinite where nothing happened up to L.</summary>
/// <remarks>Sorted by left end, then right end, so equal data give equal bits whatever the order of entry.</remarks>
internal sealed class IntervalCounts
{
    private readonly double[] left;
    private readonly double[] right;
    private readonly double[] count;
    private readonly double[] logLeft;
    private readonly double[] logRight;
    private readonly double[] logRatio;

    private IntervalCounts(double[] left, double[] right, double[] count)
    {
        this.left = left;
        this.right = right;
        this.count = count;
        logLeft = new double[left.Length];
        logRight = new double[left.Length];
        logRatio = new double[left.Length];
        for (var i = 0; i < left.Length; i++)
        {
            logLeft[i] = Math.Log(left[i]);
            logRight[i] = Math.Log(right[i]);
            logRatio[i] = left[i] == 0.0 || double.IsPositiveInfinity(right[i])
                ? double.PositiveInfinity
                : Logs.OnePlus((right[i] - left[i]) / left[i]);
            Total += count[i];
            if (double.IsPositiveInfinity(right[i]))
            {
                RightCensored += count[i];
                LastVisit = Math.Max(LastVisit, left[i]);
            }
            else
            {
                LastVisit = Math.Max(LastVisit, right[i]);
            }
        }

        Events = Total - RightCensored;
    }

    /// <summary>Left ends, 0 or more.</summary>
    public ReadOnlySpan<double> Left => left;

    /// <summary>Right ends, above the left ends, infinite for right-censored counts.</summary>
    public ReadOnlySpan<double> Right => right;

    /// <summary>Counts, all above zero.</summary>
    public ReadOnlySpan<double> Count => count;

    /// <summary>Natural logs of the left ends, minus infinity at zero.</summary>
    public ReadOnlySpan<double> LogLeft => logLeft;

    /// <summary>Natural logs of the right ends.</summary>
    public ReadOnlySpan<double> LogRight => logRight;

    /// <summary>ln R - ln L without cancellation; infinite if either end is open.</summary>
    public ReadOnlySpan<double> LogRatio => logRatio;

    /// <summary>Distinct intervals.</summary>
    public int Length => left.Length;

    /// <summary>All counts together: the seeds watched.</summary>
    public double Total { get; }

    /// <summary>Counts in intervals that end: the seeds that came up.</summary>
    public double Events { get; }

    /// <summary>Counts not yet up when last looked at.</summary>
    public double RightCensored { get; }

    /// <summary>The latest finite end of any interval.</summary>
    public double LastVisit { get; }

    /// <summary>Groups single intervals; equal ones are merged and zero counts dropped.</summary>
    /// <param name="left">Left ends, finite, 0 or more.</param>
    /// <param name="right">Right ends, above the left ends; infinite for right-censored.</param>
    /// <param name="count">Counts, finite, 0 or more; null counts each interval once.</param>
    /// <exception cref="ArgumentException">Lengths differ, or an end or a count is impossible.</exception>
    public static IntervalCounts FromIntervals(ReadOnlySpan<double> left, ReadOnlySpan<double> right, ReadOnlySpan<double> count)
    {
        if (left.Length != right.Length || (count.Length != left.Length && count.Length != 0))
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {left.Length} left ends, {right.Length} right ends and {count.Length} counts; expected as many of each."), nameof(right));
        }

        var builder = new Builder(left.Length);
        for (var i = 0; i < left.Length; i++)
        {
            builder.Add(left[i], right[i], count.Length == 0 ? 1.0 : count[i]);
        }

        return builder.Build();
    }

    /// <summary>Counts of plants newly up at the visits to one spot; those never seen are censored at the last visit.</summary>
    /// <param name="visits">Times of the visits, above 0 and rising; the first interval begins at 0.</param>
    /// <param name="newlyUp">Newly up at each visit, 0 or more.</param>
    /// <param name="notUp">Seeds not up at the last visit, 0 or more; 0 when the seeds sown are unknown.</param>
    /// <exception cref="ArgumentException">Lengths differ, visits do not rise, or a count is impossible.</exception>
    public static IntervalCounts FromVisits(ReadOnlySpan<double> visits, ReadOnlySpan<double> newlyUp, double notUp)
    {
        if (visits.Length != newlyUp.Length || visits.Length == 0)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {visits.Length} visits and {newlyUp.Length} counts; expected as many of each, at least one."), nameof(newlyUp));
        }

        var builder = new Builder(visits.Length + 1);
        for (var i = 0; i < visits.Length; i++)
        {
            builder.Add(i == 0 ? 0.0 : visits[i - 1], visits[i], newlyUp[i]);
        }

        builder.Add(visits[^1], double.PositiveInfinity, notUp);
        return builder.Build();
    }

    /// <summary>The counts of several groups together.</summary>
    public static IntervalCounts Merge(IEnumerable<IntervalCounts> groups)
    {
        var builder = new Builder(16);
        foreach (var group in groups)
        {
            for (var i = 0; i < group.Length; i++)
            {
                builder.Add(group.left[i], group.right[i], group.count[i]);
            }
        }

        return builder.Build();
    }

    /// <summary>Collects intervals one by one and merges equal ones.</summary>
    internal sealed class Builder(int capacity)
    {
        private readonly List<(double Left, double Right, double Count)> rows = new(capacity);

        /// <summary>Adds a count to the interval (left, right].</summary>
        /// <exception cref="ArgumentOutOfRangeException">An end or the count is impossible.</exception>
        public void Add(double left, double right, double count)
        {
            if (!(left >= 0.0) || double.IsPositiveInfinity(left))
            {
                throw new ArgumentOutOfRangeException(nameof(left), left, "Found a left end that is not a finite time of 0 or later.");
            }

            if (!(right > left))
            {
                throw new ArgumentOutOfRangeException(nameof(right), right, string.Create(CultureInfo.InvariantCulture, $"Found the interval ({left}, {right}]; expected a right end after the left end."));
            }

            if (!(count >= 0.0) || double.IsPositiveInfinity(count))
            {
                throw new ArgumentOutOfRangeException(nameof(count), count, "Found a count that is not a finite number of 0 or more.");
            }

            if (count > 0.0)
            {
                rows.Add((left, right, count));
            }
        }

        /// <summary>The grouped counts.</summary>
        public IntervalCounts Build()
        {
            rows.Sort();
            var distinct = 0;
            var left = new double[rows.Count];
            var right = new double[rows.Count];
            var count = new double[rows.Count];
            foreach (var (l, r, n) in rows)
            {
                if (distinct > 0 && left[distinct - 1] == l && right[distinct - 1] == r)
                {
                    count[distinct - 1] += n;
                    continue;
                }

                left[distinct] = l;
                right[distinct] = r;
                count[distinct++] = n;
            }

            return new IntervalCounts(left[..distinct], right[..distinct], count[..distinct]);
        }
    }
}
