namespace TrialKit.Reporting.Fonts;

/// <summary>The four faces that every report, figure and sheet is set in.</summary>
internal enum BundledFace
{
    /// <summary>Upright, weight 400.</summary>
    Regular,

    /// <summary>Italic, weight 400.</summary>
    Italic,

    /// <summary>Upright, weight 600.</summary>
    SemiBold,

    /// <summary>Italic, weight 600.</summary>
    SemiBoldItalic,
}
