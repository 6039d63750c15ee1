namespace TrialKit.Ingest;

/// <summary>What a weather file leaves open.</summary>
public sealed record WeatherOptions
{
    /// <summary>The station to read; needed where the file holds several.</summary>
    public string? Station { get; init; }

    /// <summary>The unit of temperatures whose column names none: <c>F</c>, <c>C</c> or <c>0.1 C</c>; it is never guessed.</summary>
    public string? Unit { get; init; }

    /// <summary>The longest gap to fill by interpolation, 0 to 3 days; filled days are flagged.</summary>
    public int Fill { get; init; }

    /// <summary>Whether a station's soil temperatures at 5 cm are read in place of the air's.</summary>
    public bool ReadsSoil { get; init; }
}
