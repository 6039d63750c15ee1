namespace TrialKit.Reporting.Document;

/// <summary>One fact of a line of facts.</summary>
/// <param name="Name">What it is, such as <c>planted</c>.</param>
/// <param name="Value">Its value, such as <c>April 27, 2026</c>.</param>
public sealed record KeyFact(string Name, string Value);
