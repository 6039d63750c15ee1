using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>How the planter runs.</summary>
/// <param name="Speed">Ground speed, above zero.</param>
/// <param name="Pressure">Pressure at the outlets now; null when not given.</param>
/// <param name="Outlets">The outlets of one row, by placement; a placement that is not named has outlets alike.</param>
public sealed record FlowSettings(Speed Speed, Pressure? Pressure, ImmutableArray<RowOutlets> Outlets);
