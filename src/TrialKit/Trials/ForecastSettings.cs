namespace TrialKit.Trials;

/// <summary>How the emergence date is foretold.</summary>
public sealed record ForecastSettings
{
    /// <summary>The heat from planting to emergence by the trial's own method; null takes the crop's published one.</summary>
    public HeatRange? Need { get; init; }

    /// <summary>The field's conditions.</summary>
    public FieldConditions Conditions { get; init; } = new(Depth: null, Residue: null, Texture: null, DrySeedZone: false);

    /// <summary>The last day of the weather record that was observed; null when all of it was.</summary>
    public DateOnly? ObservedUntil { get; init; }

    /// <summary>Days of a weather forecast; null when there are none.</summary>
    public TemperatureSeries? Days { get; init; }

    /// <summary>Days of earlier years, whose means stand in for what no forecast covers; null when there are none.</summary>
    public TemperatureSeries? Normals { get; init; }
}
