namespace TrialKit.Numerics.Linear;

/// <summary>Least-squares fit of block + treatment to one response, in coordinates less <see cref="Shift"/>.</summary>
/// <param name="Design">The design fitted.</param>
/// <param name="Shift">What was taken off each response before summing.</param>
/// <param name="TreatmentEffects">Effect of each treatment; their differences are the estimates.</param>
/// <param name="BlockEffects">Effect of each block: level of the block's mean at treatment effect zero, shifted.</param>
/// <param name="Residuals">Observed less fitted.</param>
/// <param name="TotalSumOfSquares">About the grand mean.</param>
/// <param name="BlockSumOfSquares">Between block means, treatments ignored.</param>
/// <param name="TreatmentSumOfSquares">Treatments adjusted for blocks.</param>
internal sealed record BlockFit(
    BlockDesign Design,
    double Shift,
    double[] TreatmentEffects,
    double[] BlockEffects,
    double[] Residuals,
    double TotalSumOfSquares,
    double BlockSumOfSquares,
    double TreatmentSumOfSquares)
{
    /// <summary>Sum of squared residuals.</summary>
    public double ErrorSumOfSquares { get; } = StableSums.SumOfSquares(Residuals);

    /// <summary>Mean of the block effects, shift put back: the level at treatment effect zero, blocks weighing alike.</summary>
    public double Level => Shift + StableSums.Mean(BlockEffects);

    /// <summary>Closed form when each treatment stands in each block: deviations of marginal means.</summary>
    /// <param name="design">A complete design.</param>
    /// <param name="shifted">Responses less the shift.</param>
    /// <param name="shift">The shift.</param>
    /// <returns>The fit.</returns>
    public static BlockFit Complete(BlockDesign design, double[] shifted, double shift)
    {
        var within = design.WithinBlocks(shifted, out var blockMeans);
        var effects = StableSums.LevelMeans(within, design.Treatment, design.Treatments);
        var sum = design.Blocks * StableSums.SumOfSquares(effects);
        return Build(design, shift, effects, blockMeans, within, sum);
    }

    /// <summary>Least squares on what block means leave.</summary>
    /// <param name="design">A connected design.</param>
    /// <param name="qr">QR of the treatment indicators less their block means.</param>
    /// <param name="shifted">Responses less the shift.</param>
    /// <param name="shift">The shift.</param>
    /// <returns>The fit.</returns>
    public static BlockFit ByLeastSquares(BlockDesign design, PivotedQr qr, double[] shifted, double shift)
    {
        var within = design.WithinBlocks(shifted, out var blockMeans);
        var rotated = qr.Rotate(within);
        return Build(design, shift, qr.Solve(rotated), blockMeans, within, StableSums.SumOfSquares(rotated.AsSpan(0, qr.Rank)));
    }

    private static BlockFit Build(
        BlockDesign design, double shift, double[] effects, double[] blockMeans, double[] within, double treatmentSumOfSquares)
    {
        // Mean treatment effect of the cells that each block has.
        var perCell = new double[design.Observations];
        for (var i = 0; i < perCell.Length; i++)
        {
            perCell[i] = effects[design.Treatment[i]];
        }

        var carried = StableSums.LevelMeans(perCell, design.Block, design.Blocks);
        var residuals = new double[perCell.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = within[i] - (perCell[i] - carried[design.Block[i]]);
        }

        var grand = 0.0;
        for (var b = 0; b < design.Blocks; b++)
        {
            grand += design.BlockSizes[b] * blockMeans[b] / design.Observations;
        }

        var blockSum = 0.0;
        var blockEffects = new double[design.Blocks];
        for (var b = 0; b < design.Blocks; b++)
        {
            var deviation = blockMeans[b] - grand;
            blockSum += design.BlockSizes[b] * deviation * deviation;
            blockEffects[b] = blockMeans[b] - carried[b];
        }

        var total = blockSum + StableSums.SumOfSquares(within);
        return new BlockFit(design, shift, effects, blockEffects, residuals, total, blockSum, treatmentSumOfSquares);
    }
}
