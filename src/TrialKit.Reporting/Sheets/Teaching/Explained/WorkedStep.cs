namespace TrialKit.Reporting.Sheets.Teaching.Explained;

/// <summary>A step in the working of a real comparison, at full precision.</summary>
/// <param name="Id">A stable name, such as <c>error</c>.</param>
/// <param name="Label">What is worked out.</param>
/// <param name="Work">How, with its numbers.</param>
/// <param name="Value">What it comes to.</param>
internal sealed record WorkedStep(string Id, string Label, string Work, double Value);
