namespace TrialKit.Stand;

/// <summary>What a gap between two plants says of the drop of seed.</summary>
public enum SpacingKind
{
    /// <summary>Half the seed spacing or less: two seeds, or a plant beside its place.</summary>
    Multiple,

    /// <summary>Above half and up to one and a half seed spacings.</summary>
    Single,

    /// <summary>More than one and a half seed spacings: a seed was missed or did not come up.</summary>
    Missed,
}
