using System.Collections.Immutable;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;

namespace TrialKit.Reporting.Sheets;

/// <summary>What the sheets of a trial need beyond the trial.</summary>
/// <param name="PageSize">The paper.</param>
/// <param name="Visits">Days of visits that are known; may be empty.</param>
/// <param name="Inputs">The files the sheets are made from, with the mark of their content.</param>
public sealed record SheetSettings(PageSize PageSize, ImmutableArray<DateOnly> Visits, IReadOnlyList<ReportInput> Inputs);
