namespace TrialKit.Reporting.Figures;

/// <summary>How a line is broken, so that lines of one tone can be told apart.</summary>
internal enum LineStroke
{
    /// <summary>Unbroken.</summary>
    Whole,

    /// <summary>By dashes.</summary>
    Dashed,

    /// <summary>By dots.</summary>
    Dotted,
}
