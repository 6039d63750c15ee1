namespace TrialKit.Comparison;

/// <summary>What a comparison showed at the trial's level.</summary>
public enum Verdict
{
    /// <summary>No test could be made.</summary>
    NotJudged,

    /// <summary>A difference was shown: p is below alpha.</summary>
    Shown,

    /// <summary>No difference was shown; that is not a showing of no difference.</summary>
    NotShown,

    /// <summary>No difference was shown, and whatever there is was shown to be smaller than a margin set before the trial.</summary>
    Equivalent,
}
