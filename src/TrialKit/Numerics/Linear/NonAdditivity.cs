using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Linear;

/// <summary>Tukey's one degree of freedom for non-additivity of blocks and treatments.</summary>
/// <param name="SumOfSquares">Sum of squares of the product term.</param>
/// <param name="F">Against the error that is left; null where that error is nil.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of the error that is left.</param>
/// <remarks>
/// Tukey 1949, Biometrics 5:232. The term is the product of block and treatment effects, taken for any design as the
/// part of the squared fitted values that blocks and treatments leave.
/// </remarks>
internal sealed record NonAdditivity(double SumOfSquares, double? F, int DegreesOfFreedom)
{
    // Below this share of its own size the product term is rounding: no blocks or no treatments differ.
    private const double NoProduct = 1e-12;

    /// <summary>Chance of so large an F when blocks and treatments add; null where F is.</summary>
    public double? P => F is { } f ? FisherF.UpperTail(f, 1, DegreesOfFreedom) : null;

    /// <summary>Tests a block analysis.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The test; null with fewer than two error degrees of freedom, without variation, or when either blocks or treatments have no effect.</returns>
    public static NonAdditivity? Of(BlockAnova analysis)
    {
        var degrees = analysis.Error.DegreesOfFreedom - 1;
        if (degrees < 1 || analysis.Error.Status != FStatus.Defined)
        {
            return null;
        }

        var centred = StableSums.Shifted(analysis.Fitted.AsSpan(), out _);
        var mean = StableSums.Mean(centred);
        var squares = new double[centred.Length];
        for (var i = 0; i < squares.Length; i++)
        {
            squares[i] = (centred[i] - mean) * (centred[i] - mean);
        }

        var fit = analysis.Design.Fit(squares);
        var product = fit.Residuals;
        var length = fit.ErrorSumOfSquares;
        if (length <= NoProduct * NoProduct * StableSums.SumOfSquares(squares))
        {
            return null;
        }

        var dot = 0.0;
        for (var i = 0; i < product.Length; i++)
        {
            dot += product[i] * analysis.Residuals[i];
        }

        var sum = dot * dot / length;
        var left = analysis.Error.SumOfSquares - sum;
        double? f = left > NoProduct * analysis.Error.SumOfSquares ? sum / (left / degrees) : null;
        return new NonAdditivity(sum, f, degrees);
    }
}
