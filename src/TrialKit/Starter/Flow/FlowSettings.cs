using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>How the planter runs.</summary>
/// <param name="Speed">Ground speed, above zero.</param>
/// <param name="Pressure">Pressure at the outlets now; null when not given.</param>
/// <param name="Outlets">Flow coefficients of the outlets of one row that share a common pressure; empty when they are alike.</param>
public sealed record FlowSettings(Speed Speed, Pressure? Pressure, ImmutableArray<double> Outlets);
