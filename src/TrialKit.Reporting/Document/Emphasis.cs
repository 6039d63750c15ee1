namespace TrialKit.Reporting.Document;

/// <summary>How a run of text stands out from its neighbours.</summary>
[Flags]
public enum Emphasis
{
    /// <summary>Plain text.</summary>
    None = 0,

    /// <summary>Heavier.</summary>
    Strong = 1,

    /// <summary>Italic.</summary>
    Italic = 2,

    /// <summary>Lighter in tone, for what may be passed over.</summary>
    Quiet = 4,
}
