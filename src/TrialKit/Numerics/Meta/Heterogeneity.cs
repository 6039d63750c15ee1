namespace TrialKit.Numerics.Meta;

/// <summary>How the variance between sites is estimated.</summary>
internal enum Heterogeneity
{
    /// <summary>Taken as nil: one common effect.</summary>
    Common,

    /// <summary>Moments (DerSimonian and Laird 1986, Controlled Clinical Trials 7:177).</summary>
    DerSimonianLaird,

    /// <summary>Restricted maximum likelihood.</summary>
    Reml,

    /// <summary>Moments iterated until Q equals its expectation (Paule and Mandel 1982, J. Res. NBS 87:377).</summary>
    PauleMandel,
}
