using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Weather;
using TrialKit.Trials;

namespace TrialKit.Ingest;

/// <summary>Reads a weather file alone, in any of the forms that are recognised by their content.</summary>
public static class WeatherReader
{
    /// <summary>Reads every day of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What the file leaves open.</param>
    /// <returns>The days with the form in which they were recognised, or every problem found in one run.</returns>
    /// <remarks>Bad input never throws; it is reported with its place.</remarks>
    /// <exception cref="ArgumentException">The path is empty, the unit is none that is known, or the gap to fill is outside 0 to 3 days.</exception>
    public static WeatherReading Read(string path, WeatherOptions? options = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        options ??= new WeatherOptions();
        var unit = options.Unit is null ? null : UnitKinds.Temperature.Find(options.Unit)
            ?? throw new ArgumentException($"The unit '{options.Unit}' was found; one of {Wording.Or(UnitKinds.Temperature.Units)} was expected.", nameof(options));
        if (options.Fill is < 0 or > TemperatureSeries.LongestFill)
        {
            throw new ArgumentException(FormattableString.Invariant($"Gaps of up to {options.Fill} days were to be filled; 0 to {TemperatureSeries.LongestFill} days were expected."), nameof(options));
        }

        var problems = new ProblemList();
        var file = Path.GetFileName(path);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? path;
        if (!Path.Exists(path))
        {
            problems.Add(FileProblems.Missing(path, "a file of weather was expected"));
            return new WeatherReading(path, Form: null, Station: null, Series: null, problems.InFileOrder());
        }

        var source = new TableSource(folder, problems, usesWorkbook: false) { Units = new Dictionary<string, string>(StringComparer.Ordinal), Dates = DateOrder.Iso };
        var records = new TemperatureReader(source, planted: null, new WeatherChoices(options.Station, unit, options.Fill) { NeedsSoilElements = options.ReadsSoil }, problems)
            .Read(options.ReadsSoil ? "soil-temperature" : "weather", file);
        return new WeatherReading(path, records.Form, records.Station, problems.Errors == 0 ? records.Series : null, problems.InFileOrder());
    }
}
