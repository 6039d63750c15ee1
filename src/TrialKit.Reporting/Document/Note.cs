namespace TrialKit.Reporting.Document;

/// <summary>A finding about the trial or its data, set apart from the text.</summary>
/// <param name="Weight">How much it weighs.</param>
/// <param name="Heading">The finding in a few words.</param>
/// <param name="Text">What was found and what it means.</param>
public sealed record Note(NoteWeight Weight, string Heading, RichText Text) : Block;
