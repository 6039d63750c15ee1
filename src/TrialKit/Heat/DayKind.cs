namespace TrialKit.Heat;

/// <summary>What a day's temperatures rest on.</summary>
public enum DayKind
{
    /// <summary>They were measured.</summary>
    Observed,

    /// <summary>They were not recorded and are interpolated between the days about them.</summary>
    Filled,

    /// <summary>They are a weather forecast.</summary>
    Forecast,

    /// <summary>They are means of earlier years.</summary>
    Normal,
}
