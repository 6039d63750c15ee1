using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Settings;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Weather;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>The records of every table.</summary>
internal sealed record TrialTables
{
    public required RecordTable<Strip> Strips { get; init; }

    /// <summary>Whether a row of the strips had an error, so that a block may look emptier than it is.</summary>
    public required bool StripsHaveErrors { get; init; }

    public required RecordTable<PlannedSpot> Spots { get; init; }

    public required RecordTable<StandCount> StandCounts { get; init; }

    public required SpotRecords Emergence { get; init; }

    public required RecordTable<Plant> Plants { get; init; }

    public required RecordTable<StripHarvest> Harvests { get; init; }

    public required RecordTable<StripMeasurement> Measurements { get; init; }

    public required TemperatureRecords Weather { get; init; }

    public required TemperatureRecords SoilTemperature { get; init; }

    /// <summary>Days of a weather forecast.</summary>
    public required TemperatureRecords Forecast { get; init; }

    /// <summary>Days of earlier years, whose means stand for days that no forecast covers.</summary>
    public required TemperatureRecords Normals { get; init; }

    /// <summary>What became of the rows of each table there is.</summary>
    public IReadOnlyList<TableRows> Rows =>
        [.. new[]
        {
            Strips.Rows(), Spots.Rows(), StandCounts.Rows(), Emergence.Spots.Rows(Emergence.Visits), Plants.Rows(),
            Harvests.Rows(), Measurements.Rows(), Weather.Rows, SoilTemperature.Rows,
        }.OfType<TableRows>()];

    private bool HasNothingMeasured =>
        StandCounts.Items.IsEmpty && Emergence.Spots.Items.IsEmpty && Plants.Items.IsEmpty && Harvests.Items.IsEmpty && Measurements.Items.IsEmpty;

    /// <summary>Reads every table, in the order in which their problems are listed.</summary>
    public static TrialTables Read(TrialSettings settings, TableSource source, FileRanks ranks, ProblemList problems)
    {
        var index = new StripIndex(problems);
        ranks.Begin("strips");
        var before = problems.Errors;
        var strips = new StripReader(settings, source, index, problems).Read();
        var stripErrors = problems.Errors > before;
        ranks.Begin("spots");
        var planned = new PlannedSpotReader(source, index, problems).Read();
        before = problems.Errors;
        ranks.Begin("stand-counts");
        var stands = new StandCountReader(source, index, problems).Read();
        ranks.Begin("emergence");
        var emergence = new EmergenceReader(source, index, problems).Read();

        // A spot whose own rows had errors is not in the index: then a plant of it proves nothing.
        var spots = problems.Errors == before ? SpotIndex.Of(emergence.Spots.Items, stands.Items) : null;
        ranks.Begin("plants");
        var plants = new PlantReader(source, index, problems).Read(spots);
        ranks.Begin("harvest");
        var harvests = new HarvestReader(source, index, problems).Read();
        ranks.Begin("measures");
        var measurements = new MeasureReader(source, index, problems).Read();
        ranks.Begin("weather");
        var weather = new TemperatureReader(source, settings.PlantingDate, settings.WeatherChoices, problems).Read("weather", settings.WeatherFile);
        var forecast = settings.Forecast.File is { } days
            ? new TemperatureReader(source, settings.PlantingDate, settings.Forecast.Choices with { Fill = settings.WeatherChoices.Fill }, problems).Read("weather", days)
            : TemperatureRecords.None;
        var normals = settings.Forecast.NormalsFile is { } years
            ? new TemperatureReader(source, planted: null, settings.Forecast.NormalsChoices with { SoilDepth = settings.WeatherChoices.SoilDepth, NeedsSoilElements = settings.Forecast.Settings.NormalsAreSoil }, problems).Read(settings.Forecast.Settings.NormalsAreSoil ? "soil-temperature" : "weather", years)
            : TemperatureRecords.None;
        ranks.Begin("soil-temperature");
        var soil = new TemperatureReader(source, settings.PlantingDate, settings.WeatherChoices with { Unit = null, Station = settings.SoilStation, StationKey = "soil_station" }, problems).Read("soil-temperature");
        var read = new TrialTables
        {
            Strips = strips,
            StripsHaveErrors = stripErrors,
            Spots = planned,
            StandCounts = stands,
            Emergence = emergence,
            Plants = plants,
            Harvests = harvests,
            Measurements = measurements,
            Weather = weather,
            SoilTemperature = soil,
            Forecast = forecast,
            Normals = normals,
        };
        if (read.HasNothingMeasured)
        {
            // The tables of a plan are there to be filled: that they are empty is no surprise.
            problems.Withdraw(TableProblems.NoRowsCode);
        }

        return read;
    }
}
