using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>One time of one treatment, over its strips and from all their seeds pooled.</summary>
/// <param name="Id">A stable name, such as <c>t50</c> or <c>t50-sown</c>.</param>
/// <param name="Label">Its name as printed.</param>
/// <param name="Strips">Strips that have the time.</param>
/// <param name="Mean">Mean of those strips, days; null without one, and of seeds sown where a strip never reaches it.</param>
/// <param name="ByStrips">The mean judged by the spread between strips, the default; null with fewer than two strips or no spread.</param>
/// <param name="Pooled">From one curve fitted to all seeds of the treatment, days; null when the counts do not tell it.</param>
/// <param name="PooledInterval">Its interval with strips as clusters (sandwich, log scale, normal); null when it has none.</param>
public sealed record TreatmentTime(string Id, string Label, int Strips, double? Mean, TEstimate? ByStrips, double? Pooled, Interval? PooledInterval);
