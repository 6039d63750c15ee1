namespace TrialKit.Reporting.Sheets;

/// <summary>What cells of a column of the workbook hold.</summary>
internal enum SheetCell
{
    /// <summary>Text, which a spreadsheet must not turn into a date.</summary>
    Text,

    /// <summary>The name of a strip, chosen from a list.</summary>
    Strip,

    /// <summary>A whole number of 0 or more.</summary>
    Count,

    /// <summary>A number of 0 or more.</summary>
    Number,

    /// <summary>A percentage from 0 to 60.</summary>
    Moisture,

    /// <summary>A date, with the hour where it is known.</summary>
    Date,
}
