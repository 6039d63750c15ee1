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

    /// <summary>Days of a weather forecast, of the air; null when there are none.</summary>
    public TemperatureSeries? Days { get; init; }

    /// <summary>Days of earlier years, which stand in for what no forecast covers; null when there are none.</summary>
    public TemperatureSeries? Normals { get; init; }

    /// <summary>Whether the earlier years are of the soil's temperatures.</summary>
    public bool NormalsAreSoil { get; init; }

    /// <summary>The longest gap between the record and the forecast to fill by interpolation, 0 to 3 days.</summary>
    public int Fill { get; init; }
}
