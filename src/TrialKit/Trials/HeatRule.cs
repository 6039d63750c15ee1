namespace TrialKit.Trials;

/// <summary>How a day's temperatures become heat units.</summary>
public enum HeatRule
{
    /// <summary>The mean of maximum and minimum less the lower threshold, never below zero.</summary>
    SimpleAverage,

    /// <summary>Maximum and minimum are each brought within the thresholds, then averaged (McMaster and Wilhelm 1997, method 2).</summary>
    ExtremesClipped,

    /// <summary>The mean of maximum and minimum is brought within the thresholds (McMaster and Wilhelm 1997, method 1).</summary>
    MeanClipped,

    /// <summary>A sine from the minimum to the maximum and back (Baskerville and Emin 1969).</summary>
    SingleSine,

    /// <summary>Two half sines: up from the minimum, down to the next day's minimum (Allen 1976).</summary>
    DoubleSine,

    /// <summary>Straight lines from the minimum to the maximum and back (Sevacherian and others 1977).</summary>
    SingleTriangle,

    /// <summary>Straight lines up from the minimum and down to the next day's minimum.</summary>
    DoubleTriangle,

    /// <summary>The mean of what each hour's temperature, brought below the upper threshold, is above the lower.</summary>
    Hourly,

    /// <summary>Crop heat units, which are no degree-days: a curve for the day's maximum and a line for the night's minimum (Brown and Bootsma 1993).</summary>
    CropHeatUnits,
}
