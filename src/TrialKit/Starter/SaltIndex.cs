namespace TrialKit.Starter;

/// <summary>The salt index of a material: how far an equal weight raises the soil solution's osmotic pressure, sodium nitrate being 100.</summary>
/// <param name="Material">The material.</param>
/// <param name="Total">For an equal weight of material.</param>
/// <param name="PerUnit">For a unit, 20 lb of N + P2O5 + K2O, of it.</param>
/// <param name="IsFromMemory">Whether the values are from memory and not read in the source.</param>
public sealed record SaltIndex(string Material, double Total, double PerUnit, bool IsFromMemory);
