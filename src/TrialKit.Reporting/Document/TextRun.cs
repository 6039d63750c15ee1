namespace TrialKit.Reporting.Document;

/// <summary>A stretch of text in one emphasis.</summary>
/// <param name="Text">The text; spaces are kept.</param>
/// <param name="Emphasis">How it stands out.</param>
public sealed record TextRun(string Text, Emphasis Emphasis = Emphasis.None);
