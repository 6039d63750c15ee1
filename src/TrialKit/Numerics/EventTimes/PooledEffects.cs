namespace TrialKit.Numerics.EventTimes;

/// <summary>The parts of the curve that covariates may move, each on its working scale.</summary>
[Flags]
internal enum PooledEffects
{
    /// <summary>No part: one curve for all.</summary>
    None = 0,

    /// <summary>ln e: a covariate multiplies every time.</summary>
    Location = 1,

    /// <summary>ln b.</summary>
    Slope = 2,

    /// <summary>logit d.</summary>
    Share = 4,
}
