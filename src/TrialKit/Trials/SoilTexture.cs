namespace TrialKit.Trials;

/// <summary>How fine the soil is.</summary>
public enum SoilTexture
{
    /// <summary>Clays and other fine soils, slow to warm.</summary>
    Fine,

    /// <summary>Loams.</summary>
    Medium,

    /// <summary>Sands and other coarse soils, quick to warm.</summary>
    Coarse,
}
