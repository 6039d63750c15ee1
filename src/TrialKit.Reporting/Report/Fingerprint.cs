using TrialKit.Ingest;

namespace TrialKit.Reporting.Report;

/// <summary>The mark of a report's input files together.</summary>
internal static class Fingerprint
{
    public static string Of(IReadOnlyList<ReportInput> inputs) => InputFile.Fingerprint(inputs.Select(input => (input.Name, input.Sha256)));
}
