namespace TrialKit.Results;

/// <summary>What sort of number a measure is; it decides how the number is rounded in print.</summary>
public enum MeasureKind
{
    /// <summary>Anything else: rounded to four figures.</summary>
    Other,

    /// <summary>Plants per area.</summary>
    Stand,

    /// <summary>A share of 100 %.</summary>
    Share,

    /// <summary>Days.</summary>
    Time,

    /// <summary>Degree-days.</summary>
    Heat,

    /// <summary>A short length such as a spacing or a depth.</summary>
    Length,

    /// <summary>Grain per area.</summary>
    Yield,
}
