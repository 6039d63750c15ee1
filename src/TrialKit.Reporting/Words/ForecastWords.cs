using System.Globalization;
using TrialKit.Heat;

namespace TrialKit.Reporting.Words;

/// <summary>How a forecast of emergence is spoken of.</summary>
public static class ForecastWords
{
    /// <summary>A foretold date and what it rests on, or why there is none.</summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="date">One of its dates.</param>
    public static string When(EmergenceForecast forecast, ForecastDate? date)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return date is not null ? $"{Day(date.Date)} {Kind(date.Kind)}"
            : forecast.Clock.Gap is not null ? "unknown, day missing"
            : "not reached";
    }

    /// <summary>What a day rests on.</summary>
    public static string Kind(DayKind kind) => kind switch
    {
        DayKind.Observed => "observed",
        DayKind.Filled => "filled",
        DayKind.Forecast => "forecast",
        DayKind.Normal => "normal",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "An unknown kind of day was found."),
    };

    /// <summary>The heat needed, by which method, from where, and each adjustment.</summary>
    public static IEnumerable<string> Need(HeatNeed need, bool countsPlantingDay)
    {
        ArgumentNullException.ThrowIfNull(need);
        var range = need.Range;
        yield return range.Low == range.High
            ? string.Create(CultureInfo.InvariantCulture, $"Heat needed: {range.Mid.FahrenheitDays:0.#} F-days by {need.Method.Name} ({need.Source}); planting day {(countsPlantingDay ? "" : "not ")}counted.")
            : string.Create(CultureInfo.InvariantCulture, $"Heat needed: {range.Low.FahrenheitDays:0.#}, {range.Mid.FahrenheitDays:0.#} or {range.High.FahrenheitDays:0.#} F-days by {need.Method.Name} ({need.Source}); planting day {(countsPlantingDay ? "" : "not ")}counted.");
        foreach (var each in need.Adjustments)
        {
            yield return each.LowFahrenheitDays == each.HighFahrenheitDays
                ? string.Create(CultureInfo.InvariantCulture, $"Adjusted by {each.LowFahrenheitDays:+0.#;-0.#} F-days for {each.Condition} ({each.Source}).")
                : string.Create(CultureInfo.InvariantCulture, $"Adjusted by {each.LowFahrenheitDays:+0.#;-0.#} to {each.HighFahrenheitDays:+0.#;-0.#} F-days for {each.Condition} ({each.Source}).");
        }

        if (need.Adjustments.Length > 1)
        {
            yield return "The source gives the adjustments one by one; that they add up is taken here, not printed there.";
        }
    }

    /// <summary>The heat gathered by the last day on hand, where the count stopped short; null when the most of the need was met.</summary>
    public static string? Short(EmergenceForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.High is not null)
        {
            return null;
        }

        return forecast.Clock.Gap is { } gap
            ? string.Create(CultureInfo.InvariantCulture, $"Planted {Day(forecast.Planted)}: at least {forecast.Gathered.FahrenheitDays:0.0} F-days, incomplete, since {Day(gap)} is missing.")
            : string.Create(CultureInfo.InvariantCulture, $"Planted {Day(forecast.Planted)}: not reached by {Day(forecast.LastDay)}, the last day on hand; {forecast.Gathered.FahrenheitDays:0.0} F-days gathered.");
    }

    /// <summary>A class of planting conditions for cotton.</summary>
    public static string Cotton(CottonOutlook? outlook) => outlook is null ? "unknown" : string.Create(CultureInfo.InvariantCulture, $"{Name(outlook.Class)} ({outlook.Sum:0.#} DD60{(outlook.IsLowered ? ", one class down" : "")})");

    private static string Name(CottonClass outlook) => outlook switch
    {
        CottonClass.VeryPoor => "very poor",
        CottonClass.Marginal => "marginal",
        CottonClass.Adequate => "adequate",
        CottonClass.Good => "good",
        CottonClass.VeryGood => "very good",
        _ => "excellent",
    };

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
