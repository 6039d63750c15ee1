namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>A wrong answer that is often given, and why it is wrong.</summary>
/// <param name="Heading">The wrong answer in a few words.</param>
/// <param name="Why">How it comes about and why it is wrong.</param>
/// <param name="Steps">What it comes to with the numbers of this sheet; may be empty.</param>
public sealed record WrongAnswer(string Heading, string Why, params IReadOnlyList<KeyStep> Steps);
