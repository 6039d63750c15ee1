namespace TrialKit.Reporting.Document;

/// <summary>What an interval mark says beside its place.</summary>
public enum MarkTone
{
    /// <summary>A difference was shown: a filled dot, a strong bar.</summary>
    Shown,

    /// <summary>No difference was shown: a hollow dot, a light bar.</summary>
    NotShown,
}
