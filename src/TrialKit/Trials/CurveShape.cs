namespace TrialKit.Trials;

/// <summary>A shape of the curve of emergence over time.</summary>
public enum CurveShape
{
    /// <summary>Log-logistic.</summary>
    LogLogistic,

    /// <summary>Log-normal.</summary>
    LogNormal,

    /// <summary>Weibull.</summary>
    Weibull,
}
