using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>A range of heat sums of one method.</summary>
/// <param name="Low">The least.</param>
/// <param name="Mid">The one in between that is best supported.</param>
/// <param name="High">The most.</param>
public sealed record HeatRange(HeatSum Low, HeatSum Mid, HeatSum High);
