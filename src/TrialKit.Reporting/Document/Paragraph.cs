namespace TrialKit.Reporting.Document;

/// <summary>A paragraph.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Size">How large it is set.</param>
public sealed record Paragraph(RichText Text, TextSize Size = TextSize.Body) : Block;
