using TrialKit.Ingest;

namespace TrialKit.Reporting.Report;

/// <summary>The mark of a report's input files together.</summary>
internal static class Fingerprint
{
    /// <summary>The mark; null where no file was read.</summary>
    public static string? Of(IReadOnlyList<ReportInput> inputs) =>
        inputs.Count == 0 ? null : InputFile.Fingerprint(inputs.Select(input => (input.Name, input.Sha256)));
}
