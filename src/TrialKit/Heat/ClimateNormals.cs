using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Heat;

/// <summary>The mean maximum and minimum of each day of the calendar over the years of a record.</summary>
/// <remarks>February 29 takes the mean of February 28 where the record has no leap year. A day of the calendar without a record has no normal.</remarks>
internal sealed class ClimateNormals
{
    private readonly Dictionary<(int Month, int Day), (double Maximum, double Minimum)> _means;

    private ClimateNormals(Dictionary<(int Month, int Day), (double Maximum, double Minimum)> means) => _means = means;

    /// <summary>The normals of a record.</summary>
    public static ClimateNormals Of(TemperatureSeries record) => new(record.Days
        .GroupBy(day => (day.Date.Month, day.Date.Day))
        .ToDictionary(
            days => days.Key,
            days => (days.Average(day => HeatDegrees.Celsius(day.Maximum)), days.Average(day => HeatDegrees.Celsius(day.Minimum)))));

    /// <summary>The normal of a date; null when there is none.</summary>
    public DailyTemperature? On(DateOnly date)
    {
        if (!_means.TryGetValue((date.Month, date.Day), out var mean) && !(date is { Month: 2, Day: 29 } && _means.TryGetValue((2, 28), out mean)))
        {
            return null;
        }

        return new(date, Temperature.FromDegreesCelsius(mean.Maximum), Temperature.FromDegreesCelsius(mean.Minimum));
    }
}
