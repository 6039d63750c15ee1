using TrialKit.Trials;

namespace TrialKit.Ingest;

/// <summary>What reading a weather file gave.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Form">The form in which it was recognised, in words; null when it was not.</param>
/// <param name="Station">The station that was read; null where the file names none.</param>
/// <param name="Series">The days; null when there is an error.</param>
/// <param name="Problems">Errors and warnings in the order of their places.</param>
public sealed record WeatherReading(string File, string? Form, string? Station, TemperatureSeries? Series, IReadOnlyList<Problem> Problems);
