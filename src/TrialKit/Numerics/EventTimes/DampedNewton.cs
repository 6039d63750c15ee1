namespace TrialKit.Numerics.EventTimes;

/// <summary>A function of several variables with gradient and Hessian, to be maximised.</summary>
internal interface ISmoothObjective
{
    /// <summary>Variables.</summary>
    int Dimension { get; }

    /// <summary>Value at a point; fills the gradient and the row-major Hessian.</summary>
    double Evaluate(scoped ReadOnlySpan<double> point, scoped Span<double> gradient, scoped Span<double> hessian);
}

/// <summary>Maximises a smooth function by Newton steps, damped (Levenberg 1944; Marquardt 1963) until the Hessian is negative definite and the value rises.</summary>
internal sealed class DampedNewton
{
    private const int MostIterations = 200;

    // Working scales are logs and logits: a step of two multiplies a parameter by seven.
    private const double LongestStep = 2.0;

    private DampedNewton(int dimension)
    {
        Point = new double[dimension];
        Gradient = new double[dimension];
        Hessian = new double[dimension * dimension];
    }

    /// <summary>The best point.</summary>
    public double[] Point { get; }

    /// <summary>Gradient there, per unit of scale.</summary>
    public double[] Gradient { get; }

    /// <summary>Hessian there, per unit of scale.</summary>
    public double[] Hessian { get; }

    /// <summary>Value there.</summary>
    public double Value { get; private set; }

    /// <summary>Largest absolute element of the gradient, divided by the scale.</summary>
    public double GradientNorm { get; private set; }

    /// <summary>Steps tried.</summary>
    public int Iterations { get; private set; }

    /// <summary>Maximises from a start.</summary>
    /// <param name="objective">The function.</param>
    /// <param name="start">Where to begin; the value there must be finite.</param>
    /// <param name="scale">What the value grows with, such as the number of seeds; damping and stopping are relative to it.</param>
    /// <param name="bound">Largest absolute value of a coordinate; a search that would leave it stops.</param>
    public static DampedNewton Maximise<T>(T objective, ReadOnlySpan<double> start, double scale, double bound)
        where T : ISmoothObjective
    {
        var n = objective.Dimension;
        var best = new DampedNewton(n);
        start.CopyTo(best.Point);
        best.Value = objective.Evaluate(best.Point, best.Gradient, best.Hessian);
        best.GradientNorm = NormOf(best.Gradient, scale);
        Span<double> trial = stackalloc double[n];
        Span<double> step = stackalloc double[n];
        Span<double> gradient = stackalloc double[n];
        Span<double> hessian = stackalloc double[n * n];
        Span<double> factor = stackalloc double[n * n];
        var damping = 0.0;
        while (best.Iterations < MostIterations && best.GradientNorm > 1e-14)
        {
            best.Iterations++;
            if (!SmallSystem.SolvePositive(best.Hessian, -1.0, damping * scale, best.Gradient, factor, step))
            {
                damping = Math.Max(30.0 * damping, 1e-9);
                if (damping > 1e12)
                {
                    break;
                }

                continue;
            }

            var longest = 0.0;
            foreach (var x in step)
            {
                longest = Math.Max(longest, Math.Abs(x));
            }

            var shrink = longest > LongestStep ? LongestStep / longest : 1.0;
            var outside = false;
            for (var i = 0; i < n; i++)
            {
                trial[i] = best.Point[i] + (shrink * step[i]);
                outside |= Math.Abs(trial[i]) > bound;
            }

            if (outside)
            {
                break;
            }

            gradient.Clear();
            hessian.Clear();
            var value = objective.Evaluate(trial, gradient, hessian);
            var norm = NormOf(gradient, scale);
            // Near the top the value no longer tells points apart; there a smaller gradient decides.
            var level = 1e-13 * (Math.Abs(best.Value) + 1.0);
            if (double.IsFinite(norm) && (value > best.Value + level || (value >= best.Value - level && norm < best.GradientNorm)))
            {
                var stalled = norm > 0.5 * best.GradientNorm && norm < 1e-11;
                trial.CopyTo(best.Point);
                gradient.CopyTo(best.Gradient);
                hessian.CopyTo(best.Hessian);
                best.Value = value;
                best.GradientNorm = norm;
                damping = damping < 1e-11 ? 0.0 : 0.03 * damping;
                if (stalled)
                {
                    break;
                }
            }
            else
            {
                if (longest < 1e-13 || damping > 1e12)
                {
                    break;
                }

                damping = Math.Max(30.0 * damping, 1e-9);
            }
        }

        return best;
    }

    private static double NormOf(ReadOnlySpan<double> gradient, double scale)
    {
        var norm = 0.0;
        foreach (var g in gradient)
        {
            norm = double.IsFinite(g) ? Math.Max(norm, Math.Abs(g)) : double.PositiveInfinity;
        }

        return norm / scale;
    }
}
