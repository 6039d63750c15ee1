using System.Collections.Immutable;

namespace TrialKit.Numerics.Linear;

/// <summary>Analysis of variance of treatments in blocks, one observation for each treatment in a block at most.</summary>
/// <remarks>
/// y_ij = mu + block_i + treatment_j + e_ij. Sums of squares add to the total: blocks first, treatments adjusted for
/// them. With a cell missing the treatment line is the least-squares one (Yates 1933), and means are least-squares
/// means, blocks weighing alike.
/// </remarks>
internal sealed record BlockAnova
{
    private readonly BlockFit _fit;

    private BlockAnova(BlockFit fit, VarianceLine[] lines, double[] responses)
    {
        _fit = fit;
        (Blocks, Treatments, Error) = (lines[0], lines[1], lines[2]);
        TotalSumOfSquares = fit.TotalSumOfSquares;
        GrandMean = fit.Shift + StableSums.Mean(StableSums.Shifted(responses, out _));
        Residuals = [.. fit.Residuals];
        Fitted = [.. responses.Zip(fit.Residuals, (y, e) => y - e)];
        Means = [.. LeastSquaresMeans(fit)];
    }

    /// <summary>Between blocks, treatments ignored.</summary>
    public VarianceLine Blocks { get; }

    /// <summary>Treatments adjusted for blocks.</summary>
    public VarianceLine Treatments { get; }

    /// <summary>What blocks and treatments leave.</summary>
    public VarianceLine Error { get; }

    /// <summary>Sum of squares about the grand mean.</summary>
    public double TotalSumOfSquares { get; }

    /// <summary>Mean of all observations.</summary>
    public double GrandMean { get; }

    /// <summary>Least-squares mean of each treatment: its mean over all blocks had it stood in each.</summary>
    public ImmutableArray<double> Means { get; }

    /// <summary>Observed less fitted, one per observation.</summary>
    public ImmutableArray<double> Residuals { get; }

    /// <summary>Fitted value of each observation.</summary>
    public ImmutableArray<double> Fitted { get; }

    /// <summary>The design analysed.</summary>
    public BlockDesign Design => _fit.Design;

    /// <summary>Error mean square; null without error degrees of freedom.</summary>
    public double? ErrorMeanSquare => Error.MeanSquare;

    /// <summary>Coefficient of variation, 100 sqrt(MSE)/mean, percent; null without MSE or with a grand mean that is not above zero.</summary>
    public double? CoefficientOfVariation => ErrorMeanSquare is { } mse && GrandMean > 0 ? 100 * Math.Sqrt(mse) / GrandMean : null;

    /// <summary>Relative efficiency of the blocks against none, ((r-1) MSB + r(t-1) MSE) / ((rt-1) MSE); null where cells are missing or F is undefined.</summary>
    /// <remarks>Cochran and Cox 1957, section 4.37.</remarks>
    public double? BlockEfficiency
    {
        get
        {
            if (!Design.IsComplete || Blocks.F is not { } ratio)
            {
                return null;
            }

            var (r, t) = ((double)Design.Blocks, (double)Design.Treatments);
            return (((r - 1) * ratio) + (r * (t - 1))) / ((r * t) - 1);
        }
    }

    /// <summary>Analyses responses.</summary>
    /// <param name="responses">One finite value per observation, in one unit.</param>
    /// <param name="block">Block of each observation, 0..b-1 without gaps.</param>
    /// <param name="treatment">Treatment of each observation, 0..t-1 without gaps.</param>
    /// <returns>The analysis. F is null where <see cref="VarianceLine.Status"/> says why.</returns>
    /// <exception cref="ArgumentException">A value is not finite, lengths differ, a level is missing, a treatment stands twice in a block, or treatments fall into groups that no block joins.</exception>
    public static BlockAnova Of(ReadOnlySpan<double> responses, ReadOnlySpan<int> block, ReadOnlySpan<int> treatment)
    {
        var design = BlockDesign.Of(block, treatment);
        var fit = design.Fit(responses);
        var status = VarianceLine.Denominator(fit.TotalSumOfSquares, fit.ErrorSumOfSquares, design.ErrorDegrees, responses);
        var lines = VarianceLine.Table(
            [
                (VarianceSource.Blocks, fit.BlockSumOfSquares, design.Blocks - 1),
                (VarianceSource.Treatments, fit.TreatmentSumOfSquares, design.Treatments - 1),
            ],
            fit.ErrorSumOfSquares,
            design.ErrorDegrees,
            status);
        return new BlockAnova(fit, lines, responses.ToArray());
    }

    /// <summary>Estimated difference of two treatments, the first less the second.</summary>
    /// <param name="first">Index of a treatment.</param>
    /// <param name="second">Index of another.</param>
    /// <returns>The difference.</returns>
    public double Difference(int first, int second) => _fit.TreatmentEffects[first] - _fit.TreatmentEffects[second];

    /// <summary>Variance of the difference of two treatments by error variance; 2/r when complete.</summary>
    /// <param name="first">Index of a treatment.</param>
    /// <param name="second">Index of another.</param>
    /// <returns>The factor, 0 for a treatment with itself.</returns>
    public double DifferenceVarianceFactor(int first, int second)
    {
        if (Design.IsComplete)
        {
            return first == second ? 0 : 2.0 / Design.Blocks;
        }

        var g = Design.UnscaledCovariance;
        return g[first, first] + g[second, second] - (2 * g[first, second]);
    }

    /// <summary>Standard error of the difference of two treatments.</summary>
    /// <param name="first">Index of a treatment.</param>
    /// <param name="second">Index of another.</param>
    /// <returns>The standard error; null without error degrees of freedom.</returns>
    public double? DifferenceStandardError(int first, int second) =>
        ErrorMeanSquare is { } mse ? Math.Sqrt(mse * DifferenceVarianceFactor(first, second)) : null;

    /// <summary>Standard error of a least-squares mean, block effects taken as fixed.</summary>
    /// <param name="treatment">Index of the treatment.</param>
    /// <returns>The standard error; null without error degrees of freedom.</returns>
    public double? MeanStandardError(int treatment)
    {
        if (ErrorMeanSquare is not { } mse)
        {
            return null;
        }

        // mean = c'effects + average block mean, and the two parts are independent.
        var design = Design;
        var contrast = new double[design.Treatments];
        contrast[treatment] = 1;
        var factor = 0.0;
        for (var i = 0; i < design.Observations; i++)
        {
            contrast[design.Treatment[i]] -= 1.0 / (design.Blocks * design.BlockSizes[design.Block[i]]);
        }

        foreach (var size in design.BlockSizes)
        {
            factor += 1.0 / (size * (double)design.Blocks * design.Blocks);
        }

        for (var i = 0; i < contrast.Length; i++)
        {
            for (var j = 0; j < contrast.Length; j++)
            {
                factor += contrast[i] * contrast[j] * design.UnscaledCovariance[i, j];
            }
        }

        return Math.Sqrt(mse * factor);
    }

    private static IEnumerable<double> LeastSquaresMeans(BlockFit fit)
    {
        var level = fit.Level;
        return fit.TreatmentEffects.Select(effect => level + effect);
    }
}
