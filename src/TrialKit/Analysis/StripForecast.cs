using TrialKit.Heat;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>When a strip was foretold to emerge, and when half of its plants were up.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Forecast">The forecast for its planting date.</param>
/// <param name="ObservedDays">Observed time to half of the plants, in days after planting.</param>
public sealed record StripForecast(Strip Strip, EmergenceForecast Forecast, double ObservedDays)
{
    /// <summary>Whether the observed time lies before the foretold range, in it or after it; null when an end of the range is not reached within the days on hand and leaves it open.</summary>
    public int? Side =>
        ObservedDays < Forecast.Low?.DaysAfterPlanting ? -1
        : ObservedDays > Forecast.High?.DaysAfterPlanting ? 1
        : Forecast is { Low: not null, High: not null } ? 0
        : null;
}
