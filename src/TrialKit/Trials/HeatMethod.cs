using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A way to turn a day's temperatures into heat units: its name, rule, thresholds and source.</summary>
/// <param name="Name">The name as printed beside every figure it gives, such as <c>corn 86/50</c>.</param>
/// <param name="Rule">How the day's temperatures are used.</param>
/// <param name="Lower">Temperature below which nothing is counted; of no account for crop heat units.</param>
/// <param name="Upper">Temperature above which no more is counted; null when there is none.</param>
/// <param name="Source">Where the rule and its thresholds come from.</param>
public sealed record HeatMethod(string Name, HeatRule Rule, Temperature Lower, Temperature? Upper, string Source)
{
    /// <summary>What warmth above the upper threshold does where the rule follows the temperature through the day.</summary>
    public HeatCutOff CutOff { get; init; } = HeatCutOff.Horizontal;

    /// <summary>Whether the two parts of crop heat units are each kept from falling below zero, as Ontario does.</summary>
    public bool IsFloored { get; init; } = true;

    /// <summary>Whether it counts degree-days; crop heat units are a scale of their own.</summary>
    public bool IsDegreeDays => Rule != HeatRule.CropHeatUnits;

    /// <summary>Whether it follows the temperature through the day by a curve.</summary>
    public bool HasCurve => Rule is HeatRule.SingleSine or HeatRule.DoubleSine or HeatRule.SingleTriangle or HeatRule.DoubleTriangle;

    /// <summary>Whether it needs the next day's minimum.</summary>
    public bool IsDouble => Rule is HeatRule.DoubleSine or HeatRule.DoubleTriangle;
}
