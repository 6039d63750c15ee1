namespace TrialKit.Ingest.Cells;

/// <summary>What a cell that should hold a date holds.</summary>
internal enum DateResult
{
    /// <summary>A date of the calendar.</summary>
    Date,

    /// <summary>Something else.</summary>
    NotDate,

    /// <summary>A date or time in the right form that the calendar or the clock does not have.</summary>
    NoSuchDate,
}
