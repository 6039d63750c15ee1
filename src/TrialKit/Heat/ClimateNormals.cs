using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Heat;

/// <summary>What each day of the calendar is like over the years of a record: its mean maximum and minimum, and its mean heat.</summary>
/// <remarks>
/// The heat of a normal day is the mean of the heat of that day in each year, not the heat of the mean temperatures, which is less: a mean hides the warm days that count.
/// February 29 takes February 28 where the record has no leap year. A day of the calendar without a record has no normal.
/// </remarks>
internal sealed class ClimateNormals
{
    private readonly TemperatureSeries record;
    private readonly Dictionary<(int Month, int Day), int[]> places;

    private ClimateNormals(TemperatureSeries record)
    {
        this.record = record;
        places = Enumerable.Range(0, record.Days.Length)
            .GroupBy(index => (record.Days[index].Date.Month, record.Days[index].Date.Day))
            .ToDictionary(days => days.Key, days => days.ToArray());
    }

    /// <summary>The normals of a record.</summary>
    public static ClimateNormals Of(TemperatureSeries record) => new(record);

    /// <summary>The mean extremes of a date; null when it has no normal.</summary>
    public DailyTemperature? On(DateOnly date) => PlacesOf(date) is { Length: > 0 } found
        ? new(
            date,
            Temperature.FromDegreesCelsius(found.Average(index => HeatDegrees.Celsius(record.Days[index].Maximum))),
            Temperature.FromDegreesCelsius(found.Average(index => HeatDegrees.Celsius(record.Days[index].Minimum))))
        : null;

    /// <summary>The years behind the normal of a date; 0 when it has none.</summary>
    public int YearsOf(DateOnly date) => PlacesOf(date).Length;

    /// <summary>The mean gain of a date by a method; null when it has no normal, or none that the method can count.</summary>
    public DayGain? GainOn(DateOnly date, HeatMethod method)
    {
        var gains = PlacesOf(date).Select(index => DayGain.Of(record, index, method)).OfType<DayGain>().ToArray();
        return gains.Length > 0 ? DayGain.Mean(date, gains) : null;
    }

    private int[] PlacesOf(DateOnly date) =>
        places.TryGetValue((date.Month, date.Day), out var found) || (date is { Month: 2, Day: 29 } && places.TryGetValue((2, 28), out found)) ? found : [];
}
