using System.Collections.Immutable;
using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Least squares y = X b + e by pivoted QR of the scaled design.</summary>
internal sealed class LeastSquares
{
    private readonly double[,] _unscaledCovariance;

    private LeastSquares(
        ImmutableArray<double> coefficients, ImmutableArray<double> residuals, double residualSumOfSquares, double[,] unscaledCovariance)
    {
        Coefficients = coefficients;
        Residuals = residuals;
        ResidualSumOfSquares = residualSumOfSquares;
        _unscaledCovariance = unscaledCovariance;
    }

    /// <summary>One coefficient per column of the design.</summary>
    public ImmutableArray<double> Coefficients { get; }

    /// <summary>Observed less fitted, one per observation.</summary>
    public ImmutableArray<double> Residuals { get; }

    /// <summary>Sum of squared residuals.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Observations less coefficients.</summary>
    public int DegreesOfFreedom => Residuals.Length - Coefficients.Length;

    /// <summary>Residual sum of squares by degrees of freedom; null without any.</summary>
    public double? ResidualVariance => DegreesOfFreedom > 0 ? ResidualSumOfSquares / DegreesOfFreedom : null;

    /// <summary>Fits the design.</summary>
    /// <param name="design">Observations by columns, an intercept included if one is wanted; columns independent.</param>
    /// <param name="response">One value per observation.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">Sizes differ, a value is not finite, there are fewer observations than columns, or columns depend on one another.</exception>
    public static LeastSquares Fit(double[,] design, ReadOnlySpan<double> response)
    {
        var (rows, columns) = (design.GetLength(0), design.GetLength(1));
        if (response.Length != rows || rows < columns || columns == 0)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"A design of {rows} rows and {columns} columns came with {response.Length} responses; as many rows as responses and no fewer than columns were expected."),
                nameof(design));
        }

        Checks.Sample(response, 1);
        var qr = PivotedQr.Factor(design);
        if (qr.Rank < columns)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Of {columns} design columns, {string.Join(", ", qr.DependentColumns)} (counted from 0) depend on the others; independent columns were expected."),
                nameof(design));
        }

        var rotated = qr.Rotate(response);
        return new LeastSquares(
            [.. qr.Solve(rotated)],
            [.. qr.Residuals(rotated)],
            StableSums.SumOfSquares(rotated.AsSpan(columns)),
            qr.InverseCrossProduct());
    }

    /// <summary>Standard error of a coefficient: the root of residual variance times the diagonal of (X'X)^-1.</summary>
    /// <param name="coefficient">Index of the column.</param>
    /// <returns>The standard error; null without degrees of freedom.</returns>
    public double? StandardError(int coefficient) =>
        ResidualVariance is { } variance ? Math.Sqrt(variance * _unscaledCovariance[coefficient, coefficient]) : null;
}
