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
        ("planted", "Planting day.", each => Date(each.Planted)),
        ("need_low_f_days", "Least heat needed, F-days.", each => each.Need.Range.Low.FahrenheitDays),
        ("need_mid_f_days", "Heat needed in between, F-days.", each => each.Need.Range.Mid.FahrenheitDays),
        ("need_high_f_days", "Most heat needed, F-days.", each => each.Need.Range.High.FahrenheitDays),
        ("heat_method", "How heat is counted.", each => each.Need.Method.Name),
        ("planting_day_counted", "Whether the planting day's heat is counted.", each => each.Clock.CountsPlantingDay),
        ("low_date", "Day on which the least is met; empty when not within the days on hand.", each => Date(each.Low)),
        ("low_days", "The same in days after planting, with the fraction of the day.", each => each.Low?.DaysAfterPlanting),
        ("low_rests_on", "What that day rests on: observed, filled, forecast or normal.", each => Kind(each.Low)),
        ("mid_date", "Day on which the middle is met.", each => Date(each.Mid)),
        ("mid_days", "The same in days after planting.", each => each.Mid?.DaysAfterPlanting),
        ("mid_rests_on", "What that day rests on.", each => Kind(each.Mid)),
        ("high_date", "Day on which the most is met.", each => Date(each.High)),
        ("high_days", "The same in days after planting.", each => each.High?.DaysAfterPlanting),
        ("high_rests_on", "What that day rests on.", each => Kind(each.High)),
        ("last_day", "Last day counted.", each => Date(each.LastDay)),
        ("gathered_f_days", "Heat gathered by then; at least this when a day is missing.", each => each.Gathered.FahrenheitDays),
        ("missing_day", "Day not on record at which the count stopped; empty when none is missing.", each => each.Clock.Gap is { } gap ? Date(gap) : null));

    private static ResultTable Strips(TrialForecast forecast) => ResultTable.Of(
        "strip-forecasts",
        "The emergence foretold for a strip, and when half of its plants were up.",
        forecast.Strips,
        ("strip", "Name of the strip.", each => each.Strip.Name),
        ("planted", "Its planting day.", each => Date(each.Strip.Planted)),
        ("low_days", "Days after planting to the least heat needed.", each => each.Forecast.Low?.DaysAfterPlanting),
        ("high_days", "Days after planting to the most heat needed.", each => each.Forecast.High?.DaysAfterPlanting),
        ("t50_days", "Observed days after planting to half of the plants.", each => each.ObservedDays),
        ("side", "-1 observed before the range, 0 within it, 1 after it; empty when the range is open there.", each => each.Side));

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string? Date(ForecastDate? date) => date is null ? null : Date(date.Date);

    private static string? Kind(ForecastDate? date) => date?.Kind switch
    {
        null => null,
        DayKind.Observed => "observed",
        DayKind.Filled => "filled",
        DayKind.Forecast => "forecast",
        _ => "normal",
    };
}
