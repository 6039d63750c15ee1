namespace TrialKit.Numerics.Power;

/// <summary>Which rejections of a two-sided test count towards its power.</summary>
internal enum Rejection
{
    /// <summary>Only those that also get the sign right; a significant difference the wrong way is no success.</summary>
    TrueDirection,

    /// <summary>Either way, so that the power at no difference is the level of the test.</summary>
    EitherDirection,
}
