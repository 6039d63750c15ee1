namespace TrialKit.Numerics.Glm;

/// <summary>What is counted, and on which scale effects add.</summary>
internal enum GlmFamily
{
    /// <summary>Counts out of a known number; effects add on the logit.</summary>
    BinomialLogit,

    /// <summary>Counts without a bound, in proportion to an exposure; effects add on the logarithm.</summary>
    PoissonLog,
}
