namespace TrialKit.Trials;

/// <summary>How strips were laid out.</summary>
public enum Layout
{
    /// <summary>Two treatments side by side, pair after pair.</summary>
    Pairs,

    /// <summary>Blocks that hold each treatment once.</summary>
    Blocks,
}
