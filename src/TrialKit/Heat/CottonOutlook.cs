using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The outlook for cotton planted on a day, by the heat of the five days after it.</summary>
/// <param name="Planted">The planting day.</param>
/// <param name="Sum">DD60 over the five days, each at most 10.</param>
/// <param name="Class">The class, after it was lowered.</param>
/// <param name="IsLowered">Whether it is one class down: the planting day's low was 50 F or less, or its DD60 was zero.</param>
/// <param name="RestsOn">The planting day and the five after it, by what each rests on.</param>
/// <remarks>
/// Classes as printed by North Carolina State University Extension for whole sums: up to 10 very poor, 11-15 marginal, 16-25 adequate, 26-35 good, 36-49 very good, 50 excellent.
/// A sum between two classes belongs to the upper one from just above the lower one's limit; to a millionth, so that rounding of a conversion does not decide.
/// </remarks>
public sealed record CottonOutlook(DateOnly Planted, double Sum, CottonClass Class, bool IsLowered, DayCounts RestsOn)
{
    private const int DaysAfter = 5;
    private const double DailyCap = 10;
    private const double CoolNightFahrenheit = 50;
    private const int ClassDecimals = 6;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Cotton planting conditions by DD60 of five days", "North Carolina State University Extension", "docs/methods/emergence-forecast.md");

    /// <summary>The outlook; null when one of the six days is not on hand.</summary>
    /// <param name="days">The days on hand.</param>
    /// <param name="planted">The planting day.</param>
    public static CottonOutlook? Of(ForecastDays days, DateOnly planted)
    {
        ArgumentNullException.ThrowIfNull(days);
        var gains = days.Gains(CropTable.Find("cotton")!.Heat);
        var six = Enumerable.Range(0, gains.Length).Where(index => days.Series.Days[index].Date.DayNumber - planted.DayNumber is >= 0 and <= DaysAfter).ToArray();
        if (six.Length != DaysAfter + 1)
        {
            return null;
        }

        var heat = Array.ConvertAll(six, index => gains[index]!.Whole);
        var sum = heat.Skip(1).Sum(day => Math.Min(DailyCap, day));
        var found = ClassOf(sum);
        var isCool = HeatDegrees.Fahrenheit(days.Series.Days[six[0]].Minimum) <= CoolNightFahrenheit || heat[0] <= 0;
        return new(planted, sum, isCool && found > CottonClass.VeryPoor ? found - 1 : found, isCool && found > CottonClass.VeryPoor, days.Count(planted, planted.AddDays(DaysAfter)));
    }

    /// <summary>The class of a sum, before it is lowered.</summary>
    /// <param name="sum">DD60 over the five days, each at most 10.</param>
    public static CottonClass ClassOf(double sum) => Math.Round(sum, ClassDecimals) switch
    {
        <= 10 => CottonClass.VeryPoor,
        <= 15 => CottonClass.Marginal,
        <= 25 => CottonClass.Adequate,
        <= 35 => CottonClass.Good,
        < 50 => CottonClass.VeryGood,
        _ => CottonClass.Excellent,
    };
}
