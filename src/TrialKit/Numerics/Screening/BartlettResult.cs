namespace TrialKit.Numerics.Screening;

/// <summary>Bartlett's chi-square.</summary>
/// <param name="ChiSquare">The corrected statistic.</param>
/// <param name="DegreesOfFreedom">Groups less one.</param>
/// <param name="P">Its upper tail.</param>
internal readonly record struct BartlettResult(double ChiSquare, int DegreesOfFreedom, double P);
