using TrialKit.Trials;

namespace TrialKit.Ingest.Weather;

/// <summary>A temperature series and where it came from.</summary>
/// <param name="Series">The series; null when there is none or it has errors.</param>
/// <param name="Start">Where its table begins.</param>
/// <param name="Rows">What became of its rows; null when there is no table.</param>
internal sealed record TemperatureRecords(TemperatureSeries? Series, ProblemLocation? Start, TableRows? Rows)
{
    /// <summary>The form in which the file was recognised, in words; null when there is no table.</summary>
    public string? Form { get; init; }

    /// <summary>The station that was read; null where the file names none.</summary>
    public string? Station { get; init; }

    /// <summary>No table.</summary>
    public static TemperatureRecords None { get; } = new(null, null, null);
}
