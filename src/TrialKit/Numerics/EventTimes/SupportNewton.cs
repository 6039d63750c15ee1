using System.Runtime.Intrinsics;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Newton steps for masses on a few chosen innermost intervals.</summary>
/// <remarks>
/// The masses maximise sum w log P - N sum p over p of 0 or more without the constraint on their sum, which the maximum meets by itself. Its curvature between j and k is the sum of w / P^2 over the runs that hold both.
/// Wang 2008, Comput. Stat. Data Anal. 52:2388-2402.
/// </remarks>
internal sealed class SupportNewton(int[] first, int[] last, double[] weight, double total)
{
    private readonly List<int> chosen = [];

    /// <summary>Intervals chosen.</summary>
    public int Size => chosen.Count;

    /// <summary>Chooses the intervals with mass, and in each gap between them the one of largest excess, if that is above zero.</summary>
    public void Choose(double[] mass, double[] excess)
    {
        chosen.Clear();
        var candidate = -1;
        for (var j = 0; j <= mass.Length; j++)
        {
            if (j < mass.Length && mass[j] == 0.0)
            {
                candidate = excess[j] > 1e-12 && (candidate < 0 || excess[j] > excess[candidate]) ? j : candidate;
                continue;
            }

            if (candidate >= 0)
            {
                chosen.Add(candidate);
                candidate = -1;
            }

            if (j < mass.Length)
            {
                chosen.Add(j);
            }
        }
    }

    /// <summary>The masses at the top of the quadratic approximation; those it would make negative are dropped.</summary>
    /// <param name="mass">The present masses.</param>
    /// <param name="excess">The excesses at them.</param>
    /// <param name="target">Receives the masses aimed at, zero outside the chosen intervals.</param>
    /// <returns>False if no step of this kind raises the log-likelihood.</returns>
    public bool Target(double[] mass, double[] excess, double[] target)
    {
        var curvature = Curvature(mass);
        var n = chosen.Count;
        var kept = new List<int>(Enumerable.Range(0, n));
        var right = new double[n];
        for (var j = 0; j < n; j++)
        {
            // A p + gradient, so that the solution is the new masses themselves.
            right[j] = total * excess[chosen[j]];
            for (var k = 0; k < n; k++)
            {
                right[j] += curvature[(j * n) + k] * mass[chosen[k]];
            }
        }

        while (kept.Count > 0)
        {
            var solution = Solve(curvature, n, kept, right);
            var dropped = false;
            for (var i = kept.Count - 1; i >= 0; i--)
            {
                if (!(solution[i] > 0.0))
                {
                    kept.RemoveAt(i);
                    dropped = true;
                }
            }

            if (!dropped)
            {
                return Ascends(solution, kept, mass, excess, target);
            }
        }

        return false;
    }

    private bool Ascends(double[] solution, List<int> kept, double[] mass, double[] excess, double[] target)
    {
        Array.Clear(target);
        var ascent = 0.0;
        for (var i = 0; i < kept.Count; i++)
        {
            target[chosen[kept[i]]] = solution[i];
        }

        foreach (var j in chosen)
        {
            ascent += excess[j] * (target[j] - mass[j]);
        }

        return ascent > 0.0;
    }

    // Adds each run's w / P^2 at the corner (first, last) of the chosen intervals it holds, then sums over all runs that hold a pair.
    private double[] Curvature(double[] mass)
    {
        var n = chosen.Count;
        var from = new int[mass.Length + 1];
        var upTo = new double[n + 1];
        var at = 0;
        for (var j = 0; j < mass.Length; j++)
        {
            from[j] = at;
            if (at < n && chosen[at] == j)
            {
                upTo[at + 1] = upTo[at] + mass[j];
                at++;
            }
        }

        from[mass.Length] = at;
        var curvature = new double[n * n];
        for (var i = 0; i < first.Length; i++)
        {
            var (a, b) = (from[first[i]], from[last[i] + 1] - 1);
            var inside = upTo[b + 1] - upTo[a];
            curvature[(a * n) + b] += weight[i] / (inside * inside);
        }

        for (var a = 0; a < n; a++)
        {
            var sum = 0.0;
            for (var b = n - 1; b >= a; b--)
            {
                sum += curvature[(a * n) + b];
                curvature[(a * n) + b] = sum + (a > 0 ? curvature[((a - 1) * n) + b] : 0.0);
            }
        }

        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b < a; b++)
            {
                curvature[(a * n) + b] = curvature[(b * n) + a];
            }
        }

        return curvature;
    }

    // Cholesky on the kept rows; a pivot lost to rounding marks masses that cannot be told apart, and the later of them gets none.
    private static double[] Solve(double[] matrix, int n, List<int> kept, double[] right)
    {
        var m = kept.Count;
        var factor = new double[m * m];
        var solution = new double[m];
        for (var i = 0; i < m; i++)
        {
            var row = factor.AsSpan(i * m, m);
            for (var j = 0; j < i; j++)
            {
                var pivot = factor[(j * m) + j];
                row[j] = pivot == 0.0 ? 0.0 : (matrix[(kept[i] * n) + kept[j]] - Dot(row[..j], factor.AsSpan(j * m, j))) / pivot;
            }

            var diagonal = matrix[(kept[i] * n) + kept[i]];
            var left = diagonal - Dot(row[..i], row[..i]);
            row[i] = left > 1e-13 * diagonal ? Math.Sqrt(left) : 0.0;
            solution[i] = row[i] == 0.0 ? 0.0 : (right[kept[i]] - Dot(row[..i], solution.AsSpan(0, i))) / row[i];
        }

        for (var i = m - 1; i >= 0; i--)
        {
            solution[i] = factor[(i * m) + i] == 0.0 ? 0.0 : solution[i] / factor[(i * m) + i];
            for (var j = 0; j < i; j++)
            {
                solution[j] -= factor[(i * m) + j] * solution[i];
            }
        }

        return solution;
    }

    private static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        // Four lanes whatever the processor, so that the same data give the same bits everywhere.
        var sums = Vector256<double>.Zero;
        var i = 0;
        for (; i <= x.Length - 4; i += 4)
        {
            sums += Vector256.Create(x.Slice(i, 4)) * Vector256.Create(y.Slice(i, 4));
        }

        var sum = Vector256.Sum(sums);
        for (; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }
}
