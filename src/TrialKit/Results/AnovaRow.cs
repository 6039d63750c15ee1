using TrialKit.Quantities;

namespace TrialKit.Results;

/// <summary>One line of an analysis of variance.</summary>
/// <param name="Source">What varies: blocks, treatments, error.</param>
/// <param name="SumOfSquares">In the square of the unit.</param>
/// <param name="DegreesOfFreedom">0 or more.</param>
/// <param name="F">The ratio to the error mean square; null for the error and where nothing varies.</param>
/// <param name="P">The upper tail of F; null where F is.</param>
public sealed record AnovaRow(string Source, double SumOfSquares, int DegreesOfFreedom, double? F, Probability? P)
{
    /// <summary>The sum of squares per degree of freedom; null without any.</summary>
    public double? MeanSquare => DegreesOfFreedom > 0 ? SumOfSquares / DegreesOfFreedom : null;
}
