namespace TrialKit.Planning;

/// <summary>A half of the planter, seen by whoever drives it.</summary>
public enum PlanterSide
{
    /// <summary>The left half.</summary>
    Left,

    /// <summary>The right half.</summary>
    Right,
}
