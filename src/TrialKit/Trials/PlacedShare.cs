namespace TrialKit.Trials;

/// <summary>The part of a product that goes to one placement.</summary>
/// <param name="Placement">Where.</param>
/// <param name="Share">Above 0 and up to 1; the shares of a product sum to 1.</param>
public sealed record PlacedShare(Placement Placement, double Share);
