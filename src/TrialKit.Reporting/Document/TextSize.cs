namespace TrialKit.Reporting.Document;

/// <summary>The size of a paragraph's text.</summary>
public enum TextSize
{
    /// <summary>The size reports are read at.</summary>
    Body,

    /// <summary>Larger, for a sentence that leads.</summary>
    Lead,

    /// <summary>Smaller, for what stands beside the matter.</summary>
    Small,
}
