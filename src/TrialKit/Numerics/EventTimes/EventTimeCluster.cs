namespace TrialKit.Numerics.EventTimes;

/// <summary>The counts of one strip with its covariates: seeds within it are alike, strips are independent.</summary>
/// <param name="Counts">Grouped interval-censored counts.</param>
/// <param name="Covariates">One number per covariate, such as 1 for a treated strip and 0 for its control.</param>
internal sealed record EventTimeCluster(IntervalCounts Counts, IReadOnlyList<double> Covariates);
