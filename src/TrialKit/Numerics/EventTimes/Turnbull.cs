using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Non-parametric maximum-likelihood estimate of a distribution from interval-censored times, with the certificate of its optimality.</summary>
/// <remarks>
/// Turnbull 1976, J. R. Stat. Soc. B 38:290-295; Peto 1973. With N the total weight and P_i the mass inside observation i, the masses maximise sum w_i log P_i;
/// they do so exactly when the excess of every innermost interval j, sum over i containing j of w_i / P_i divided by N, less 1, is at most 0, and is 0 where there is mass.
/// The log-likelihood is then within N times the largest excess of its maximum. F is undefined inside an innermost interval.
/// </remarks>
internal sealed class Turnbull
{
    private readonly double[] left;
    private readonly double[] right;
    private readonly double[] mass;
    private readonly double[] upTo;

    private Turnbull(InnermostIntervals inner, MassSearch search, int[] first, int[] last)
    {
        left = inner.Left;
        right = inner.Right;
        mass = search.Mass;
        FirstInside = first;
        LastInside = last;
        LogLikelihood = search.LogLikelihood;
        LargestExcess = search.LargestExcess;
        LargestImbalance = search.LargestImbalance;
        Iterations = search.Iterations;
        upTo = new double[mass.Length + 1];
        for (var j = 0; j < mass.Length; j++)
        {
            upTo[j + 1] = upTo[j] + mass[j];
        }
    }

    /// <summary>Left ends of the innermost intervals, rising.</summary>
    public ReadOnlySpan<double> Left => left;

    /// <summary>Right ends of the innermost intervals.</summary>
    public ReadOnlySpan<double> Right => right;

    /// <summary>Mass in each innermost interval; many are zero, and they sum to 1.</summary>
    public ReadOnlySpan<double> Mass => mass;

    /// <summary>The first innermost interval inside each observation.</summary>
    public IReadOnlyList<int> FirstInside { get; }

    /// <summary>The last innermost interval inside each observation.</summary>
    public IReadOnlyList<int> LastInside { get; }

    /// <summary>sum w log P at the estimate.</summary>
    public double LogLikelihood { get; }

    /// <summary>Largest excess over all innermost intervals: how far the log-likelihood per unit weight can be below its maximum.</summary>
    public double LargestExcess { get; }

    /// <summary>Largest absolute excess where there is mass, weighted by that mass.</summary>
    public double LargestImbalance { get; }

    /// <summary>Whether both conditions of optimality hold to 1e-8.</summary>
    public bool Converged => LargestExcess <= MassSearch.Tolerance && LargestImbalance <= MassSearch.Tolerance;

    /// <summary>Sweeps and Newton steps made.</summary>
    public int Iterations { get; }

    /// <summary>Estimates the masses.</summary>
    /// <param name="left">Left ends, finite.</param>
    /// <param name="right">Right ends, at or after the left ends (equal: an exact time); infinite for right-censored.</param>
    /// <param name="weight">Weights, finite, above 0; empty weighs each observation 1.</param>
    /// <exception cref="ArgumentException">Lengths differ, or an end or a weight is impossible.</exception>
    public static Turnbull Fit(ReadOnlySpan<double> left, ReadOnlySpan<double> right, ReadOnlySpan<double> weight)
    {
        if (weight.Length != 0 && weight.Length != left.Length)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {weight.Length} weights of {left.Length} observations; expected one each, or none."), nameof(weight));
        }

        foreach (var w in weight)
        {
            if (!(w > 0.0) || double.IsPositiveInfinity(w))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the weight {w}; expected finite weights above 0."), nameof(weight));
            }
        }

        var inner = InnermostIntervals.Of(left, right);
        var search = new MassSearch(ObservedRuns.Group(inner, weight), inner.Left.Length);
        search.Run();
        return new Turnbull(inner, search, inner.First, inner.Last);
    }

    /// <summary>Estimates the masses of grouped counts.</summary>
    public static Turnbull Fit(IntervalCounts counts) => Fit(counts.Left, counts.Right, counts.Count);

    /// <summary>The least and the greatest share by a time that the estimate allows; they differ only inside an innermost interval with mass.</summary>
    public (double Lower, double Upper) CdfAt(double time)
    {
        if (double.IsNaN(time))
        {
            throw new ArgumentOutOfRangeException(nameof(time), time, "Found a time that is not a number.");
        }

        var ended = Array.BinarySearch(right, time);
        ended = ended >= 0 ? ended + 1 : ~ended;
        var begun = ended < left.Length && left[ended] < time ? ended + 1 : ended;
        return (Math.Min(1.0, upTo[ended]), Math.Min(1.0, upTo[begun]));
    }

    /// <summary>The mass in the innermost intervals before a position, 0 to their number.</summary>
    public double MassBefore(int position) => upTo[position];
}
