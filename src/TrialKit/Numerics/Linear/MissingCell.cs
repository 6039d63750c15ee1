using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Yates' plug for one missing cell of a complete block design, and the bias it brings into the treatment line.</summary>
/// <param name="Estimate">The value that makes the error sum of squares least.</param>
/// <param name="PluggedTreatmentSumOfSquares">Treatment sum of squares with the plug taken for an observation: too large.</param>
/// <param name="Bias">By how much it is too large.</param>
/// <remarks>Yates 1933, Empire Journal of Experimental Agriculture 1:129. A way to see what least squares does, not a rival to it.</remarks>
internal sealed record MissingCell(double Estimate, double PluggedTreatmentSumOfSquares, double Bias)
{
    /// <summary>Treatment sum of squares with the bias taken off: the least-squares one.</summary>
    public double TreatmentSumOfSquares => PluggedTreatmentSumOfSquares - Bias;

    /// <summary>Fills the one empty cell.</summary>
    /// <param name="responses">One finite value per observation.</param>
    /// <param name="block">Block of each observation.</param>
    /// <param name="treatment">Treatment of each observation.</param>
    /// <returns>The plug and its bias.</returns>
    /// <exception cref="ArgumentException">Not exactly one cell is empty, or fewer than two blocks or treatments are left to estimate it.</exception>
    public static MissingCell Of(ReadOnlySpan<double> responses, ReadOnlySpan<int> block, ReadOnlySpan<int> treatment)
    {
        var design = BlockDesign.Of(block, treatment);
        var (r, t) = (design.Blocks, design.Treatments);
        if (design.Observations != (r * t) - 1 || r < 2 || t < 2)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{(r * t) - design.Observations} cells of {r} blocks by {t} treatments are empty; one was expected, of two blocks and two treatments at least."),
                nameof(block));
        }

        Checks.Sample(responses, 1);
        var shifted = StableSums.Shifted(responses, out var shift);
        var emptyBlock = Array.IndexOf(design.BlockSizes, t - 1);
        var emptyTreatment = Array.IndexOf(design.Replicates, r - 1);
        var (blockTotal, treatmentTotal, grandTotal) = (0.0, 0.0, 0.0);
        for (var i = 0; i < shifted.Length; i++)
        {
            blockTotal += block[i] == emptyBlock ? shifted[i] : 0;
            treatmentTotal += treatment[i] == emptyTreatment ? shifted[i] : 0;
            grandTotal += shifted[i];
        }

        var plug = ((r * blockTotal) + (t * treatmentTotal) - grandTotal) / ((r - 1.0) * (t - 1.0));
        var difference = blockTotal - ((t - 1) * plug);
        var plugged = BlockAnova.Of([.. shifted, plug], [.. block, emptyBlock], [.. treatment, emptyTreatment]);
        return new MissingCell(shift + plug, plugged.Treatments.SumOfSquares, difference * difference / (t * (t - 1.0)));
    }
}
