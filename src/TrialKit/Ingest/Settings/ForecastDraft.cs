using TrialKit.Ingest.Weather;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Settings;

/// <summary>The section <c>[forecast]</c>, before the files it names are read.</summary>
internal sealed record ForecastDraft
{
    public ForecastSettings Settings { get; init; } = new();

    /// <summary>The file of forecast days.</summary>
    public string? File { get; init; }

    /// <summary>What the section says of the file of forecast days.</summary>
    public WeatherChoices Choices { get; init; } = new();

    /// <summary>The file of earlier years.</summary>
    public string? NormalsFile { get; init; }

    /// <summary>What the section says of the file of earlier years.</summary>
    public WeatherChoices NormalsChoices { get; init; } = new();

    /// <summary>The settings with the planting depth and the days of the files.</summary>
    /// <param name="depth">The planting depth.</param>
    /// <param name="fill">The longest gap that the weather file's days are filled over.</param>
    /// <param name="forecast">Days of the forecast.</param>
    /// <param name="normals">Days of earlier years.</param>
    public ForecastSettings With(Length? depth, int fill, TemperatureSeries? forecast, TemperatureSeries? normals) => Settings with
    {
        Fill = fill,
        Conditions = Settings.Conditions with { Depth = depth },
        Days = forecast,
        Normals = normals,
    };
}
