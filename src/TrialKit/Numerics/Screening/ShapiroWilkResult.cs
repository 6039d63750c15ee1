namespace TrialKit.Numerics.Screening;

/// <summary>W and p of a test of normality.</summary>
/// <param name="W">Between 0 and 1; near 1 for a normal sample.</param>
/// <param name="P">Chance of a W this small or smaller.</param>
internal readonly record struct ShapiroWilkResult(double W, double P);
