namespace TrialKit.Numerics.Screening;

/// <summary>The value furthest from the mean and how unusual that is.</summary>
/// <param name="G">Its distance from the mean in standard deviations.</param>
/// <param name="Index">Its place in the sample, from 0; the first of equals.</param>
/// <param name="P">Two-sided p, Bonferroni's bound; at most 1.</param>
internal readonly record struct GrubbsResult(double G, int Index, double P);
