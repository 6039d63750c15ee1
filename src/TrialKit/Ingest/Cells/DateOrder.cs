namespace TrialKit.Ingest.Cells;

/// <summary>The order of day, month and year in the dates of a trial's files.</summary>
internal enum DateOrder
{
    /// <summary>Only <c>2026-05-04</c>, the default.</summary>
    Iso,

    /// <summary><c>5/4/2026</c> is 4 May.</summary>
    MonthDayYear,

    /// <summary><c>4/5/2026</c> is 4 May.</summary>
    DayMonthYear,
}
