namespace TrialKit.Numerics.Screening;

/// <summary>The F of a test of spread.</summary>
/// <param name="F">Ratio of mean squares of the distances from the group medians.</param>
/// <param name="Df1">Groups less one.</param>
/// <param name="Df2">Values less groups.</param>
/// <param name="P">Upper tail of F.</param>
internal readonly record struct BrownForsytheResult(double F, int Df1, int Df2, double P);
