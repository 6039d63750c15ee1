namespace TrialKit.Trials;

/// <summary>The soil as limits beside the seed tell soils apart.</summary>
public enum SoilClass
{
    /// <summary>Sandy, coarse.</summary>
    Sandy,

    /// <summary>Medium.</summary>
    Medium,

    /// <summary>Fine.</summary>
    Fine,
}
