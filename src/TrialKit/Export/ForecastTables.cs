using System.Globalization;
using TrialKit.Analysis;
using TrialKit.Heat;

namespace TrialKit.Export;

/// <summary>Forecasts of emergence as tables.</summary>
public static class ForecastTables
{
    /// <summary>The tables of a trial: its strips against the forecast for their planting dates.</summary>
    internal static IEnumerable<ResultTable> Of(TrialAnalysis analysis)
    {
        if (analysis.Forecast is { } forecast)
        {
            yield return Strips(forecast);
        }
    }

    /// <summary>One forecast a row.</summary>
    /// <param name="forecasts">Forecasts for one planting date or more.</param>
    public static ResultTable Of(IEnumerable<EmergenceForecast> forecasts) => ResultTable.Of(
        "forecast",
        "The emergence date foretold for a planting date.",
        forecasts,
        [
            ("planted", "Planting day.", each => Date(each.Planted)),
            ("need_low_f_days", "Least heat needed, F-days.", each => each.Need.Range.Low.FahrenheitDays),
            ("need_mid_f_days", "Heat needed in between, F-days.", each => each.Need.Range.Mid.FahrenheitDays),
            ("need_high_f_days", "Most heat needed, F-days.", each => each.Need.Range.High.FahrenheitDays),
            ("heat_method", "How heat is counted.", each => each.Need.Method.Name),
            ("planting_day_counted", "Whether the planting day's heat is counted.", each => each.Clock.CountsPlantingDay),
            .. DateColumns("low", "the least heat needed", each => each.Low),
            .. DateColumns("mid", "the heat in between", each => each.Mid),
            .. DateColumns("high", "the most heat needed", each => each.High),
            ("last_day", "Last day counted; empty when none is.", each => each.LastDay is { } last ? Date(last) : null),
            ("gathered_f_days", "Heat gathered by then; at least this when a day is missing.", each => each.Gathered.FahrenheitDays),
            ("missing_day", "Day not on record at which the count stopped; empty when none is missing.", each => each.Clock.Gap is { } gap ? Date(gap) : null),
        ]);

    private static (string Name, string Description, Func<EmergenceForecast, object?> Cell)[] DateColumns(string name, string sum, Func<EmergenceForecast, ForecastDate?> date) =>
    [
        (name + "_date", $"Day on which {sum} is met; empty when not within the days on hand.", each => date(each) is { } met ? Date(met.Date) : null),
        (name + "_days", "The same in days after planting, with the fraction of the day.", each => date(each)?.DaysAfterPlanting),
        (name + "_rests_on", "What that day rests on: observed, filled, forecast or normal.", each => Kind(date(each))),
        .. CountColumns<EmergenceForecast>(name, each => date(each)?.RestsOn),
    ];

    private static (string Name, string Description, Func<T, object?> Cell)[] CountColumns<T>(string name, Func<T, DayCounts?> counts) =>
    [
        (name + "_observed_days", "Days counted up to it that were observed.", each => counts(each)?.Observed),
        (name + "_filled_days", "Days up to it that are interpolated.", each => counts(each)?.Filled),
        (name + "_forecast_days", "Days up to it of a weather forecast.", each => counts(each)?.Forecast),
        (name + "_normal_days", "Days up to it that are means of earlier years.", each => counts(each)?.Normal),
        (name + "_air_for_soil_days", "Of all these, days of the air's temperature although the record is of the soil's.", each => counts(each)?.AirForSoil),
    ];

    private static ResultTable Strips(TrialForecast forecast) => ResultTable.Of(
        "strip-forecasts",
        "The emergence foretold for a strip, and when half of its plants were up.",
        forecast.Strips,
        [
            ("strip", "Name of the strip.", each => each.Strip.Name),
            ("planted", "Its planting day.", each => Date(each.Strip.Planted)),
            ("low_days", "Days after planting to the least heat needed.", each => each.Forecast.Low?.DaysAfterPlanting),
            ("high_days", "Days after planting to the most heat needed.", each => each.Forecast.High?.DaysAfterPlanting),
            .. CountColumns<StripForecast>("high", each => each.Forecast.High?.RestsOn),
            ("t50_days", "Observed days after planting to half of the plants.", each => each.ObservedDays),
            ("side", "-1 observed before the range, 0 within it, 1 after it; empty when the range is open there.", each => each.Side),
        ]);

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string? Kind(ForecastDate? date) => date?.Kind switch
    {
        null => null,
        DayKind.Observed => "observed",
        DayKind.Filled => "filled",
        DayKind.Forecast => "forecast",
        _ => "normal",
    };
}
