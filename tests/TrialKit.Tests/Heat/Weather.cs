using System.Globalization;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Heat;

/// <summary>Weather for the tests of heat.</summary>
internal static class Weather
{
    /// <summary>Seattle in May 2012, degrees Celsius.</summary>
    public static TemperatureSeries May() => TemperatureSeries.Of("seattle-2012-05.csv", [.. ReferenceData.Csv("weather/seattle-2012-05.csv")
        .Select(row => new DailyTemperature(
            DateOnly.Parse(row[0], CultureInfo.InvariantCulture),
            Temperature.FromDegreesCelsius(ReferenceData.Number(row[1])),
            Temperature.FromDegreesCelsius(ReferenceData.Number(row[2]))))]);

    /// <summary>Days from 1 May 2026 with the same extremes, degrees Fahrenheit.</summary>
    public static TemperatureSeries Even(int days, double minimum, double maximum) => TemperatureSeries.Of("even.csv", [.. Enumerable.Range(0, days)
        .Select(day => new DailyTemperature(new DateOnly(2026, 5, 1).AddDays(day), Temperature.FromDegreesFahrenheit(maximum), Temperature.FromDegreesFahrenheit(minimum)))]);
}
