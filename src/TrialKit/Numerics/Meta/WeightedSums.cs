namespace TrialKit.Numerics.Meta;

/// <summary>Sums over sites with weights w = 1/(v + tau2).</summary>
/// <param name="Sum">Sum of w.</param>
/// <param name="SumOfSquares">Sum of w^2.</param>
/// <param name="Mean">Weighted mean.</param>
/// <param name="Q">Sum of w (y - mean)^2.</param>
/// <param name="WeightedQ">Sum of w^2 (y - mean)^2.</param>
internal readonly record struct WeightedSums(double Sum, double SumOfSquares, double Mean, double Q, double WeightedQ);
