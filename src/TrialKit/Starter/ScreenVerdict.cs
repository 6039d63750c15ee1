namespace TrialKit.Starter;

/// <summary>How an amount stands to one source's limit.</summary>
public enum ScreenVerdict
{
    /// <summary>At the limit or under it; no proof of safety.</summary>
    Under,

    /// <summary>Over the limit; no proof of injury.</summary>
    Over,

    /// <summary>The source has no limit for this crop, placement or row spacing.</summary>
    NotCovered,

    /// <summary>The source's limit depends on the soil, which was not given.</summary>
    SoilNotKnown,

    /// <summary>The amount is not known, for want of an analysis or a density.</summary>
    AmountNotKnown,
}
