using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>One treatment against another at one site.</summary>
/// <param name="Pair">The two treatments.</param>
/// <param name="Estimate">Treatment less baseline with its error, of this comparison alone; null when it has none.</param>
public sealed record SiteContrast(ComparedPair Pair, TEstimate? Estimate);
