namespace TrialKit.Trials;

/// <summary>What one strip is, seen from the planter.</summary>
public enum StripShare
{
    /// <summary>One planter pass or more, side by side.</summary>
    Passes,

    /// <summary>The left or the right half of one pass; the other half is the other strip of the pair.</summary>
    PlanterHalf,
}
