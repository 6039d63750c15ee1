using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The days that a forecast of emergence rests on: observed, then forecast, then normal, each told apart.</summary>
public sealed class ForecastDays
{
    private const int DaysOfNormals = 366;
    private readonly ImmutableDictionary<DateOnly, DayKind> kinds;

    private ForecastDays(TemperatureSeries series, ImmutableDictionary<DateOnly, DayKind> kinds)
    {
        Series = series;
        this.kinds = kinds;
    }

    /// <summary>The days as one series.</summary>
    public TemperatureSeries Series { get; }

    /// <summary>What a day rests on; null when it is not on hand.</summary>
    public DayKind? KindOf(DateOnly date) => kinds.TryGetValue(date, out var kind) ? kind : null;

    /// <summary>Puts the days together.</summary>
    /// <param name="record">The weather record.</param>
    /// <param name="observedUntil">The last day of the record to take as observed; null takes all. A day missing up to here stays missing.</param>
    /// <param name="forecast">Days of a weather forecast, taken after the observed ones; null when there are none.</param>
    /// <param name="normals">A record of earlier years, whose means are taken where no forecast reaches, for a year; null when there is none.</param>
    public static ForecastDays Of(TemperatureSeries record, DateOnly? observedUntil = null, TemperatureSeries? forecast = null, TemperatureSeries? normals = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        var days = new SortedDictionary<DateOnly, (DailyTemperature Day, DayKind Kind)>();
        var filled = record.Filled.ToHashSet();
        foreach (var day in record.Days.Where(day => !(day.Date > observedUntil)))
        {
            days[day.Date] = (day, filled.Contains(day.Date) ? DayKind.Filled : DayKind.Observed);
        }

        var last = observedUntil ?? (record.Days.IsEmpty ? DateOnly.MinValue : record.Days[^1].Date);
        foreach (var day in forecast?.Days.Where(day => day.Date > last) ?? [])
        {
            days[day.Date] = (day, DayKind.Forecast);
        }

        if (normals is not null)
        {
            var means = ClimateNormals.Of(normals);
            for (var (date, left) = (last == DateOnly.MinValue ? normals.Days[0].Date : last.AddDays(1), DaysOfNormals); left > 0; (date, left) = (date.AddDays(1), left - 1))
            {
                if (!days.ContainsKey(date) && means.On(date) is { } normal)
                {
                    days[date] = (normal, DayKind.Normal);
                }
            }
        }

        return new(
            TemperatureSeries.Of(record.Source, [.. days.Values.Select(entry => entry.Day)]).WithHours(record.Hours),
            days.ToImmutableDictionary(entry => entry.Key, entry => entry.Value.Kind));
    }

    /// <summary>The days of a trial: its soil temperatures, or else its weather; null without either.</summary>
    public static ForecastDays? Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return (trial.SoilTemperature ?? trial.Weather) is { } record
            ? Of(record, trial.Forecast.ObservedUntil, trial.Forecast.Days, trial.Forecast.Normals)
            : null;
    }
}
