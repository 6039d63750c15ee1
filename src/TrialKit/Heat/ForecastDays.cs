using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The days that a forecast of emergence rests on: observed, then forecast, then normal, each told apart.</summary>
/// <remarks>Days to come are those of the air even where the record is of the soil; each day says which it is.</remarks>
public sealed class ForecastDays
{
    private const int DaysOfNormals = 366;
    private readonly ImmutableSortedDictionary<DateOnly, Entry> entries;
    private readonly ClimateNormals? normals;

    private ForecastDays(TemperatureSeries series, bool isSoil, ImmutableSortedDictionary<DateOnly, Entry> entries, ClimateNormals? normals)
    {
        (Series, IsSoil) = (series, isSoil);
        this.entries = entries;
        this.normals = normals;
    }

    /// <summary>The days as one series; a normal day has its mean extremes here.</summary>
    public TemperatureSeries Series { get; }

    /// <summary>Whether the record is of the soil's temperatures.</summary>
    public bool IsSoil { get; }

    /// <summary>The file of the forecast; null when no day is of it.</summary>
    public string? ForecastSource { get; private init; }

    /// <summary>The file of earlier years; null when no day is of it.</summary>
    public string? NormalsSource { get; private init; }

    /// <summary>The last day that was observed, or filled among those that were; null when none was.</summary>
    public DateOnly? LastObserved => entries.Where(entry => entry.Value.Kind is DayKind.Observed or DayKind.Filled).Select(entry => (DateOnly?)entry.Key).LastOrDefault();

    /// <summary>The fewest and the most years behind a normal day; null when no day is normal.</summary>
    public (int Fewest, int Most)? NormalYears => normals is not null && entries.Where(entry => entry.Value.Kind == DayKind.Normal).Select(entry => normals.YearsOf(entry.Key)).ToArray() is { Length: > 0 } counts
        ? (counts.Min(), counts.Max())
        : null;

    /// <summary>The first day of the air's temperature although the record is of the soil's; null when there is none.</summary>
    public DateOnly? FirstAirForSoil => IsSoil && entries.FirstOrDefault(entry => !entry.Value.IsSoil) is { Value: not null } first ? first.Key : null;

    /// <summary>What a day rests on; null when it is not on hand.</summary>
    public DayKind? KindOf(DateOnly date) => entries.TryGetValue(date, out var entry) ? entry.Kind : null;

    /// <summary>Whether a day's temperature is the soil's; false when it is the air's or is not on hand.</summary>
    public bool IsSoilOn(DateOnly date) => entries.TryGetValue(date, out var entry) && entry.IsSoil;

    /// <summary>The days from one to another, both included, by what they rest on; a day not on hand is not counted.</summary>
    public DayCounts Count(DateOnly first, DateOnly last)
    {
        var counts = default(DayCounts);
        for (var number = first.DayNumber; number <= last.DayNumber; number++)
        {
            if (!entries.TryGetValue(DateOnly.FromDayNumber(number), out var entry))
            {
                continue;
            }

            counts = entry.Kind switch
            {
                DayKind.Observed => counts with { Observed = counts.Observed + 1 },
                DayKind.Filled => counts with { Filled = counts.Filled + 1 },
                DayKind.Forecast => counts with { Forecast = counts.Forecast + 1 },
                _ => counts with { Normal = counts.Normal + 1 },
            };
            counts = IsSoil && !entry.IsSoil ? counts with { AirForSoil = counts.AirForSoil + 1 } : counts;
        }

        return counts;
    }

    /// <summary>Puts the days together.</summary>
    /// <param name="record">The weather record.</param>
    /// <param name="isSoil">Whether the record is of the soil's temperatures.</param>
    /// <param name="settings">The last day to take as observed (a day missing up to it stays missing), the days of a forecast taken after it, the years whose means
    /// are taken for a year where no forecast reaches, and the longest gap to fill between record and forecast; null takes the record alone.</param>
    public static ForecastDays Of(TemperatureSeries record, bool isSoil = false, ForecastSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        settings ??= new ForecastSettings();
        var days = new SortedDictionary<DateOnly, Entry>();
        var filled = record.Filled.ToHashSet();
        foreach (var day in record.Days.Where(day => !(day.Date > settings.ObservedUntil)))
        {
            days[day.Date] = new(day, filled.Contains(day.Date) ? DayKind.Filled : DayKind.Observed, isSoil);
        }

        var last = settings.ObservedUntil ?? (record.Days.IsEmpty ? DateOnly.MinValue : record.Days[^1].Date);
        AddForecast(days, settings, last, isSoil);
        var years = settings.Normals is null ? null : ClimateNormals.Of(settings.Normals);
        if (years is not null)
        {
            AddNormals(days, years, last == DateOnly.MinValue ? settings.Normals!.Days[0].Date.DayNumber : last.DayNumber + 1, settings.NormalsAreSoil);
        }

        return new(
            TemperatureSeries.Of(record.Source, [.. days.Values.Select(entry => entry.Day)]).WithHours(record.Hours),
            isSoil,
            days.ToImmutableSortedDictionary(),
            years)
        {
            ForecastSource = days.Values.Any(entry => entry.Kind == DayKind.Forecast) ? settings.Days!.Source : null,
            NormalsSource = days.Values.Any(entry => entry.Kind == DayKind.Normal) ? settings.Normals!.Source : null,
        };
    }

    /// <summary>The days of a trial: its soil temperatures, or else its weather; null without either.</summary>
    public static ForecastDays? Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return (trial.SoilTemperature ?? trial.Weather) is { } record ? Of(record, trial.SoilTemperature is not null, trial.Forecast) : null;
    }

    /// <summary>What each day of <see cref="Series"/> gives by a method: a normal day the mean over its years. Null for a day that the method cannot count.</summary>
    internal ImmutableArray<DayGain?> Gains(HeatMethod method) =>
        [.. Enumerable.Range(0, Series.Days.Length).Select(index => KindOf(Series.Days[index].Date) == DayKind.Normal ? normals!.GainOn(Series.Days[index].Date, method) : DayGain.Of(Series, index, method))];

    // A hole between record and forecast is filled as one within the record would be; soil and air are never joined by a line.
    private static void AddForecast(SortedDictionary<DateOnly, Entry> days, ForecastSettings settings, DateOnly last, bool isSoil)
    {
        foreach (var day in settings.Days?.Days.Where(day => day.Date > last) ?? [])
        {
            days[day.Date] = new(day, settings.Days!.Filled.Contains(day.Date) ? DayKind.Filled : DayKind.Forecast, IsSoil: false);
        }

        if (settings.Fill == 0 || isSoil || settings.Days is null)
        {
            return;
        }

        var joined = TemperatureSeries.Of(settings.Days.Source, [.. days.Values.Select(entry => entry.Day)]).FillGaps(settings.Fill);
        foreach (var day in joined.Days.Where(day => joined.Filled.Contains(day.Date) && day.Date > last))
        {
            days[day.Date] = new(day, DayKind.Filled, IsSoil: false);
        }
    }

    private static void AddNormals(SortedDictionary<DateOnly, Entry> days, ClimateNormals years, int first, bool isSoil)
    {
        for (var number = first; number < first + DaysOfNormals && number <= DateOnly.MaxValue.DayNumber; number++)
        {
            var date = DateOnly.FromDayNumber(number);
            if (!days.ContainsKey(date) && years.On(date) is { } normal)
            {
                days[date] = new(normal, DayKind.Normal, isSoil);
            }
        }
    }

    private sealed record Entry(DailyTemperature Day, DayKind Kind, bool IsSoil);
}
