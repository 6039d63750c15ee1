using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Weather;

/// <summary>Which station of a file is read: the one chosen, or the only one.</summary>
/// <param name="choices">The station chosen, or none, and the key that chooses it.</param>
/// <param name="problems">Takes a choice that is missing or fits no station.</param>
internal sealed class StationChoice(WeatherChoices choices, ProblemList problems)
{
    private readonly string? wanted = choices.Station;
    private readonly List<string> _stations = [];
    private ProblemLocation? _second;

    /// <summary>The station that is read; null before its first row.</summary>
    public string? Station { get; private set; }

    /// <summary>Whether the rows of a station are read.</summary>
    /// <param name="station">The station of a row.</param>
    /// <param name="at">Finds the row's place, asked for once.</param>
    public bool IsRead(string station, Func<ProblemLocation> at)
    {
        if (!_stations.Contains(station, StringComparer.Ordinal))
        {
            _stations.Add(station);
            _second ??= _stations.Count == 2 ? at() : null;
            Station ??= wanted is null || string.Equals(wanted, station, StringComparison.OrdinalIgnoreCase) ? station : null;
        }

        return string.Equals(station, Station, StringComparison.Ordinal);
    }

    /// <summary>Adds an error when the file holds several stations and none is chosen, or not the one chosen.</summary>
    /// <param name="start">The file's first place.</param>
    /// <returns>Whether the station is settled.</returns>
    public bool Finish(ProblemLocation start)
    {
        if (_stations.Count > 1 && wanted is null)
        {
            problems.Add(WeatherProblems.SeveralStations(_second!, _stations, choices.StationKey, choices.Section));
            return false;
        }

        if (_stations.Count > 0 && Station is null)
        {
            problems.Add(WeatherProblems.NoSuchStation(start, wanted!, _stations));
            return false;
        }

        return true;
    }
}
