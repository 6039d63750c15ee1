using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Starter.Flow;

/// <summary>The outlets that a row has at one placement.</summary>
/// <param name="Placement">Where.</param>
/// <param name="Coefficients">Flow coefficients of the outlets, which share a common pressure: flow at one unit of pressure, in any unit.</param>
public sealed record RowOutlets(Placement Placement, ImmutableArray<double> Coefficients);
