using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What one treatment puts near the seed, and how it stands to published limits.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Placements">What lies where.</param>
/// <param name="Screen">Each placement against each source.</param>
/// <param name="Hazards">Materials in its seed furrow that sources keep out of it or warn of, with the product.</param>
public sealed record TreatmentStarter(
    Treatment Treatment,
    ImmutableArray<PlacementTotal> Placements,
    ImmutableArray<ScreenLine> Screen,
    ImmutableArray<(Product Product, FurrowHazard Hazard)> Hazards);
