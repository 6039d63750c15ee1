namespace TrialKit.Ingest.Weather;

/// <summary>What a user says of a weather file that the file leaves open.</summary>
/// <param name="Station">The station to read where the file holds several.</param>
/// <param name="Unit">The unit of temperatures whose column names none.</param>
/// <param name="Fill">The longest gap to fill by interpolation, in days; 0 fills none.</param>
/// <param name="SoilDepth">The depth code of soil temperatures in a station's months: 1 is 5 cm, 2 is 10 cm, 3 is 20 cm.</param>
internal sealed record WeatherChoices(string? Station = null, string? Unit = null, int Fill = 0, char SoilDepth = '1')
{
    private const string WeatherTable = "weather.";

    /// <summary>The columns that <see cref="Unit"/> is for.</summary>
    private static readonly string[] Columns = ["tmax", "tmin", "temperature"];

    /// <summary>The key of <c>trial.toml</c> that chooses the station, for messages.</summary>
    public string StationKey { get; init; } = "station";

    /// <summary>The section that the key stands in.</summary>
    public string Section { get; init; } = "weather";

    /// <summary>Whether the file is a further one, to which the units of the table <c>weather</c> do not belong.</summary>
    public bool IsFurther { get; init; }

    /// <summary>Whether soil temperatures are asked of a file that has to say itself that it holds them.</summary>
    public bool NeedsSoilElements { get; init; }

    /// <summary>The units set for columns, with the one of this file where none is set.</summary>
    public IReadOnlyDictionary<string, string> Units(IReadOnlyDictionary<string, string> set)
    {
        if (Unit is null && !IsFurther)
        {
            return set;
        }

        var units = set.Where(unit => !IsFurther || !unit.Key.StartsWith(WeatherTable, StringComparison.Ordinal)).ToDictionary(StringComparer.Ordinal);
        if (Unit is null)
        {
            return units;
        }

        foreach (var column in Columns)
        {
            units.TryAdd(column, Unit);
        }

        return units;
    }
}
