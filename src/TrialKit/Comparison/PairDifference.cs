using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>One pair of strips.</summary>
/// <param name="Block">The pair's name.</param>
/// <param name="Treated">The strip with the treatment.</param>
/// <param name="Control">The strip with the control.</param>
/// <param name="TreatedValue">Its value, in the measure's unit.</param>
/// <param name="ControlValue">Its value, in the measure's unit.</param>
public sealed record PairDifference(string Block, Strip Treated, Strip Control, double TreatedValue, double ControlValue)
{
    /// <summary>Treatment less control.</summary>
    public double Difference => TreatedValue - ControlValue;
}
