namespace TrialKit.Numerics.Glm;

/// <summary>How a fit of counts ended.</summary>
internal enum GlmStatus
{
    /// <summary>The coefficients are those of greatest likelihood.</summary>
    Converged,

    /// <summary>Every count is 0: nothing to compare.</summary>
    AllZero,

    /// <summary>Every count is full: nothing to compare.</summary>
    AllFull,

    /// <summary>Some combination of levels holds zeros only, or full counts only, so that a coefficient runs to infinity.</summary>
    Separated,

    /// <summary>The iteration stopped before a maximum.</summary>
    NotConverged,
}
