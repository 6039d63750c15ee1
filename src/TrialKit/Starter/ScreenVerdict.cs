namespace TrialKit.Starter;

/// <summary>How an amount stands to one source's limit.</summary>
public enum ScreenVerdict
{
    /// <summary>Under the limit; no proof of safety.</summary>
    Under,

    /// <summary>At the limit: the amount, rounded as the limit is printed, is the limit. It may be a little over before rounding.</summary>
    AtLimit,

    /// <summary>Over the limit after rounding as it is printed; no proof of injury.</summary>
    Over,

    /// <summary>The source has no limit for this crop, placement or row spacing.</summary>
    NotCovered,

    /// <summary>The source's limit depends on the soil, which was not given.</summary>
    SoilNotKnown,

    /// <summary>The amount is not known, for want of an analysis or a density.</summary>
    AmountNotKnown,
}
