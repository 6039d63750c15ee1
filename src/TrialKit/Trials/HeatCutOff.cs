namespace TrialKit.Trials;

/// <summary>What warmth above the upper threshold does, for the methods that follow the temperature through the day (Roltsch et al. 1999, Int. J. Biometeorol. 42:169-176).</summary>
public enum HeatCutOff
{
    /// <summary>It counts in full.</summary>
    None,

    /// <summary>It counts no more than the threshold itself.</summary>
    Horizontal,

    /// <summary>It takes away as much as it is above, down to nothing.</summary>
    Intermediate,

    /// <summary>Nothing is counted while it lasts.</summary>
    Vertical,
}
