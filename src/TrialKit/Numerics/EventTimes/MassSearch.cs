using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Maximises sum w_i log(mass inside run i) over masses that sum to 1.</summary>
/// <remarks>
/// First sweeps that alternate the iterative convex minorant step (Groeneboom; Jongbloed 1998, J. Comput. Graph. Stat. 7:310-321) with one of expectation-maximisation (Wellner and Zhan 1997, J. Am. Stat. Assoc. 92:945-959), O(n) each;
/// then Newton steps on the masses above zero, to which the innermost intervals of largest excess between them are added (Wang 2008, Comput. Stat. Data Anal. 52:2388-2402). Every step raises the log-likelihood.
/// </remarks>
internal sealed class MassSearch
{
    /// <summary>How far from zero the conditions of optimality may be.</summary>
    public const double Tolerance = 1e-8;

    // The search aims below the tolerance it is judged by.
    private const double Aim = 1e-10;

    // Rounding of a log-likelihood ratio, per unit of weight.
    private const double Rounding = 1e-14;
    private const int SweepsAtFirst = 40;
    private const int MostNewtonSteps = 300;
    private const int LargestNewton = 1500;

    private readonly int[] first;
    private readonly int[] last;
    private readonly double[] weight;
    private readonly double total;
    private readonly double[] upTo;
    private readonly double[] excess;
    private readonly double[] trial;
    private readonly double[] curvature;
    private readonly double[] slope;
    private readonly double[] change;

    /// <summary>Prepares a search.</summary>
    public MassSearch(ObservedRuns runs, int intervals)
    {
        (first, last, weight, total) = (runs.First, runs.Last, runs.Weight, runs.Total);
        Mass = new double[intervals];
        upTo = new double[intervals + 1];
        excess = new double[intervals];
        trial = new double[intervals];
        curvature = new double[intervals + 1];
        slope = new double[intervals + 1];
        change = new double[first.Length];
    }

    /// <summary>The masses.</summary>
    public double[] Mass { get; }

    /// <summary>The log-likelihood of the masses.</summary>
    public double LogLikelihood { get; private set; }

    /// <summary>Largest excess over all innermost intervals.</summary>
    public double LargestExcess { get; private set; }

    /// <summary>Largest mass times absolute excess.</summary>
    public double LargestImbalance { get; private set; }

    /// <summary>Sweeps and Newton steps made.</summary>
    public int Iterations { get; private set; }

    /// <summary>Searches until the conditions of optimality hold.</summary>
    public void Run()
    {
        Array.Fill(Mass, 1.0 / Mass.Length);
        for (var i = 0; i < SweepsAtFirst && !Measure(); i++)
        {
            Sweep();
        }

        var newton = new SupportNewton(first, last, weight, total);
        for (var i = 0; i < MostNewtonSteps && !Measure(); i++)
        {
            Iterations++;
            newton.Choose(Mass, excess);
            if (newton.Size > LargestNewton || !newton.Target(Mass, excess, trial) || !MoveTowards(trial, Rounding * total))
            {
                Sweep();
            }
        }

        LogLikelihood = LogLikelihoodAtMasses();
    }

    // One convex-minorant step and one of expectation-maximisation.
    private void Sweep()
    {
        Iterations++;
        MinorantTarget();
        MoveTowards(trial, 0.0);
        Measure();
        for (var j = 0; j < Mass.Length; j++)
        {
            trial[j] = Mass[j] * (1.0 + excess[j]);
        }

        MoveTowards(trial, 0.0);
    }

    // Fills the excess of every innermost interval at the present masses; true if none matters.
    private bool Measure()
    {
        Cumulate(Mass);
        Array.Clear(slope);
        for (var i = 0; i < first.Length; i++)
        {
            var pull = weight[i] / (upTo[last[i] + 1] - upTo[first[i]]);
            slope[first[i]] += pull;
            slope[last[i] + 1] -= pull;
        }

        var pulls = 0.0;
        (LargestExcess, LargestImbalance) = (double.NegativeInfinity, 0.0);
        for (var j = 0; j < Mass.Length; j++)
        {
            pulls += slope[j];
            excess[j] = (pulls / total) - 1.0;
            LargestExcess = Math.Max(LargestExcess, excess[j]);
            LargestImbalance = Math.Max(LargestImbalance, Mass[j] * Math.Abs(excess[j]));
        }

        return LargestExcess <= Aim && LargestImbalance <= Aim;
    }

    // Weighted isotonic regression of F + gradient / curvature, whose differences are the masses aimed at.
    private void MinorantTarget()
    {
        Cumulate(Mass);
        Array.Clear(slope);
        Array.Clear(curvature);
        for (var i = 0; i < first.Length; i++)
        {
            var inside = upTo[last[i] + 1] - upTo[first[i]];
            var pull = weight[i] / inside;
            slope[last[i] + 1] += pull;
            slope[first[i]] -= pull;
            curvature[last[i] + 1] += pull / inside;
            curvature[first[i]] += pull / inside;
        }

        // F is free at the right ends of all innermost intervals but the last, where it is 1.
        var free = Mass.Length - 1;
        var (level, size, until) = (new double[free], new double[free], new int[free]);
        var blocks = 0;
        for (var j = 0; j < free; j++)
        {
            level[blocks] = upTo[j + 1] + (slope[j + 1] / curvature[j + 1]);
            size[blocks] = curvature[j + 1];
            until[blocks++] = j;
            while (blocks > 1 && level[blocks - 2] >= level[blocks - 1])
            {
                var both = size[blocks - 2] + size[blocks - 1];
                level[blocks - 2] = ((level[blocks - 2] * size[blocks - 2]) + (level[blocks - 1] * size[blocks - 1])) / both;
                size[blocks - 2] = both;
                until[blocks - 2] = until[blocks - 1];
                blocks--;
            }
        }

        Array.Clear(trial);
        var (before, at) = (0.0, 0);
        for (var b = 0; b < blocks; b++)
        {
            var f = Math.Clamp(level[b], 0.0, 1.0);
            trial[at] = f - before;
            (before, at) = (f, until[b] + 1);
        }

        trial[at] += 1.0 - before;
    }

    // Moves towards a target as far as the log-likelihood rises; false if it does not. A target that promises less than the
    // slack is too near the top for the rise to be told from rounding, and need only not fall by more.
    private bool MoveTowards(double[] target, double slack)
    {
        var sum = 0.0;
        var promise = 0.0;
        for (var j = 0; j < target.Length; j++)
        {
            sum += target[j];
        }

        // The rise is summed from each run's own relative change: the difference of two log-likelihoods would drown it near the top.
        Cumulate(Mass);
        var moved = 0.0;
        for (var j = 0; j < target.Length; j++)
        {
            target[j] /= sum;
            moved += target[j] - Mass[j];
            slope[j + 1] = moved;
            promise += total * excess[j] * (target[j] - Mass[j]);
        }

        slope[0] = 0.0;
        for (var i = 0; i < first.Length; i++)
        {
            change[i] = (slope[last[i] + 1] - slope[first[i]]) / (upTo[last[i] + 1] - upTo[first[i]]);
        }

        var least = promise < slack ? -slack : 0.0;
        for (var step = 1.0; step > 1e-6; step *= 0.5)
        {
            if (Rise(step) > least)
            {
                for (var j = 0; j < target.Length; j++)
                {
                    Mass[j] = step == 1.0 ? target[j] : Mass[j] + (step * (target[j] - Mass[j]));
                }

                return true;
            }
        }

        return false;
    }

    private double Rise(double step)
    {
        var rise = 0.0;
        for (var i = 0; i < first.Length; i++)
        {
            // At the maximum P_i is at least w_i / N, so a step that all but empties a run goes too far.
            var x = step * change[i];
            if (x < -0.5 && !((1.0 + x) * (upTo[last[i] + 1] - upTo[first[i]]) > 1e-3 * weight[i] / total))
            {
                return double.NegativeInfinity;
            }

            rise += weight[i] * Logs.OnePlus(x);
        }

        return rise;
    }

    private double LogLikelihoodAtMasses()
    {
        Cumulate(Mass);
        var sum = 0.0;
        for (var i = 0; i < first.Length; i++)
        {
            sum += weight[i] * Math.Log(upTo[last[i] + 1] - upTo[first[i]]);
        }

        return sum;
    }

    private void Cumulate(double[] masses)
    {
        var sum = 0.0;
        for (var j = 0; j < masses.Length; j++)
        {
            sum += masses[j];
            upTo[j + 1] = sum;
        }
    }
}
