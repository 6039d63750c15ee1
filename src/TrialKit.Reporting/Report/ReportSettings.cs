using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Report;

/// <summary>What a report needs to know beside the analysis.</summary>
/// <param name="PageSize">The sheet it is printed on.</param>
/// <param name="Inputs">The files that were read, with the mark of their content.</param>
/// <param name="Warnings">The warnings of the reading, as printed.</param>
public sealed record ReportSettings(PageSize PageSize, IReadOnlyList<ReportInput> Inputs, IReadOnlyList<string> Warnings);
