using TrialKit.Numerics.Linear;

namespace TrialKit.Numerics.Mixed;

/// <summary>The profiled REML criterion at one set of variance ratios gamma_i = s2_i / s2_error, with what it was solved from.</summary>
/// <remarks>
/// With P the projection of V(gamma)^-1 past X, and N = Z'PZ, g = Z'Py, Q = y'Py:
/// criterion d = log det M + (n-p) log Q, dd/dgamma_i = tr N_ii - (n-p) |g_i|^2 / Q, and the second derivatives
/// follow from -|N_ij|^2 and Q'' = 2 g_i'N_ij g_j (Harville 1977, JASA 72:320). M is Henderson's matrix in effects
/// scaled to unit variance, so that gamma_i = 0 is an ordinary point (Bates and others 2015, J. Stat. Software 67(1)).
/// </remarks>
internal sealed class RemlPoint
{
    private readonly RemlProblem _problem;
    private readonly Cholesky _factor;
    private readonly double[] _lengths;
    private readonly double[] _sums;
    private double[][]? _projected;

    private RemlPoint(RemlProblem problem, double[] ratios, double[] lengths, Cholesky factor)
    {
        (_problem, Ratios, _lengths, _factor) = (problem, ratios, lengths, factor);
        var right = new double[lengths.Length + problem.Fixed];
        for (var r = 0; r < lengths.Length; r++)
        {
            right[r] = lengths[r] * problem.CrossResponse[r];
        }

        var solution = factor.Solve(right);
        Coefficients = solution[lengths.Length..];
        var random = new double[lengths.Length];
        var penalty = 0.0;
        for (var r = 0; r < random.Length; r++)
        {
            random[r] = lengths[r] * solution[r];
            penalty += solution[r] * solution[r];
        }

        var residuals = problem.Residuals(random, Coefficients);
        Quadratic = StableSums.SumOfSquares(residuals) + penalty;
        _sums = problem.Gather(residuals);
        Criterion = factor.LogDeterminant + (problem.Degrees * Math.Log(Quadratic));
    }

    /// <summary>Variance ratio of each random factor.</summary>
    public double[] Ratios { get; }

    /// <summary>y'Py, squared units of the problem's scale.</summary>
    public double Quadratic { get; }

    /// <summary>log det M + (n-p) log Q.</summary>
    public double Criterion { get; }

    /// <summary>Coefficients of the problem's orthonormal basis, beyond ordinary least squares.</summary>
    public double[] Coefficients { get; }

    /// <summary>Error variance that maximises the restricted likelihood at these ratios.</summary>
    public double ErrorVariance => Quadratic / _problem.Degrees;

    /// <summary>Evaluates.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="ratios">One ratio per factor, 0 or more.</param>
    /// <returns>The point; null when M is not positive definite to rounding.</returns>
    public static RemlPoint? At(RemlProblem problem, double[] ratios)
    {
        var levels = problem.First[^1];
        var lengths = new double[levels];
        for (var f = 0; f < ratios.Length; f++)
        {
            lengths.AsSpan(problem.First[f]..problem.First[f + 1]).Fill(Math.Sqrt(ratios[f]));
        }

        var matrix = RemlProblem.Square(levels + problem.Fixed);
        for (var r = 0; r < levels; r++)
        {
            for (var s = 0; s <= r; s++)
            {
                matrix[r][s] = lengths[r] * problem.CrossLevels[r][s] * lengths[s];
            }

            matrix[r][r] += 1;
            for (var c = 0; c < problem.Fixed; c++)
            {
                matrix[levels + c][r] = lengths[r] * problem.CrossFixed[r][c];
            }
        }

        for (var c = 0; c < problem.Fixed; c++)
        {
            matrix[levels + c][levels + c] = 1;
        }

        return Cholesky.TryFactor(matrix) is { } factor ? new RemlPoint(problem, ratios, lengths, factor) : null;
    }

    /// <summary>Derivative of the criterion by each ratio.</summary>
    /// <returns>The gradient.</returns>
    public double[] Gradient()
    {
        var gradient = new double[Ratios.Length];
        for (var f = 0; f < gradient.Length; f++)
        {
            gradient[f] = Trace(f) - (_problem.Degrees * SquaredSum(f) / Quadratic);
        }

        return gradient;
    }

    /// <summary>Second derivatives of the profiled criterion.</summary>
    /// <returns>The Hessian in rows.</returns>
    public double[][] Hessian() => Matrix((i, j) =>
        (_problem.Degrees * ((2 * Form(i, j) / Quadratic) - (SquaredSum(i) * SquaredSum(j) / (Quadratic * Quadratic)))) - SquaredNorm(i, j));

    /// <summary>Expected second derivatives, never negative: where the Hessian is not definite, a way downhill.</summary>
    /// <returns>The matrix in rows.</returns>
    public double[][] Expected() => Matrix((i, j) => SquaredNorm(i, j) - (Trace(i) * Trace(j) / _problem.Degrees));

    /// <summary>Second derivatives of -2 log restricted likelihood by the ratios and, last, the error variance, at its best value.</summary>
    /// <returns>The Hessian in rows, one more than there are factors.</returns>
    public double[][] FullHessian()
    {
        var variance = ErrorVariance;
        var last = Ratios.Length;
        var full = RemlProblem.Square(last + 1);
        for (var i = 0; i < last; i++)
        {
            for (var j = 0; j < last; j++)
            {
                full[i][j] = (2 * Form(i, j) / variance) - SquaredNorm(i, j);
            }

            full[i][last] = full[last][i] = SquaredSum(i) / (variance * variance);
        }

        full[last][last] = _problem.Degrees / (variance * variance);
        return full;
    }

    /// <summary>Variance of a contrast of the basis coefficients by error variance, l'Bl, and its derivative by each ratio, |Z_i'a|^2 for the estimate a'y.</summary>
    /// <param name="contrast">One weight per basis column.</param>
    /// <returns>The variance factor and its derivatives.</returns>
    public (double Factor, double[] Derivatives) VarianceOf(double[] contrast)
    {
        var levels = _lengths.Length;
        var solution = SolveFixed(contrast);
        var scaled = new double[levels];
        for (var r = 0; r < levels; r++)
        {
            scaled[r] = _lengths[r] * solution[r];
        }

        var derivatives = new double[Ratios.Length];
        for (var f = 0; f < derivatives.Length; f++)
        {
            for (var r = _problem.First[f]; r < _problem.First[f + 1]; r++)
            {
                var weight = Cholesky.Dot(_problem.CrossLevels[r], scaled, levels)
                    + Cholesky.Dot(_problem.CrossFixed[r], solution.AsSpan(levels), contrast.Length);
                derivatives[f] += weight * weight;
            }
        }

        return (Cholesky.Dot(contrast, solution.AsSpan(levels), contrast.Length), derivatives);
    }

    /// <summary>Covariance of a contrast of the basis coefficients with each of them, by error variance.</summary>
    /// <param name="contrast">One weight per basis column.</param>
    /// <returns>B l, one value per basis column.</returns>
    public double[] CovarianceOf(double[] contrast) => SolveFixed(contrast)[_lengths.Length..];

    // N = Z'PZ = W - S'S, with S the forward solution of [scaled W; X'Z].
    private double[][] Projected()
    {
        if (_projected is not null)
        {
            return _projected;
        }

        var levels = _lengths.Length;
        var solved = new double[levels][];
        var right = new double[levels + _problem.Fixed];
        for (var s = 0; s < levels; s++)
        {
            for (var r = 0; r < levels; r++)
            {
                right[r] = _lengths[r] * _problem.CrossLevels[s][r];
            }

            _problem.CrossFixed[s].CopyTo(right, levels);
            solved[s] = _factor.Forward(right);
        }

        _projected = RemlProblem.Square(levels);
        for (var r = 0; r < levels; r++)
        {
            for (var s = 0; s <= r; s++)
            {
                _projected[r][s] = _projected[s][r] = _problem.CrossLevels[r][s] - Cholesky.Dot(solved[r], solved[s], right.Length);
            }
        }

        return _projected;
    }

    private double[] SolveFixed(double[] contrast)
    {
        var right = new double[_lengths.Length + contrast.Length];
        contrast.CopyTo(right, _lengths.Length);
        return _factor.Solve(right);
    }

    private double Trace(int factor) => Sum(factor, factor, (r, s, value) => r == s ? value : 0);

    private double SquaredNorm(int i, int j) => Sum(i, j, (_, _, value) => value * value);

    private double Form(int i, int j) => Sum(i, j, (r, s, value) => _sums[r] * value * _sums[s]);

    private double SquaredSum(int factor) => StableSums.SumOfSquares(_sums.AsSpan(_problem.First[factor].._problem.First[factor + 1]));

    private double Sum(int i, int j, Func<int, int, double, double> term)
    {
        var projected = Projected();
        var sum = 0.0;
        for (var r = _problem.First[i]; r < _problem.First[i + 1]; r++)
        {
            for (var s = _problem.First[j]; s < _problem.First[j + 1]; s++)
            {
                sum += term(r, s, projected[r][s]);
            }
        }

        return sum;
    }

    private double[][] Matrix(Func<int, int, double> entry)
    {
        var matrix = RemlProblem.Square(Ratios.Length);
        for (var i = 0; i < Ratios.Length; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                matrix[i][j] = matrix[j][i] = entry(i, j);
            }
        }

        return matrix;
    }
}
