using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>The stand at one spot of a strip.</summary>
/// <param name="Spot">The spot's name; null when the strip was counted at one place without a name.</param>
/// <param name="Date">The day of the count used; null when not recorded.</param>
/// <param name="Plants">Plants counted.</param>
/// <param name="Row">Length of row counted, of all rows together.</param>
/// <param name="Density">Plants per area.</param>
public sealed record SpotStand(string? Spot, DateOnly? Date, int Plants, Length Row, PlantDensity Density);
