namespace TrialKit;

/// <summary>One trial of several that are put together.</summary>
/// <param name="Name">What it is called in results; unlike any other's.</param>
/// <param name="Analysis">Its outcome.</param>
public sealed record PooledSite(string Name, TrialAnalysis Analysis);
