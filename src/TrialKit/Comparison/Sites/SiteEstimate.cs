using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>What one site found.</summary>
/// <param name="Site">Its name.</param>
/// <param name="Estimate">The difference with its standard error, of this comparison alone.</param>
/// <param name="Weight">Its share of the pooled estimate (REML), from 0 to 1.</param>
public sealed record SiteEstimate(string Site, TEstimate Estimate, double Weight);
