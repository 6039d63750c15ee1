namespace TrialKit.Numerics;

/// <summary>The value of an integral, how far off it may be, and what it cost.</summary>
/// <param name="Value">The integral.</param>
/// <param name="Error">Estimated absolute error.</param>
/// <param name="Evaluations">Times the integrand was computed.</param>
internal readonly record struct QuadratureResult(double Value, double Error, int Evaluations);
