namespace TrialKit.Trials;

/// <summary>A material within a mixed product.</summary>
/// <param name="Material">Its name.</param>
/// <param name="Share">Its share of the product's weight, above 0 and up to 1.</param>
public sealed record MixedShare(string Material, double Share);
