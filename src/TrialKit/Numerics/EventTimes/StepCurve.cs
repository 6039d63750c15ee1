namespace TrialKit.Numerics.EventTimes;

/// <summary>The share up at common visit dates: cumulative counts over seeds, which is the non-parametric maximum-likelihood estimate there.</summary>
/// <remarks>Between visits the curve is not known; draw a band. Standard error sqrt(F (1 - F) / n), that of seeds independent of each other.</remarks>
internal sealed class StepCurve
{
    private readonly double[] times;
    private readonly double[] up;
    private readonly double[] share;
    private readonly double[] standardError;
    private readonly int[] fell;

    private StepCurve(double[] times, double[] up, int[] fell, double? sown)
    {
        this.times = times;
        this.up = up;
        this.fell = fell;
        Sown = sown;
        Base = Math.Max(sown ?? 0.0, up[^1]);
        share = new double[up.Length];
        standardError = new double[up.Length];
        for (var i = 0; i < up.Length && Base > 0.0; i++)
        {
            share[i] = up[i] / Base;
            standardError[i] = Math.Sqrt(share[i] * (1.0 - share[i]) / Base);
        }
    }

    /// <summary>Times of the visits.</summary>
    public ReadOnlySpan<double> Times => times;

    /// <summary>Cumulative counts, as the running maximum.</summary>
    public ReadOnlySpan<double> Up => up;

    /// <summary>Share up at each visit; 0 throughout when nothing was sown or seen.</summary>
    public ReadOnlySpan<double> Share => share;

    /// <summary>Standard error of each share.</summary>
    public ReadOnlySpan<double> StandardError => standardError;

    /// <summary>Positions of the visits whose cumulative count is below an earlier one: plants died or were missed.</summary>
    public ReadOnlySpan<int> Fell => fell;

    /// <summary>Seeds sown, null when unknown.</summary>
    public double? Sown { get; }

    /// <summary>What the shares are of: the seeds sown, or the plants up when those are more or the seeds unknown.</summary>
    public double Base { get; }

    /// <summary>Whether more plants came up than seeds are said to have been sown.</summary>
    public bool MoreUpThanSown => up[^1] > Sown;

    /// <summary>The curve of cumulative counts.</summary>
    /// <param name="times">Times of the visits, 0 or later, rising.</param>
    /// <param name="cumulative">Plants up at each visit, 0 or more; a fall is replaced by the running maximum and reported.</param>
    /// <param name="sown">Seeds sown, above 0; null when unknown, and the shares are of the plants up.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a time or a count is impossible.</exception>
    public static StepCurve FromCumulative(ReadOnlySpan<double> times, ReadOnlySpan<double> cumulative, double? sown)
    {
        VisitTimes.Check(times, cumulative);
        VisitTimes.CheckSown(sown);
        var highest = new double[cumulative.Length];
        var lower = new List<int>();
        var most = 0.0;
        for (var i = 0; i < highest.Length; i++)
        {
            if (cumulative[i] < most)
            {
                lower.Add(i);
            }

            most = Math.Max(most, cumulative[i]);
            highest[i] = most;
        }

        return new StepCurve(times.ToArray(), highest, [.. lower], sown);
    }

    /// <summary>Time at which a share of the base is up, by linear interpolation between visits.</summary>
    /// <param name="p">Share, in (0, 1].</param>
    public TimeToCount TimeToShare(double p)
    {
        if (!(p is > 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "Found a share outside (0, 1].");
        }

        return Base == 0.0 ? new TimeToCount(null, CountReached.Never) : Interpolation.TimeToCount(times, up, p * Base);
    }
}
