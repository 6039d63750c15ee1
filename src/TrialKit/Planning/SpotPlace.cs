using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>A drawn spot with its place across the field.</summary>
/// <param name="Spot">The spot.</param>
/// <param name="Across">Distance of its row from the corner, across the rows.</param>
public sealed record SpotPlace(PlannedSpot Spot, Length Across);
