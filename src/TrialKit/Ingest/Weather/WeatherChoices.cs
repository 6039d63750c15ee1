namespace TrialKit.Ingest.Weather;

/// <summary>What a user says of a weather file that the file leaves open.</summary>
/// <param name="Station">The station to read where the file holds several.</param>
/// <param name="Unit">The unit of temperatures whose column names none.</param>
/// <param name="Fill">The longest gap to fill by interpolation, in days; 0 fills none.</param>
/// <param name="SoilDepth">The depth code of soil temperatures in a station's months: 1 is 5 cm, 2 is 10 cm, 3 is 20 cm.</param>
internal sealed record WeatherChoices(string? Station = null, string? Unit = null, int Fill = 0, char SoilDepth = '1')
{
    /// <summary>The columns that <see cref="Unit"/> is for.</summary>
    private static readonly string[] Columns = ["tmax", "tmin", "temperature"];

    /// <summary>The units set for columns, with the one of this file where none is set.</summary>
    public IReadOnlyDictionary<string, string> Units(IReadOnlyDictionary<string, string> set)
    {
        if (Unit is null)
        {
            return set;
        }

        var units = new Dictionary<string, string>(set, StringComparer.Ordinal);
        foreach (var column in Columns)
        {
            units.TryAdd(column, Unit);
        }

        return units;
    }
}
