namespace TrialKit.Starter;

/// <summary>A product, or the products at one placement together, with its salt index.</summary>
/// <param name="Name">Product, or the mixture in words.</param>
/// <param name="Index">The total index, sodium nitrate being 100; null when not on record.</param>
/// <param name="IsFromMemory">Whether a value behind it is from memory.</param>
/// <param name="Missing">Why there is no index; null when there is one.</param>
public sealed record RankedSalt(string Name, double? Index, bool IsFromMemory, string? Missing);
