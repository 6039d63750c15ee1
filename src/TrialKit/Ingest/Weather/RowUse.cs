namespace TrialKit.Ingest.Weather;

/// <summary>What became of a row of a station's file.</summary>
internal enum RowUse
{
    /// <summary>It has an error, which is listed.</summary>
    Faulty,

    /// <summary>It is part of a day.</summary>
    Used,

    /// <summary>It is left out, and a warning says so.</summary>
    LeftOut,

    /// <summary>It is of another station, element or season, or says that nothing was recorded.</summary>
    PassedOver,
}
