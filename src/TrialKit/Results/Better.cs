namespace TrialKit.Results;

/// <summary>Which way of a measure the trade agrees to call better.</summary>
public enum Better
{
    /// <summary>No agreement: results say more or less, never better or worse.</summary>
    Unsaid,

    /// <summary>More is better.</summary>
    Higher,

    /// <summary>Less is better.</summary>
    Lower,
}
