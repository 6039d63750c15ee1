namespace TrialKit.Reporting.Report;

/// <summary>A file the report was made from.</summary>
/// <param name="Name">Its name in the trial folder.</param>
/// <param name="Sha256">The SHA-256 of its bytes, in lower-case hexadecimal.</param>
/// <param name="Rows">Rows of data read from it; null for a file that is no table.</param>
public sealed record ReportInput(string Name, string Sha256, int? Rows);
