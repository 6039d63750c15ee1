using System.Collections.Immutable;
using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using TrialKit.Numerics.Linear;

namespace TrialKit.Numerics.Mixed;

/// <summary>How a REML fit ended.</summary>
internal enum MixedStatus
{
    /// <summary>The variances are those of greatest restricted likelihood.</summary>
    Converged,

    /// <summary>The fixed part explains every observation: there is no variance to divide.</summary>
    NoVariation,

    /// <summary>A random factor leaves no error: the likelihood has no maximum.</summary>
    NoErrorVariation,

    /// <summary>The search stopped before a maximum.</summary>
    NotConverged,
}

/// <summary>A linear mixed model y = X b + sum Z_i u_i + e fitted by restricted maximum likelihood.</summary>
/// <remarks>
/// Patterson and Thompson 1971, Biometrika 58:545. Variances are 0 or more; at 0 the fit is singular, and says so.
/// Degrees of freedom of contrasts by Satterthwaite's method from the information of the variances (Giesbrecht and
/// Burns 1985, Biometrics 41:477; Fai and Cornelius 1996 for several rows); variances at 0 are taken as known.
/// </remarks>
internal sealed class MixedFit
{
    private readonly RemlProblem? _problem;
    private readonly RemlPoint? _point;
    private readonly int[] _varying;
    private readonly Cholesky? _information;

    private MixedFit(RemlProblem problem, RemlPoint point, MixedStatus status)
    {
        (_problem, Status) = (problem, status);
        var square = problem.Scale * problem.Scale;
        ResidualVariance = point.ErrorVariance * square;
        VarianceComponents = [.. point.Ratios.Select(ratio => ratio * point.ErrorVariance * square)];
        Coefficients = [.. problem.FixedPart.Solve([.. problem.Ordinary.Take(problem.Fixed).Select((value, c) => value + (problem.Scale * point.Coefficients[c]))])];
        _varying = [.. Enumerable.Range(0, point.Ratios.Length).Where(f => point.Ratios[f] > 0)];
        IsSingular = _varying.Length < point.Ratios.Length;
        if (status != MixedStatus.Converged)
        {
            return;
        }

        _point = point;
        Criterion = point.Criterion + problem.FixedPart.LogDeterminantOfCrossProduct()
            + (problem.Degrees * (1 + Math.Log(2 * Math.PI / problem.Degrees) + Math.Log(square)));
        var hessian = point.FullHessian();
        int[] kept = [.. _varying, point.Ratios.Length];
        _information = Cholesky.TryFactor([.. kept.Select(i => kept.Select(j => hessian[i][j]).ToArray())]);
    }

    private MixedFit(double[] coefficients, int factors)
    {
        Status = MixedStatus.NoVariation;
        Coefficients = [.. coefficients];
        VarianceComponents = [.. new double[factors]];
        _varying = [];
    }

    /// <summary>How the fit ended. Standard errors exist when it converged.</summary>
    public MixedStatus Status { get; }

    /// <summary>One coefficient per fixed column.</summary>
    public ImmutableArray<double> Coefficients { get; }

    /// <summary>Variance of each random factor, 0 or more.</summary>
    public ImmutableArray<double> VarianceComponents { get; }

    /// <summary>Variance of error.</summary>
    public double ResidualVariance { get; }

    /// <summary>Whether a variance is estimated as 0.</summary>
    public bool IsSingular { get; }

    /// <summary>-2 log restricted likelihood, with its constants; null unless converged.</summary>
    public double? Criterion { get; }

    /// <summary>Fits the model.</summary>
    /// <param name="response">One finite value per observation.</param>
    /// <param name="design">Fixed design, observations by columns, an intercept included; columns independent, fewer than observations.</param>
    /// <param name="factors">Level of each observation, 0.. without gaps, for each random factor. A nested factor has a level of its own in each outer one.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">Sizes differ, a value is not finite, fixed columns depend on one another, or a factor cannot be told from error, from another factor or from the fixed part.</exception>
    public static MixedFit Of(ReadOnlySpan<double> response, double[,] design, IReadOnlyList<int[]> factors)
    {
        if (RemlProblem.Of(response, design, factors) is not { } problem)
        {
            var qr = PivotedQr.Factor(design);
            return new MixedFit(qr.Solve(qr.Rotate(response)), factors.Count);
        }

        var point = RemlSearch.Minimise(problem, out var hasConverged);
        var status = point.Ratios.Any(ratio => ratio >= RemlSearch.LargestRatio) ? MixedStatus.NoErrorVariation
            : hasConverged ? MixedStatus.Converged
            : MixedStatus.NotConverged;
        return new MixedFit(problem, point, status);
    }

    /// <summary>A linear combination of the coefficients.</summary>
    /// <param name="weights">One weight per fixed column.</param>
    /// <returns>Estimate, standard error and Satterthwaite degrees of freedom; the latter two null unless converged.</returns>
    /// <exception cref="ArgumentException">Another number of weights than columns, or one that is not finite.</exception>
    public MixedContrast Contrast(ReadOnlySpan<double> weights)
    {
        RequireWeights(weights.Length);
        Checks.Sample(weights, 1);
        var estimate = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            estimate += weights[i] * Coefficients[i];
        }

        if (_point is not { } point || _information is not { } information)
        {
            return new MixedContrast(estimate, StandardError: null, DegreesOfFreedom: null);
        }

        var (factor, derivatives) = point.VarianceOf(Rotated(weights));
        if (!(factor > 0))
        {
            return new MixedContrast(estimate, StandardError: null, DegreesOfFreedom: null);
        }

        // Gradient of s2 l'Bl by the ratios that vary and by s2; its variance is 2 gradient' H^-1 gradient.
        double[] gradient = [.. _varying.Select(f => point.ErrorVariance * derivatives[f]), factor];
        var solved = information.Forward(gradient);
        var variance = point.ErrorVariance * factor;
        return new MixedContrast(
            estimate, _problem!.Scale * Math.Sqrt(variance), variance * variance / StableSums.SumOfSquares(solved));
    }

    /// <summary>F test that several linear combinations of the coefficients are all 0.</summary>
    /// <param name="weights">Combinations by fixed columns; dependent rows count once.</param>
    /// <returns>The test; null unless converged.</returns>
    /// <exception cref="ArgumentException">Another number of columns than the design, or no row.</exception>
    public MixedFTest? Test(double[,] weights)
    {
        const double Dependent = 1e-10;
        RequireWeights(weights.GetLength(1));
        if (_point is null)
        {
            return null;
        }

        // Rows are turned so that their estimates are independent; each then has degrees of freedom of its own.
        var rows = Matrix<double>.Build.DenseOfArray(weights);
        var covariance = rows * Covariance() * rows.Transpose();
        var eigen = covariance.Evd(Symmetricity.Symmetric);
        var values = eigen.EigenValues.Select(value => value.Real).ToArray();
        var turned = eigen.EigenVectors.Transpose() * rows;
        var kept = Enumerable.Range(0, values.Length).Where(i => values[i] > Dependent * values.Max()).ToArray();
        if (kept.Length == 0)
        {
            throw new ArgumentException("No row with a weight other than 0 was found; one at least was expected.", nameof(weights));
        }

        var contrasts = kept.Select(i => Contrast([.. turned.Row(i)])).ToArray();
        var sum = contrasts.Sum(contrast => contrast.T!.Value * contrast.T.Value);
        return new MixedFTest(sum / kept.Length, kept.Length, MixedFTest.Denominator([.. contrasts.Select(c => c.DegreesOfFreedom!.Value)]));
    }

    private Matrix<double> Covariance()
    {
        var columns = Coefficients.Length;
        var map = Matrix<double>.Build.Dense(columns, columns);
        var basis = Matrix<double>.Build.Dense(columns, columns);
        for (var c = 0; c < columns; c++)
        {
            var unit = new double[columns];
            unit[c] = 1;
            map.SetColumn(c, _problem!.FixedPart.Solve(unit));
            basis.SetColumn(c, _point!.CovarianceOf(unit));
        }

        return ResidualVariance * map * basis * map.Transpose();
    }

    // Weights on the orthonormal basis: column c of the map is the coefficients of basis vector c.
    private double[] Rotated(ReadOnlySpan<double> weights)
    {
        var columns = weights.Length;
        var rotated = new double[columns];
        for (var c = 0; c < columns; c++)
        {
            var unit = new double[columns];
            unit[c] = 1;
            rotated[c] = Cholesky.Dot(weights, _problem!.FixedPart.Solve(unit), columns);
        }

        return rotated;
    }

    private void RequireWeights(int found)
    {
        if (found != Coefficients.Length)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{found} weights were found; {Coefficients.Length} were expected, one for each fixed column."), nameof(found));
        }
    }
}
