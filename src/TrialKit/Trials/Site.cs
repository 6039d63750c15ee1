namespace TrialKit.Trials;

/// <summary>Where the trial lies; every part may be left out.</summary>
/// <param name="Name">The field's name.</param>
/// <param name="Latitude">Degrees north, from -90 to 90.</param>
/// <param name="Longitude">Degrees east, from -180 to 180.</param>
/// <param name="Soil">Soil as described.</param>
/// <param name="Tillage">Tillage as described.</param>
/// <param name="PreviousCrop">The crop before.</param>
public sealed record Site(string? Name, double? Latitude, double? Longitude, string? Soil, string? Tillage, string? PreviousCrop)
{
    /// <summary>The soil's class; null when not given. It is never taken from <see cref="Soil"/>.</summary>
    public SoilClass? SoilClass { get; init; }

    /// <summary>Cation exchange capacity of the topsoil, meq per 100 g (cmol per kg); null when not given.</summary>
    public double? CationExchange { get; init; }
}
