using UnitsNet;

namespace TrialKit.Trials;

/// <summary>What the heat from planting to emergence depends on in a field.</summary>
/// <param name="Depth">Planting depth; null when not known.</param>
/// <param name="Residue">Share of the ground covered; null when not known.</param>
/// <param name="Texture">How fine the soil is; null when not known.</param>
/// <param name="DrySeedZone">Whether the soil about the seed is dry.</param>
public sealed record FieldConditions(Length? Depth, Ratio? Residue, SoilTexture? Texture, bool DrySeedZone);
