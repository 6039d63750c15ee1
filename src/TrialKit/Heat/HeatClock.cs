using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>Heat as a clock: how much had gathered by a moment after planting, and at what moment a sum was reached.</summary>
/// <remarks>
/// Time is in days from the midnight that begins the planting day. The heat of a day gathers along the method's own curve where it has one,
/// hour by hour where it counts hours, and else evenly.
/// The clock stops at the first day that is not on record: a missing day is never taken as one without heat.
/// </remarks>
public sealed class HeatClock
{
    private readonly int uncounted;
    private readonly ImmutableArray<DayGain> gains;

    private HeatClock(HeatMethod heatMethod, DateOnly planted, bool countPlantingDay, ImmutableArray<DayGain> gains, DateOnly? gap)
    {
        this.gains = gains;
        Gap = gap;
        HeatMethod = heatMethod;
        Planted = planted;
        CountsPlantingDay = countPlantingDay;
        uncounted = countPlantingDay ? 0 : 1;
        var days = ImmutableArray.CreateBuilder<DailyHeat>(gains.Length);
        var sum = default(HeatSum);
        foreach (var gain in gains)
        {
            var heat = HeatSum.FromFahrenheitDays(gain.Whole);
            days.Add(new(gain.Date, heat, sum += heat));
        }

        Days = days.MoveToImmutable();
        BySingle = [.. gains.Where(gain => gain.LacksNext).Select(gain => gain.Date)];
    }

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Heat accumulated from planting",
        DegreeDays.Method.Source,
        DegreeDays.Method.Page);

    /// <summary>How each day's heat is counted; its name belongs beside every figure.</summary>
    public HeatMethod HeatMethod { get; }

    /// <summary>The planting day.</summary>
    public DateOnly Planted { get; }

    /// <summary>Whether the heat of the planting day is counted.</summary>
    public bool CountsPlantingDay { get; }

    /// <summary>The days counted, from the first to the last before a gap or the end of the series; empty when the first is not on record.</summary>
    public ImmutableArray<DailyHeat> Days { get; }

    /// <summary>The day not on record at which the count stopped though the record goes on: the sum is then at least that of <see cref="Days"/>. Null when the count stopped where the record ends.</summary>
    public DateOnly? Gap { get; }

    /// <summary>Days counted by the single form of a double method, because the next day's minimum is not on record.</summary>
    public ImmutableArray<DateOnly> BySingle { get; }

    /// <summary>The end of the last day counted, in days after planting.</summary>
    public double Ends => uncounted + Days.Length;

    /// <summary>Starts the clock.</summary>
    /// <param name="series">Daily temperatures.</param>
    /// <param name="method">How each day's heat is counted.</param>
    /// <param name="planted">The planting day.</param>
    /// <param name="countPlantingDay">Whether the heat of the planting day itself is counted; otherwise the count starts with the next day.</param>
    /// <exception cref="ArgumentException">The method does not count degree-days.</exception>
    public static HeatClock Start(TemperatureSeries series, HeatMethod method, DateOnly planted, bool countPlantingDay)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(method);
        if (!method.IsDegreeDays)
        {
            throw new ArgumentException($"The clock counts degree-days; the method '{method.Name}' has a scale of its own.", nameof(method));
        }

        return Start(series, index => DayGain.Of(series, index, method), method, planted, countPlantingDay);
    }

    /// <summary>Starts the clock on days whose gains are known.</summary>
    /// <param name="series">The days.</param>
    /// <param name="gainOf">The gain of a day by its place; null when the method cannot count it.</param>
    /// <param name="method">The method of the gains.</param>
    /// <param name="planted">The planting day.</param>
    /// <param name="countPlantingDay">Whether its heat is counted.</param>
    internal static HeatClock Start(TemperatureSeries series, Func<int, DayGain?> gainOf, HeatMethod method, DateOnly planted, bool countPlantingDay)
    {
        var counted = ImmutableArray.CreateBuilder<DayGain>();
        var next = planted.DayNumber + (countPlantingDay ? 0 : 1);
        DateOnly? gap = null;
        for (var i = 0; i < series.Days.Length; i++)
        {
            var day = series.Days[i].Date.DayNumber;
            if (day < next)
            {
                continue;
            }

            if (day != next || gainOf(i) is not { } gain)
            {
                gap = DateOnly.FromDayNumber(next);
                break;
            }

            counted.Add(gain);
            next++;
        }

        return new(method, planted, countPlantingDay, counted.ToImmutable(), gap);
    }

    /// <summary>The heat gathered by a moment; null past the days on record.</summary>
    /// <param name="daysAfterPlanting">Days from the midnight that begins the planting day, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public HeatSum? HeatAt(double daysAfterPlanting)
    {
        var counted = Guard.NotNegative(daysAfterPlanting, "days after planting") - uncounted;
        if (counted <= 0)
        {
            return default(HeatSum);
        }

        if (counted > Days.Length)
        {
            return null;
        }

        // A moment at midnight belongs to the day that ends with it, so the end of the last day is on record.
        var day = (int)Math.Ceiling(counted) - 1;
        return HeatSum.FromFahrenheitDays(SumBefore(day) + gains[day].UpTo(counted - day));
    }

    /// <summary>The first moment by which a sum was reached, in days after planting; null when it was not within the days on record.</summary>
    /// <param name="heat">The sum, by this clock's method.</param>
    public double? DaysAt(HeatSum heat)
    {
        var target = heat.FahrenheitDays;
        if (target == 0)
        {
            return 0;
        }

        for (var day = 0; day < Days.Length; day++)
        {
            if (Days[day].Sum.FahrenheitDays >= target)
            {
                return uncounted + day + gains[day].FractionAt(target - SumBefore(day));
            }
        }

        return null;
    }

    private double SumBefore(int day) => day == 0 ? 0 : Days[day - 1].Sum.FahrenheitDays;
}
