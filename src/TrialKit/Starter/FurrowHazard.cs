using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>A material, or a nutrient, that sources keep out of the seed furrow or warn of.</summary>
/// <param name="What">What it is, in words.</param>
/// <param name="Material">The material; null for a nutrient.</param>
/// <param name="Nutrient">The nutrient; null for a material.</param>
/// <param name="IsNever">Whether it is never to be there; otherwise a warning.</param>
/// <param name="Reason">Why.</param>
/// <param name="Source">Who says so.</param>
public sealed record FurrowHazard(string What, string? Material, Nutrient? Nutrient, bool IsNever, string Reason, string Source);
