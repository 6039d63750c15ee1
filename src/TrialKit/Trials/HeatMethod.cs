using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A way to turn a day's temperatures into degree-days: its name, rule, thresholds and source.</summary>
/// <param name="Name">The name as printed beside every figure it gives, such as <c>corn 86/50</c>.</param>
/// <param name="Rule">How the day's temperatures are used.</param>
/// <param name="Lower">Temperature below which nothing is counted.</param>
/// <param name="Upper">Temperature above which no more is counted; null when there is none.</param>
/// <param name="Source">Where the rule and its thresholds come from.</param>
public sealed record HeatMethod(string Name, HeatRule Rule, Temperature Lower, Temperature? Upper, string Source);
