namespace TrialKit.Ingest.Weather;

/// <summary>The forms in which weather comes.</summary>
internal enum WeatherFormat
{
    /// <summary>A table with a header: days with their extremes, or temperatures of every hour or oftener.</summary>
    Table,

    /// <summary>Daily data of the Global Historical Climatology Network, a month of one element a line in fixed columns (<c>.dly</c>).</summary>
    StationMonths,

    /// <summary>Daily data of the same network, a value a line, without a header.</summary>
    StationValues,

    /// <summary>Daily grid data of NASA's POWER project below its own heading; -999 is a missing value.</summary>
    PowerGrid,

    /// <summary>Daily grid data of Daymet below its own heading; a year has 365 days, and December 31 is dropped in a leap year.</summary>
    DaymetGrid,
}
