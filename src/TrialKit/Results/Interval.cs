using TrialKit.Quantities;

namespace TrialKit.Results;

/// <summary>A confidence interval.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end, never below the lower.</param>
/// <param name="Level">Its level.</param>
public readonly record struct Interval(double Low, double High, ConfidenceLevel Level)
{
    /// <summary>Whether a value lies strictly within.</summary>
    public bool Holds(double value) => value > Low && value < High;
}
