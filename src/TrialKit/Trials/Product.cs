using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A product put near the seed.</summary>
/// <param name="Name">Its name as printed.</param>
/// <param name="Placement">Where it was put.</param>
/// <param name="Rate">How much of it was put there.</param>
/// <param name="Density">Weight per volume, needed to weigh a volume rate; null when not given.</param>
/// <param name="Analysis">Its guaranteed analysis; null when not given.</param>
public sealed record Product(string Name, Placement Placement, ApplicationRate Rate, Density? Density, NutrientAnalysis? Analysis);
