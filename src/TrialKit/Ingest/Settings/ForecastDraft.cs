using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Settings;

/// <summary>The section <c>[forecast]</c>, before the files it names are read.</summary>
internal sealed record ForecastDraft
{
    public ForecastSettings Settings { get; init; } = new();

    /// <summary>The file of forecast days.</summary>
    public string? File { get; init; }

    /// <summary>The file of earlier years.</summary>
    public string? NormalsFile { get; init; }

    /// <summary>The settings with the planting depth and the days of the files.</summary>
    public ForecastSettings With(Length? depth, TemperatureSeries? forecast, TemperatureSeries? normals) => Settings with
    {
        Conditions = Settings.Conditions with { Depth = depth },
        Days = forecast,
        Normals = normals,
    };
}
