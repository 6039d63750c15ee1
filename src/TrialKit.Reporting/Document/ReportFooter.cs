namespace TrialKit.Reporting.Document;

/// <summary>What the foot of every page says beside the page's number.</summary>
/// <param name="Version">The program's name and version, such as <c>TrialKit 0.1.0</c>.</param>
/// <param name="Fingerprint">A short mark of the data the report was made from; null when it was made from no file.</param>
public sealed record ReportFooter(string Version, string? Fingerprint)
{
    /// <summary>Both in words.</summary>
    /// <param name="between">What stands between them.</param>
    public string Words(string between) => Fingerprint is { } mark ? $"{Version}{between}data {mark}" : Version;
}
