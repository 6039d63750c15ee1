namespace TrialKit.Ingest.Weather;

/// <summary>The air and soil temperatures that can be: beyond them a value is a slip, or its unit is wrong.</summary>
internal static class TemperatureLimits
{
    /// <summary>The lowest, in degrees Celsius.</summary>
    public const double LowestCelsius = -60;

    /// <summary>The highest, in degrees Celsius.</summary>
    public const double HighestCelsius = 60;
}
