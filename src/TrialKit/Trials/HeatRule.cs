namespace TrialKit.Trials;

/// <summary>How a day's temperatures become degree-days.</summary>
public enum HeatRule
{
    /// <summary>The mean of maximum and minimum less the lower threshold, never below zero.</summary>
    SimpleAverage,

    /// <summary>Maximum and minimum are each brought within the thresholds, then averaged (McMaster and Wilhelm 1997, method 2).</summary>
    ExtremesClipped,
}
